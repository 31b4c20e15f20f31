import { useEffect, useId, useRef, useState } from 'preact/hooks';
import type { DrawnView, Point, SizeMark, Stroke } from '../../../src/parts/part-views.js';
import { textFields } from '../../../src/sheet/edit-text.js';
import { type Flag, frame } from '../state/flags.js';
import { withField } from '../state/state.js';
import { LateInput } from './late-input.js';
import { OneReading, type ReadingField } from './one-reading.js';

interface Props {
  readonly view: DrawnView | undefined;
  /** why the solid draws none, or none but a sketch */
  readonly why: string | undefined;
  readonly sheet: string;
  readonly write: (sheet: string) => void;
  readonly name: string;
  /** whether a field moves the question that is open */
  readonly isLit: (field: string) => boolean;
  /** what a field moves, in words; empty where it moves nothing */
  readonly moves: (field: string) => string;
  readonly isNarrow: boolean;
}

/** What a size's flag holds, and what happens to what is typed there. */
export interface FlagField {
  readonly value: string;
  readonly change: (typed: string) => void;
  /** where its name in the report does not do */
  readonly label?: string;
  /** its name where it is heard, with what it moves */
  readonly spoken?: string;
  /** moves what is looked at */
  readonly isLit?: boolean;
  /** told when the field is left, so that a blank between two readings can be typed */
  readonly isLate?: boolean;
}

const HEIGHT = 400;
const NARROW_HEIGHT = 262;

/** The part cut through, with its flags: sizes that are fields of the sheet take a reading where they stand. */
export function Section({ view, why, sheet, write, name, isLit, moves, isNarrow }: Props) {
  const values = new Map(textFields(sheet).map(({ path, value }) => [path.join('.'), value]));
  const [picked, pick] = useState<string>();
  const fieldOf = (size: SizeMark): FlagField | undefined => {
    const { field = 'derived' } = size;
    const value = values.get(field);
    if (value === undefined) return undefined;
    return {
      value,
      spoken: [labelOf(size), moves(field)].filter((part) => part !== '').join(', '),
      isLit: isLit(field),
      change: (typed) => write(withField(sheet, field.split('.'), typed)),
    };
  };
  const fields = (view?.sizes ?? []).flatMap((size): ReadingField[] => {
    const field = size.side === 'riser' || size.side === 'leader' ? undefined : fieldOf(size);
    return field ? [{ name: size.name, label: labelOf(size), field }] : [];
  });
  const at = Math.max(
    0,
    fields.findIndex((one) => one.name === picked),
  );
  return (
    <section class="card section" aria-label="Section">
      {view ? (
        <>
          <h2>{`${name}, cut through`}</h2>
          <Board
            view={view}
            height={isNarrow ? NARROW_HEIGHT : HEIGHT}
            fieldOf={fieldOf}
            {...(isNarrow ? { pick, picked: fields[at]?.name } : {})}
          />
          {isNarrow && <OneReading fields={fields} at={at} go={(to) => pick(fields[to]?.name)} />}
          {why !== undefined && <p class="quiet">{why}</p>}
        </>
      ) : (
        <p class="quiet">{why ?? 'the picture follows when the sheet holds together'}</p>
      )}
    </section>
  );
}

interface BoardProps {
  readonly view: DrawnView;
  readonly height: number;
  readonly fieldOf: (size: SizeMark) => FlagField | undefined;
  /** narrower than this no flag has room, and the letters do [px] */
  readonly roomy?: number;
  /** where readings are typed beside the drawing: takes one up there */
  readonly pick?: (name: string) => void;
  readonly picked?: string | undefined;
}

/** A view with flags at its sizes. */
export function Board({ view, height, fieldOf, roomy = 0, pick, picked }: BoardProps) {
  const host = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(640);
  useEffect(() => {
    if (!host.current) return;
    const seen = new ResizeObserver(([entry]) => entry && setWidth(Math.max(320, entry.contentRect.width)));
    seen.observe(host.current);
    return () => seen.disconnect();
  }, []);
  const { flags, toBox } = frame(width < roomy ? { ...view, sizes: [] } : view, { width, height });
  return (
    <div class="board" ref={host} style={{ height: `${height}px` }}>
      <svg width={width} height={height} aria-hidden="true">
        <defs>
          <pattern id="cut" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <line x1="0" y1="0" x2="0" y2="6" />
          </pattern>
          <pattern id="cut2" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
            <line x1="0" y1="0" x2="0" y2="6" />
          </pattern>
        </defs>
        {view.hatched.map((loops) => (
          <path key={key(loops)} d={loops.map((loop) => path(loop, toBox, true)).join('')} class="hatched" />
        ))}
        {(view.crossHatched ?? []).map((loops) => (
          <path key={key(loops)} d={loops.map((loop) => path(loop, toBox, true)).join('')} class="hatched other" />
        ))}
        {view.strokes.map((stroke) => (
          <Line key={JSON.stringify(stroke).slice(0, 200)} stroke={stroke} toBox={toBox} />
        ))}
        {flags.map((flag) => (
          <g key={flag.size.name} class={flagClass(flag.size, fieldOf(flag.size), picked)}>
            <path
              d={`${path([flag.on[0], flag.line[0]], same)}${path([flag.on[1], flag.line[1]], same)}`}
              class="witness"
            />
            <path d={path([flag.line[0], flag.line[1]], same)} class="dimension" />
          </g>
        ))}
        {view.letters.map(({ text, at, away, around = 0 }) => {
          const [x, y] = toBox([at[0] + around * away[0], at[1] + around * away[1]]);
          return (
            <text key={text} x={x + LETTER_OFF * away[0]} y={y - LETTER_OFF * away[1]} class="letter">
              {text}
            </text>
          );
        })}
      </svg>
      {flags.map((flag) => (
        <FlagLabel
          key={flag.size.name}
          flag={flag}
          field={fieldOf(flag.size)}
          {...(pick ? { pick: () => pick(flag.size.name), isPicked: picked === flag.size.name } : {})}
        />
      ))}
    </div>
  );
}

