import type { MeasurementKind } from '../../../src/identify/readings.js';
import type { Point } from '../../../src/parts/part-views.js';
import { OVER, type Typed } from '../state/readings.js';
import { DRAWN, type ScrewOutline, screwOutline } from '../state/screw-outline.js';

interface Props {
  readonly typed: Typed;
  /** the reading to be taken next */
  readonly wanted: MeasurementKind | undefined;
}

const WIDTH = 640;
const HEIGHT = 180;
/** A screw is drawn no higher than this [px]. */
const TALLEST = 96;

/** The screw in the hand as its readings tell it, and how the calipers are held for the next one. */
export function ScrewPicture({ typed, wanted }: Props) {
  const screw = screwOutline(typed);
  const scale = Math.min(WIDTH / (DRAWN * screw.pitch), TALLEST / screw.major);
  const left = (WIDTH - scale * DRAWN * screw.pitch) / 2;
  const toBox = ([x, y]: Point): Point => [left + scale * x, HEIGHT / 2 - scale * y];
  const isGuess = !screw.isRead.major || !screw.isRead.pitch;
  return (
    <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} class="hold" aria-hidden="true">
      <path
        d={closed([...screw.upper, ...screw.lower.toReversed()].map(toBox))}
        class={isGuess ? 'steel guess' : 'steel'}
      />
      <Hold wanted={wanted} screw={screw} toBox={toBox} />
    </svg>
  );
}

interface HoldProps {
  readonly wanted: MeasurementKind | undefined;
  readonly screw: ScrewOutline;
  readonly toBox: (point: Point) => Point;
}

/** The jaws at the reading that is wanted. */
function Hold({ wanted, screw: { major, minor, pitch }, toBox }: HoldProps) {
  const middle = 5 * pitch;
  if (wanted === 'major') {
    // wide flats that lie over several crests
    const [x, top] = toBox([middle, major / 2]);
    const [, low] = toBox([middle, -major / 2]);
    return (
      <>
        <path d={box(x - 70, top - 40, 140, 40)} class="jaw" />
        <path d={box(x - 70, low, 140, 40)} class="jaw" />
      </>
    );
  }
  if (wanted === 'minor') {
    // knife edges that reach into a groove
    const [x, top] = toBox([middle + pitch / 2, minor / 2]);
    const [low, bottom] = toBox([middle + pitch, -minor / 2]);
    return (
      <>
        <path d={`M${x} ${top}l-9 -44h18z`} class="jaw" />
        <path d={`M${low} ${bottom}l-9 44h18z`} class="jaw" />
      </>
    );
  }
  if (wanted === 'crests') {
    // from the left edge of one crest to the left edge of the tenth further on
    const [from, y] = toBox([0.817 * pitch, major / 2]);
    const [to] = toBox([(0.817 + OVER) * pitch, major / 2]);
    return (
      <>
        <path d={box(from - 16, y - 34, 16, 50)} class="jaw" />
        <path d={box(to, y - 34, 16, 50)} class="jaw" />
        <path d={`M${from} ${y - 22}H${to}`} class="way" />
      </>
    );
  }
  if (wanted === 'travel') {
    const [x, top] = toBox([2 * pitch, major / 2]);
    const [to] = toBox([9 * pitch, major / 2]);
    const [, low] = toBox([0, -major / 2]);
    return (
      <>
        <path d={box(x - 26, top - 26, 52, low - top + 52)} class="jaw" />
        <path d={`M${x + 34} ${top - 14}H${to}m-12 -7l12 7l-12 7`} class="way" />
      </>
    );
  }
  return null;
}

function box(x: number, y: number, width: number, height: number): string {
  return `M${x} ${y}h${width}v${height}h${-width}z`;
}

function closed(points: readonly Point[]): string {
  return `${points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('')}Z`;
}
