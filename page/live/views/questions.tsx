import { useEffect, useRef, useState } from 'preact/hooks';
import { LEAST_REASON } from '../../../src/judge/accept.js';
import type { Advice, CheckAdvice, Cure } from '../../../src/judge/advice.js';
import type { Finding } from '../../../src/judge/check.js';
import { type Answer, urgency, wordText } from '../../../src/output/answers/answer.js';
import type { Report } from '../../../src/output/report.js';
import { plain } from '../../../src/units/format.js';
import { LIMIT_AT, onLine } from '../state/line.js';
import { accepting, withCure } from '../state/state.js';
import type { Threads } from './app.js';
import type { Told } from './part.js';

interface Props {
  readonly report: Report;
  readonly threads: Threads;
  readonly told: Told;
  readonly write: (sheet: string) => void;
  readonly accept: (accepted: Told['accepted']) => void;
}

interface QuestionsProps extends Props {
  /** the question that is looked into */
  readonly open: string | undefined;
  readonly setOpen: (question: string | undefined) => void;
  readonly isNarrow: boolean;
}

/** A mark beside the word, so that it does not hang on colour. */
const MARKS = { yes: '●', perhaps: '◉', but: '○', no: '✕', 'not-told': '◌' } as const;

/** The questions, a row each; one opens to all that was found. */
export function Questions({ report, open, setOpen, isNarrow, ...rest }: QuestionsProps) {
  const toggle = (question: string) => setOpen(open === question ? undefined : question);
  const shown = report.questions.filter(({ question }) => !isNarrow || question === open);
  const host = useRef<HTMLElement>(null);
  useEffect(() => {
    if (isNarrow && open !== undefined) host.current?.scrollIntoView({ block: 'nearest' });
  }, [isNarrow, open]);
  return (
    <>
      {shown.length > 0 && (
        <section class="card questions" aria-label="Will it work?" ref={host}>
          <h2>Will it work?</h2>
          {shown.map((answer) => (
            <Row
              key={answer.question}
              answer={answer}
              findings={report.checks.filter(({ question }) => question === answer.question)}
              isOpen={open === answer.question}
              toggle={() => toggle(answer.question)}
              {...rest}
            />
          ))}
        </section>
      )}
      {isNarrow && <Foot questions={report.questions} open={open} toggle={toggle} />}
    </>
  );
}

interface FootProps {
  readonly questions: readonly Answer[];
  readonly open: string | undefined;
  readonly toggle: (question: string) => void;
}

/** On a phone: every question with its word, always in sight. */
function Foot({ questions, open, toggle }: FootProps) {
  return (
    <nav class="foot" aria-label="The questions">
      {questions.map(({ question, title, word, accepted }) => (
        <button
          key={question}
          type="button"
          class={word}
          aria-expanded={open === question}
          onClick={() => toggle(question)}
        >
          <strong>{title}</strong>
          <span class="word">
            <span aria-hidden="true">{MARKS[word]}</span> {wordText({ word })}
            {accepted ? ', accepted' : ''}
          </span>
        </button>
      ))}
    </nav>
  );
}

interface RowProps extends Omit<Props, 'report'> {
  readonly answer: Answer;
  readonly findings: readonly Finding[];
  readonly isOpen: boolean;
  readonly toggle: () => void;
}

function Row({ answer, findings, isOpen, toggle, ...rest }: RowProps) {
  const lead = findings.find(({ id }) => id === answer.check);
  return (
    <div class={`row ${answer.word}`}>
      <button type="button" aria-expanded={isOpen} onClick={toggle}>
        <strong>{answer.title}</strong>
        <span class="word">
          <span aria-hidden="true">{MARKS[answer.word]}</span> {wordText({ word: answer.word })}
          {answer.accepted ? ', accepted' : ''}
        </span>
        <LineOf lead={lead} others={findings} />
        <span class="text">{answer.text}</span>
      </button>
      {isOpen && <Findings findings={findings} {...rest} />}
    </div>
  );
}

const WIDTH = 320;

/** The line of a question: the wall, the limit, the mark with its doubt, and ticks for the other checks. */
function LineOf({ lead, others }: { readonly lead: Finding | undefined; readonly others: readonly Finding[] }) {
  const place = lead && onLine(lead);
  const x = (share: number) => Math.round(share * WIDTH);
  return (
    <svg viewBox={`0 0 ${WIDTH} 40`} class="line" aria-hidden="true">
      {place?.wall !== undefined && <rect x="0" y="2" width={x(place.wall)} height="30" class="wall" />}
      {place?.wall !== undefined && <line x1={x(place.wall)} x2={x(place.wall)} y1="2" y2="32" class="hard" />}
      <line x1="0" x2={WIDTH} y1="32" y2="32" class="base" />
      <line x1={x(LIMIT_AT)} x2={x(LIMIT_AT)} y1="2" y2="38" class="soft" />
      {others.map((other) => {
        const at = onLine(other);
        return at && <line key={other.id} x1={x(at.mark)} x2={x(at.mark)} y1="27" y2="32" class="tick" />;
      })}
      {place && (
        <>
          <rect
            x={x(place.blur[0])}
            y="8"
            width={Math.max(1, x(place.blur[1]) - x(place.blur[0]))}
            height="24"
            class="blur"
          />
          <path d={`M${x(place.mark)} 32V8l-5 -6h10l-5 6`} class="mark" />
        </>
      )}
    </svg>
  );
}