/** So far from its point stands a letter that stands clear [px]. */
const LETTER_OFF = 12;

interface LabelProps {
  readonly flag: Flag;
  readonly field: FlagField | undefined;
  readonly pick?: () => void;
  readonly isPicked?: boolean;
}

/** A size on its line: a field where the sheet has it, else the figure alone. */
function FlagLabel({ flag: { size, at }, field, pick, isPicked = false }: LabelProps) {
  const place = { left: `${at[0]}px`, top: `${at[1]}px` };
  const label = field?.label ?? labelOf(size);
  const id = useId();
  if (field === undefined)
    return (
      <span class="label" style={place} title={label}>
        {`${size.sign ?? ''}${rounded(size.value)}`}
      </span>
    );
  if (pick)
    return (
      <button
        type="button"
        class={`label reading${field.isLit ? ' lit' : ''}`}
        style={place}
        aria-pressed={isPicked}
        aria-label={`${label} ${field.value}`}
        onClick={pick}
      >
        {field.value === '' ? '?' : field.value}
      </button>
    );
  const { value, change } = field;
  const shared = {
    id,
    inputMode: 'decimal',
    'aria-label': `${field.spoken ?? label}, on the drawing`,
    value,
    size: Math.max(4, value.length),
  } as const;
  return (
    <label for={id} class={`label reading ${size.side}${field.isLit ? ' lit' : ''}`} style={place}>
      <span>{label}</span>
      {field.isLate ? (
        <LateInput {...shared} change={change} />
      ) : (
        <input {...shared} autocomplete="off" onInput={(e) => change(e.currentTarget.value)} />
      )}
    </label>
  );
}

function labelOf(size: SizeMark): string {
  return `${words(size.name)} ${size.sign ?? ''}`.trim();
}

function flagClass(size: SizeMark, field: FlagField | undefined, picked: string | undefined): string {
  return `flag${field?.isLit || size.name === picked ? ' lit' : ''}`;
}

function Line({ stroke, toBox }: { readonly stroke: Stroke; readonly toBox: (point: Point) => Point }) {
  if (stroke.kind === 'path') return <path d={path(stroke.points, toBox, stroke.closed)} class={stroke.line} />;
  const [cx, cy] = toBox(stroke.center);
  const r = Math.abs(toBox([stroke.center[0] + stroke.radius, stroke.center[1]])[0] - cx);
  if (stroke.kind === 'circle') return <circle cx={cx} cy={cy} r={r} class={stroke.line} />;
  const end = (angle: number): Point => {
    const turn = (angle * Math.PI) / 180;
    return toBox([
      stroke.center[0] + stroke.radius * Math.cos(turn),
      stroke.center[1] + stroke.radius * Math.sin(turn),
    ]);
  };
  const sweep = (((stroke.to - stroke.from) % 360) + 360) % 360;
  const [from, to] = [end(stroke.from), end(stroke.to)];
  return <path d={`M${from.join(' ')}A${r} ${r} 0 ${sweep > 180 ? 1 : 0} 0 ${to.join(' ')}`} class={stroke.line} />;
}

function path(points: readonly Point[], toBox: (point: Point) => Point, closed = false): string {
  return (
    points.map((point, i) => `${i === 0 ? 'M' : 'L'}${toBox(point).map(short).join(' ')}`).join('') +
    (closed ? 'Z' : '')
  );
}

const same = (point: Point): Point => point;

function short(value: number): string {
  return value.toFixed(1);
}

function rounded(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

function words(name: string): string {
  return name.replaceAll('_', ' ').replaceAll('.', ' ');
}

function key(loops: readonly (readonly Point[])[]): string {
  return loops.map((loop) => `${loop.length}:${loop[0]?.join()}`).join('|');
}
