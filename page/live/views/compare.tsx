import { useEffect, useState } from 'preact/hooks';
import type { SideBySide } from '../engine/compare.js';
import type { Mistaken } from '../engine/engine.js';
import type { Thread } from '../engine/workers.js';
import { ASKED, type Asked, type Compared, namedScrews } from '../state/compare.js';
import { useTop } from './use-top.js';

interface Props {
  readonly thread: Thread;
  readonly typed: Compared;
  readonly type: (typed: Compared) => void;
  /** begins the nut for a screw */
  readonly take: (designation: string) => void;
}

/** Screws side by side: what each does to the axis, which one, and what the controller is told. */
export function Compare({ thread, typed, type, take }: Props) {
  useTop();
  const [found, setFound] = useState<SideBySide | Mistaken>();
  useEffect(() => {
    const asked = namedScrews(typed);
    if (!asked) {
      setFound(undefined);
      return;
    }
    let isCurrent = true;
    void thread.ask((engine) => engine.compare(asked)).then((answer) => isCurrent && answer && setFound(answer));
    return () => {
      isCurrent = false;
    };
  }, [thread, typed]);
  return (
    <div class="screw compare">
      <section class="card" aria-label="What is asked of the screw">
        <h1>Which screw does it?</h1>
        {ASKED.map((one) => (
          <AskedField
            key={one.id}
            one={one}
            value={typed[one.id] ?? ''}
            change={(to) => type({ ...typed, [one.id]: to })}
          />
        ))}
      </section>
      <section class="card" aria-label="Side by side" aria-live="polite">
        {found === undefined && <p class="quiet">Name two screws or more, or the one that you think of.</p>}
        {found && 'mistakes' in found && (
          <ul role="alert">
            {found.mistakes.map(({ path, value, allowed }) => (
              <li key={`${path}${value}`}>
                <strong>{labelOf(path)}</strong> {value === '' ? allowed : `${value}: ${allowed}`}
              </li>
            ))}
          </ul>
        )}
        {found && 'rows' in found && <Found found={found} take={take} />}
      </section>
    </div>
  );
}

interface AskedProps {
  readonly one: Asked;
  readonly value: string;
  readonly change: (to: string) => void;
}

function AskedField({ one: { id, label, how, unit = '', choices }, value, change }: AskedProps) {
  const shared = { id: `c-${id}`, value, 'aria-describedby': `ch-${id}` };
  return (
    <div class="reading">
      <label for={`c-${id}`}>{label}</label>
      {choices ? (
        <select {...shared} onChange={(e) => change(e.currentTarget.value)}>
          <option value="">not told</option>
          {choices.map((choice) => (
            <option key={choice} value={choice}>
              {choice.replaceAll('-', ' ')}
            </option>
          ))}
        </select>
      ) : (
        <span class="field">
          <input
            {...shared}
            autocomplete="off"
            inputMode={unit === '' ? 'text' : 'decimal'}
            onInput={(e) => change(e.currentTarget.value)}
          />{' '}
          {unit}
        </span>
      )}
      <small id={`ch-${id}`}>{how}</small>
    </div>
  );
}

function Found({
  found: { head, screws, rows, legend, sections, foot },
  take,
}: { readonly found: SideBySide } & Pick<Props, 'take'>) {
  return (
    <>
      <h2>{head}</h2>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
      <section class="wide" tabIndex={0} aria-label="The figures of each screw">
        <table>
          <thead>
            <tr>
              <td />
              {screws.map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ label, cells }) => (
              <tr key={label}>
                <th scope="row">{label}</th>
                {cells.map((cell, i) => (
                  <td key={screws[i]}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {legend.map((line) => (
        <small key={line}>{line}</small>
      ))}
      {sections.map(({ title, entries }) => (
        <section key={title}>
          <h3>{title}</h3>
          <dl>
            {entries.map(({ label, text }) => (
              <div key={`${label}${text}`}>
                {label && <dt>{label}</dt>}
                <dd>{text}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
      {foot.map((line) => (
        <small key={line}>{line}</small>
      ))}
      <p>
        {screws.map((name) => (
          <button key={name} type="button" class="main" onClick={() => take(name)}>
            {`A nut for ${name}`}
          </button>
        ))}
      </p>
    </>
  );
}

/** What a field is called on this page. */
function labelOf(path: string): string {
  const own = ASKED.find((one) => one.id === path || (one.path && path.startsWith(one.path.join('.'))));
  return own?.label ?? path;
}