type FindingsProps = { readonly findings: readonly Finding[] } & Omit<Props, 'report'>;

/** All that was found for one question: what asks for attention first, what is kept behind one line. */
function Findings({ findings, threads, told, write, accept }: FindingsProps) {
  const { sheet } = told;
  const [advice, setAdvice] = useState<{ readonly of: string; readonly found: Advice }>();
  const [isAsked, setAsked] = useState(false);
  const open = [...findings].filter(({ word }) => word !== 'yes').sort((a, b) => urgency(b) - urgency(a));
  const kept = findings.filter(({ word }) => word === 'yes');
  const ask = async () => {
    setAsked(true);
    const found = await threads.cures.ask((engine) => engine.cures(told));
    setAsked(false);
    if (found) setAdvice({ of: sheet, found });
  };
  const advised = (id: string) =>
    advice?.of === sheet ? advice.found.checks.find(({ check }) => check === id) : undefined;
  const take = (check: string) => (reason: string) => accept(accepting(told.accepted, check, reason));
  return (
    <div class="findings">
      <dl>
        {open.map((one) => (
          <Found
            key={one.id}
            one={one}
            advised={advised(one.id)}
            cure={(set) => write(withCure(sheet, set))}
            take={take(one.id)}
          />
        ))}
      </dl>
      {open.length > 0 && (
        <button type="button" onClick={ask} disabled={isAsked}>
          {isAsked ? 'looking for cures' : 'look for cures'}
        </button>
      )}
      {kept.length > 0 && (
        <details open={open.length === 0}>
          <summary>{`${kept.length} ${kept.length === 1 ? 'says' : 'say'} yes`}</summary>
          <dl>
            {kept.map((one) => (
              <Found key={one.id} one={one} />
            ))}
          </dl>
        </details>
      )}
    </div>
  );
}

interface FoundProps {
  readonly one: Finding;
  readonly advised?: CheckAdvice | undefined;
  readonly cure?: (set: Cure['set']) => void;
  readonly take?: (reason: string) => void;
}

/** One finding: what was found, its limit and source, and what cures it. */
function Found({ one, advised, cure, take }: FoundProps) {
  return (
    <div class={one.word}>
      <dt>
        <span aria-hidden="true">{MARKS[one.word]}</span> {one.title}{' '}
        <span class="quiet">{wordText({ word: one.word, ...(one.accepted ? { accepted: one.accepted } : {}) })}</span>
      </dt>
      <dd>
        {one.message}
        <small>{`${limitWords(one)}${one.source}. Moved by ${one.moves}.`}</small>
        {advised?.surer && <strong class="surer">{`Measure surer first: ${advised.surer.join(', or ')}`}</strong>}
        {advised?.cures.map(({ set, lines, reaches, costs }) => (
          <button key={lines.join()} type="button" class="cure" onClick={() => cure?.(set)}>
            <strong>
              {Object.entries(set)
                .map(([path, value]) => `${path} → ${value}`)
                .join(', ')}
            </strong>
            <small>
              {`then ${reaches === 'pass' ? 'yes' : 'yes, but'}; ${costs.length === 0 ? 'costs nothing else' : `costs ${costs.join(', ')}`}`}
            </small>
          </button>
        ))}
        {advised?.none && <small>{advised.none}</small>}
        {one.verdict === 'fail' && take && <AllTheSame one={one} take={take} />}
      </dd>
    </div>
  );
}

function AllTheSame({ one, take }: { readonly one: Finding; readonly take: (reason: string) => void }) {
  const [reason, setReason] = useState(one.accepted ?? '');
  const least = one.grave ? LEAST_REASON : 1;
  return (
    <form
      class="same"
      onSubmit={(event) => {
        event.preventDefault();
        take(reason);
      }}
    >
      <label>
        Take it all the same, because{' '}
        <input value={reason} minLength={least} onInput={(e) => setReason(e.currentTarget.value)} />
      </label>{' '}
      <button type="submit" disabled={reason.trim() === '' && !one.accepted}>
        {reason.trim() === '' && one.accepted ? 'take that back' : 'take it'}
      </button>
    </form>
  );
}

function limitWords({ limit, unit }: Finding): string {
  if (!limit) return '';
  const { min, max } = limit;
  const figure =
    min === undefined
      ? `at most ${plain(max ?? 0)}`
      : max === undefined
        ? `at least ${plain(min)}`
        : `${plain(min)} to ${plain(max)}`;
  return `Limit: ${figure}${unit === '' ? '' : ` ${unit}`}, `;
}
