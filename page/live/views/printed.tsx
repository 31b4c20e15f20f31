import { useEffect, useState } from 'preact/hooks';
import type { DrawnView, SizeMark } from '../../../src/parts/part-views.js';
import type { Mistaken } from '../engine/engine.js';
import type { Learned, Profiles } from '../engine/learn.js';
import { type Blank, blanksOf, filled } from '../state/form.js';
import { withProfile } from '../state/state.js';
import type { Threads } from './app.js';
import { LateInput } from './late-input.js';
import { type Keep, Take } from './ledger.js';
import type { Told } from './part.js';
import { Board, type FlagField } from './section.js';

interface Props {
  readonly threads: Threads;
  readonly told: Told;
  readonly form: string;
  readonly fill: (form: string) => void;
  readonly write: (sheet: string) => void;
  readonly keep: Keep;
  /** the printed bodies, from above */
  readonly plates: readonly DrawnView[];
}

/** The print talks back: what was seen on it is filled in, and becomes a profile. */
export function Printed(props: Props) {
  const { threads, told, form, fill } = props;
  const [isAsked, setAsked] = useState(false);
  const ask = async () => {
    setAsked(true);
    const text = await threads.cures.ask((engine) => engine.form(told));
    setAsked(false);
    if (text !== undefined) fill(text);
  };
  if (!/^part:\s*(?:nut|coupon)\b/m.test(told.sheet)) return null;
  return (
    <section class="card printed" aria-label="It is printed">
      <h2>It is printed</h2>
      {form === '' ? (
        <button type="button" onClick={ask} disabled={isAsked}>
          enter what you see on it
        </button>
      ) : (
        <Form {...props} />
      )}
    </section>
  );
}

function Form({ threads, told, form, fill, write, keep, plates }: Props) {
  const [said, setSaid] = useState<{ readonly of: string; readonly what: Learned | Mistaken }>();
  useEffect(() => setSaid(undefined), [form]);
  const hasFlags = ({ sizes }: DrawnView) =>
    sizes.some((size) => size.side !== 'riser' && size.side !== 'leader' && fieldOf(size) !== undefined);
  const learn = async () => {
    const what = await threads.cures.ask((engine) => engine.learn(form, told.profiles as Profiles));
    if (what) setSaid({ of: form, what });
  };
  const what = said?.of === form ? said.what : undefined;
  const blanks = blanksOf(form);
  const fieldOf = ({ name }: SizeMark): FlagField | undefined => {
    const blank = blanks.find((one) => sizeName(one) === name);
    return (
      blank && {
        label: blank.label,
        value: blank.value,
        isLate: true,
        change: (typed) => fill(filled(form, blank, typed)),
      }
    );
  };
  return (
    <>
      <p class="quiet">Blanks are fine; several readings of one size, apart by a blank, are better than one.</p>
      {blanks.some(({ path }) => path[0] === 'readings') && (
        <div class="plates">
          {plates.map((view) => (
            <figure key={view.title} class={hasFlags(view) ? 'wide' : ''}>
              <figcaption>{view.title}</figcaption>
              <Board view={view} height={hasFlags(view) ? 400 : 150} fieldOf={fieldOf} roomy={600} />
            </figure>
          ))}
        </div>
      )}
      <div class="blanks">
        {blanks.map((blank) => (
          <BlankField key={blank.path.join('.')} blank={blank} answer={(typed) => fill(filled(form, blank, typed))} />
        ))}
      </div>
      <button type="button" class="main" onClick={learn}>
        what does it say?
      </button>
      {what && 'mistakes' in what && (
        <ul role="alert">
          {what.mistakes.slice(0, 8).map(({ path, allowed }) => (
            <li key={`${path}${allowed}`}>
              <strong>{path}</strong> {allowed}
            </li>
          ))}
        </ul>
      )}
      {what && 'lines' in what && (
        <>
          <pre class="said">{what.lines.join('\n')}</pre>
          {what.profile && <TakeProfile learned={what.profile} told={told} write={write} keep={keep} />}
        </>
      )}
    </>
  );
}

/** The size of a view that a feature's reading is of. */
function sizeName({ path }: Blank): string {
  return path[0] === 'readings' ? path[1]!.toLowerCase().replaceAll(' ', '_') : '';
}

function BlankField({ blank, answer }: { readonly blank: Blank; readonly answer: (typed: string) => void }) {
  const { path, label, how, value, choices } = blank;
  const id = `b-${path.join('-')}`;
  return (
    <div class="reading">
      <label for={id}>{label}</label>
      {choices ? (
        <select id={id} value={value} aria-describedby={`${id}-how`} onChange={(e) => answer(e.currentTarget.value)}>
          <option value="">not looked at</option>
          {choices.map((one) => (
            <option key={one} value={one}>
              {one}
            </option>
          ))}
        </select>
      ) : (
        <LateInput id={id} value={value} aria-describedby={`${id}-how`} change={answer} />
      )}
      <small id={`${id}-how`}>{how}</small>
    </div>
  );
}

interface TakeProfileProps extends Pick<Props, 'told' | 'write' | 'keep'> {
  readonly learned: NonNullable<Learned['profile']>;
}

function TakeProfile({ learned: { id, revision, text }, told, write, keep }: TakeProfileProps) {
  const isKept = told.profiles[id] === text;
  const isNut = /^part:\s*nut\b/m.test(told.sheet);
  return (
    <p>
      {`profile ${id}, revision ${revision}: `}
      <Take file={`${id}.yaml`} bytes={new TextEncoder().encode(text)} />{' '}
      {keep.put && !isKept && (
        <button type="button" onClick={() => keep.put?.([{ kind: 'profile', name: id, text }])}>
          keep it in the drawer
        </button>
      )}
      {isKept && isNut && (
        <button type="button" onClick={() => write(withProfile(told.sheet, id))}>
          make this part by it
        </button>
      )}
      {isKept && !isNut && <span class="quiet">{`kept: a sheet that says profile: ${id} is made by it`}</span>}
    </p>
  );
}
