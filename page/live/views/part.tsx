import { useEffect, useState } from 'preact/hooks';
import type { DrawnView } from '../../../src/parts/part-views.js';
import type { Told as EngineTold, Judged, Pictureless, Pictures } from '../engine/engine.js';
import { isMovedBy, questionsMovedBy } from '../state/moved.js';
import type { State } from '../state/state.js';
import { Aloud } from './aloud.js';
import type { Threads } from './app.js';
import type { ExactKeep } from './exact-body.js';
import { type Keep, Ledger } from './ledger.js';
import { Printed } from './printed.js';
import { Questions } from './questions.js';
import { Section } from './section.js';
import { SheetPane } from './sheet-pane.js';
import { ToldFields } from './told.js';
import { useNarrow } from './use-narrow.js';
import { useTop } from './use-top.js';

/** All that the part is made by. */
export type Told = Required<EngineTold>;

interface Props {
  readonly threads: Threads;
  readonly told: Told;
  readonly write: (sheet: string) => void;
  /** opens one part of an axis by its own sheet */
  readonly openPart: (role: string, sheet: string) => void;
  /** its section, where it was opened from an axis */
  readonly ofAxis?: string;
  readonly accept: (accepted: State['accepted']) => void;
  readonly name: string;
  /** what was seen on the printed part */
  readonly form: string;
  readonly fill: (form: string) => void;
  readonly keep: Keep;
  readonly exactKeep: ExactKeep;
}

type AxisParts = NonNullable<Extract<Judged, { report: unknown }>['parts']>;

/** A pause in typing before the solid's own drawing takes the place of the sketch [ms]. */
const REST = 300;

/** The part: its section with flags, the questions, what was told, the files. */
export function Part({ threads, told, write, openPart, ofAxis, accept, name, form, fill, keep, exactKeep }: Props) {
  useTop();
  const { sheet } = told;
  const [judged, setJudged] = useState<Judged>();
  /** the last answer that was none of mistakes, for half-typed figures */
  const [good, setGood] = useState<Extract<Judged, { report: unknown }>>();
  const [pictures, setPictures] = useState<Pictures | Pictureless>();
  const [section, setSection] = useState<DrawnView>();
  /** the question that is looked into */
  const [open, setOpen] = useState<string>();
  const isNarrow = useNarrow();
  useEffect(() => {
    void threads.judge
      .ask((engine) => engine.judge(told))
      .then((answer) => {
        if (!answer) return;
        setJudged(answer);
        if ('report' in answer) setGood(answer);
      });
  }, [threads, told]);
  useEffect(() => {
    let [isNewest, isDrawn] = [true, false];
    void threads.sketch
      .ask((engine) => engine.sketch(told))
      .then((sketch) => isNewest && !isDrawn && sketch && setSection(sketch));
    const timer = setTimeout(async () => {
      const drawn = await threads.picture.ask((engine) => engine.draw(told));
      if (!isNewest || !drawn) return;
      setPictures(drawn);
      if (!('section' in drawn)) return;
      isDrawn = true;
      setSection(drawn.section);
    }, REST);
    return () => {
      isNewest = false;
      clearTimeout(timer);
    };
  }, [threads, told]);
  const mistakes = judged && 'mistakes' in judged ? judged.mistakes : [];
  const report = good?.report;
  const drawn = pictures && 'section' in pictures ? pictures : undefined;
  const opened = report?.checks.filter(({ question }) => question === open) ?? [];
  const thread = good && good.fit !== '' && <Thread fit={good.fit} />;
  const questions = report && (
    <Questions
      report={report}
      threads={threads}
      told={told}
      write={write}
      accept={accept}
      open={open}
      setOpen={setOpen}
      isNarrow={isNarrow}
    />
  );
  return (
    <div class="part">
      {report && <Aloud questions={report.questions} />}
      <p class={`sentence ${report?.verdict ?? ''}`}>
        {mistakes.length > 0
          ? `${mistakes.length === 1 ? 'One thing' : `${mistakes.length} things`} in the sheet cannot be used`
          : (report?.sentence ?? 'working it out')}
      </p>
      {mistakes.length > 0 && (
        <ul class="card mistakes" aria-label="Mistakes of the sheet">
          {mistakes.slice(0, 8).map((one) => (
            <li key={`${one.path}${one.allowed}`}>
              {one.at && <span class="quiet">{`line ${one.at.line} `}</span>}
              <strong>{one.path}</strong> {one.value === '' ? one.allowed : `${one.value}: ${one.allowed}`}
            </li>
          ))}
        </ul>
      )}
      {ofAxis !== undefined && (
        <p class="card quiet">{`Of an axis: what is changed here goes into its section ${ofAxis} on the way back to it.`}</p>
      )}
      {good?.parts && <Parts parts={good.parts} openPart={openPart} />}
      {!good?.parts && (
        <Section
          view={section}
          why={pictures && 'why' in pictures ? pictures.why : undefined}
          sheet={sheet}
          write={write}
          name={name}
          isLit={(field) => opened.some((one) => isMovedBy(one, field))}
          moves={(field) => movesWords(report ? questionsMovedBy(field, report) : [])}
          isNarrow={isNarrow}
        />
      )}
      {isNarrow ? questions : thread}
      {isNarrow ? thread : questions}
      <aside>
        <ToldFields sheet={sheet} write={write} mistakes={mistakes} />
        <Ledger
          threads={threads}
          told={told}
          report={mistakes.length === 0 ? report : undefined}
          name={name}
          keep={keep}
          exactKeep={exactKeep}
        />
      </aside>
      <Printed
        threads={threads}
        told={told}
        form={form}
        fill={fill}
        write={write}
        keep={keep}
        plates={drawn?.others ?? []}
      />
      <SheetPane sheet={sheet} write={write} />
    </div>
  );
}

function movesWords(titles: readonly string[]): string {
  return titles.length === 0 ? '' : `moves ${titles.join(' ')}`;
}

/** The parts of an axis, each to be opened by itself. */
function Parts({ parts, openPart }: { readonly parts: AxisParts; readonly openPart: Props['openPart'] }) {
  return (
    <section class="card" aria-label="The parts">
      <h2>The parts</h2>
      <ul>
        {parts.map(({ role, sheet }) => (
          <li key={role}>
            <button type="button" onClick={() => openPart(role, sheet)}>
              {`open ${role}`}
            </button>
          </li>
        ))}
      </ul>
      <p class="quiet">
        A part that is opened has all that the axis says of it; what is changed there goes into its section here on the
        way back.
      </p>
    </section>
  );
}

/** The thread, much enlarged: letters and figures of our own, nothing that was typed. */
function Thread({ fit }: { readonly fit: string }) {
  return <section class="card thread" aria-label="The thread" dangerouslySetInnerHTML={{ __html: fit }} />;
}
