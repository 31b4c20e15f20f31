import { useEffect, useRef, useState } from 'preact/hooks';
import { plain } from '../../../src/units/format.js';
import type { Named } from '../engine/engine.js';
import type { Thread } from '../engine/workers.js';
import { CANNOT, faultOf, READINGS, type Reading, readingsOf, repaired, type Typed } from '../state/readings.js';
import { ScrewPicture } from './screw-picture.js';
import { useNarrow } from './use-narrow.js';
import { useTop } from './use-top.js';

interface Props {
  readonly thread: Thread;
  readonly typed: Typed;
  readonly type: (typed: Typed) => void;
  readonly take: (block: string) => void;
  readonly skip: () => void;
}

/** Candidates that are worth a line. */
const SHOWN = 5;

/** The screw in the hand: readings, and what they say. */
export function Screw({ thread, typed, type, take, skip }: Props) {
  useTop();
  const isNarrow = useNarrow();
  const answer = useRef<HTMLElement>(null);
  const [named, setNamed] = useState<Named>();
  useEffect(() => {
    const readings = readingsOf(typed);
    if (!readings) {
      setNamed(undefined);
      return;
    }
    let isCurrent = true;
    void thread.ask((engine) => engine.name(readings)).then((answer) => isCurrent && answer && setNamed(answer));
    return () => {
      isCurrent = false;
    };
  }, [thread, typed]);
  const next = named && 'nextMeasurement' in named ? named.nextMeasurement : undefined;
  const wanted = named === undefined ? 'major' : next?.what;
  const classOf = (id: Reading['id']) =>
    ['reading', ...(id === wanted ? ['next'] : []), ...(faultOf(id, typed[id]) ? ['wrong'] : [])].join(' ');
  return (
    <div class="screw">
      <section class="card" aria-label="Readings">
        <h1>The screw in your hand</h1>
        <ScrewPicture typed={typed} wanted={wanted} />
        {READINGS.map(({ id, label, unit, how, choices }) => (
          <div key={id} class={classOf(id)}>
            <label for={`r-${id}`}>{label}</label>
            {typed[id] === CANNOT ? (
              <span class="field">
                cannot be measured
                <button type="button" class="quiet" onClick={() => type({ ...typed, [id]: '' })}>
                  it can
                </button>
              </span>
            ) : choices ? (
              <select
                id={`r-${id}`}
                value={typed[id] ?? ''}
                onChange={(e) => type({ ...typed, [id]: e.currentTarget.value })}
              >
                <option value="">not looked at</option>
                {choices.map((one) => (
                  <option key={one} value={one}>
                    {one}
                  </option>
                ))}
              </select>
            ) : (
              <span class="field">
                <input
                  id={`r-${id}`}
                  inputMode="decimal"
                  autocomplete="off"
                  value={typed[id] ?? ''}
                  aria-describedby={`w-${id} h-${id}`}
                  aria-invalid={faultOf(id, typed[id]) !== undefined}
                  onInput={(e) => type({ ...typed, [id]: e.currentTarget.value })}
                />
                {unit}
              </span>
            )}
            <small id={`w-${id}`} class="no" aria-live="polite">
              {faultOf(id, typed[id])}
            </small>
            <small id={`h-${id}`}>{id === wanted && next ? `Next: ${next.why}. ${how}` : how}</small>
            {id === wanted && next && (
              <button type="button" class="quiet" onClick={() => type({ ...typed, [id]: CANNOT })}>
                cannot measure it
              </button>
            )}
          </div>
        ))}
      </section>
      <section class="card" aria-label="Which screw is it?" aria-live="polite" ref={answer}>
        <h2>Which screw is it?</h2>
        {named === undefined && <p class="quiet">One reading is enough to begin; the next one is pointed out.</p>}
        {named &&
          'mistakes' in named &&
          named.mistakes.map((one) => <p key={one.path}>{`${one.path}: ${one.allowed}`}</p>)}
        {named && 'candidates' in named && (
          <>
            {named.contradictions.map((words) => (
              <p key={words} class="no" role="alert">
                {words}
                {named.repairs
                  .filter(({ says }) => says === words)
                  .map(({ designation, change }) => (
                    <button key={designation} type="button" class="cure" onClick={() => type(repaired(typed, change))}>
                      {`that was it: read it as ${designation}`}
                    </button>
                  ))}
              </p>
            ))}
            <ol class="candidates">
              {named.candidates.slice(0, SHOWN).map(({ designation, probability, lead, starts }) => (
                <li key={designation}>
                  <strong>{designation}</strong> <span>{percent(probability)}</span>
                  <meter min={0} max={1} value={probability} aria-label={`chance of ${designation}`} />
                  <small>{`lead ${plain(lead, 4)} mm, ${starts === 1 ? 'one start' : `${starts} starts`}`}</small>
                </li>
              ))}
            </ol>
            {!named.fits && named.block !== '' && <p>None of the series: the sheet takes it as it was measured.</p>}
            {named.block !== '' && (
              <>
                <pre>{named.block}</pre>
                <button type="button" class="main" onClick={() => take(named.block)}>
                  {named.separable
                    ? `It is ${named.candidates[0]!.designation}: the part`
                    : 'Go on with these readings'}
                </button>
              </>
            )}
          </>
        )}
        <p>
          <button type="button" class="quiet" onClick={skip}>
            I know the screw: write it into the sheet
          </button>
        </p>
      </section>
      {isNarrow && named && (
        <button type="button" class="foot which" onClick={() => answer.current?.scrollIntoView()}>
          {inShort(named)}
        </button>
      )}
    </div>
  );
}

/** What the readings say so far, for a phone: the answer itself stands below them. */
function inShort(named: Named): string {
  if ('mistakes' in named) return 'a reading cannot be used: see below';
  if (named.contradictions.length > 0) return 'these readings quarrel: see below';
  const [first, second] = named.candidates.map((one) => `${one.designation} ${percent(one.probability)}`);
  return first === undefined ? 'no screw found: see below' : [first, ...(second ? [second] : [])].join(' · ');
}

function percent(share: number): string {
  if (share > 0.99) return '> 99 %';
  return share < 0.01 ? '< 1 %' : `${Math.round(100 * share)} %`;
}
