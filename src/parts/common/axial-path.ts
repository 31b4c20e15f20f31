import { type Bounds, hard, type LimitsInForce, notJudged, type Outcome, valued } from '../../judge/check.js';
import { keeps } from '../../judge/judge.js';
import { barWeight } from '../../mechanics/bar-weight.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import type { Shaft } from './bore.js';

/** Where the motor of a drive is. */
export type Mounting = 'motor-below' | 'motor-above' | 'horizontal';

/** A screw whose length nobody tells is as long as such screws usually are at most, in diameters: a metre of 8 mm. @source common-practice */
const LONGEST_IN_DIAMETERS = 125;

/** The shortest that is usual, mm. @source common-practice */
export const SHORTEST_SPAN = 100;

/** Length of a screw that nobody tells: as long as such screws usually are at most, mm. */
export function longestSpan(diameter: number): number {
  return LONGEST_IN_DIAMETERS * diameter;
}

/** What acts along a screw. */
export interface AxialPath {
  /** undefined where nobody tells */
  readonly mounting?: Mounting;
  /** a bearing and collar, or a holder at the screw's end, carry it */
  readonly thrustBearing: boolean;
  readonly locatingHolder: boolean;
  /** the screw, or the shaft that is driven */
  readonly screw?: Shaft;
  /** N, along the screw: on a vertical axis the weight on it */
  readonly load?: number;
  /** N, with which the work lifts the screw */
  readonly upward?: number;
  /** free length of the screw, mm */
  readonly span?: number;
}

/** Whether a screw is known to stand or to hang. */
export function isUpright(mounting: Mounting | undefined): boolean {
  return mounting === 'motor-below' || mounting === 'motor-above';
}

/** What carries the screw in place of the coupling, in words; undefined where nothing does. */
export function carriedWords({ thrustBearing, locatingHolder }: AxialPath): string | undefined {
  if (thrustBearing) return 'a thrust bearing carries the screw along its axis';
  return locatingHolder ? 'the holder at its end carries the screw along its axis' : undefined;
}

/** Weight of the screw itself, at most, and in words [N]. */
export function ownWeight({ screw, span }: Pick<AxialPath, 'screw' | 'span'>): {
  readonly force: number;
  readonly words: string;
} {
  if (!screw) return { force: 0, words: 'its own weight' };
  const diameter = screw.diameter.likely;
  const length = span ?? longestSpan(diameter);
  const force = barWeight({ diameter, length });
  const told =
    span === undefined ? `${plain(length, 0)} mm of it at most, duty.span not being told` : `${plain(span)} mm of it`;
  return { force, words: `${plain(force, 1)} N of its own weight (${told})` };
}

/** A design by the shortest screw that is usual; undefined where its length is told, or nothing of it weighs. */
function byShortest<Design extends { readonly axial: AxialPath }>(design: Design): Design | undefined {
  const { axial } = design;
  if (axial.span !== undefined || axial.screw === undefined || axial.mounting === 'horizontal') return undefined;
  return { ...design, axial: { ...axial, span: SHORTEST_SPAN } };
}

/** What a screw weighs whose length is not told. */
export const UNTOLD_SPAN = { field: 'duty.span', milder: byShortest };

/** Whether work lifts a screw that only stands on its motor: that is asked, and is to be less than what weighs on it. */
export function judgeStanding(path: AxialPath, pass: Bounds, cure: string): Outcome {
  const { upward, load } = path;
  if (upward === undefined) return notJudged('duty.upward');
  if (upward === 0) return valued(exactly(0), 'the weight pushes the halves together, and nothing lifts the screw');
  if (load === undefined) return notJudged('duty.load');
  const weight = load + (path.span === undefined ? 0 : ownWeight(path).force);
  const up = `the work lifts with ${plain(upward, 1)} N, ${plain(weight, 1)} N weigh on the screw`;
  return valued(exactly(upward - weight), keeps(upward - weight, pass) ? up : `${up}: nothing holds it down; ${cure}`);
}

/** What a motor is told to carry along its shaft, and the force of a jam; undefined where nobody tells [N]. */
export interface MotorThrust {
  readonly axialLimit: number | undefined;
  readonly jam: number | undefined;
  /** joined so that work which lifts the screw moves the motor's shaft; jaws come apart */
  readonly isPulled?: boolean;
}

/**
 * What stands on the motor's bearing, or is lifted off it by the work, against what it may carry; the work's force counts whole, since
 * what weighs on the screw may rest on something then. Motors' data rate nothing for the moment of a jam, so what that does is
 * no figure to judge by: the finding says that it is assumed.
 */
export function judgeMotorThrust(
  path: AxialPath,
  { axialLimit, jam, isPulled = false }: MotorThrust,
  limits: LimitsInForce,
): Outcome | undefined {
  const { load, mounting, upward } = path;
  if (carriedWords(path) !== undefined) return undefined;
  const lifts = isPulled && mounting !== 'horizontal';
  const missing = [
    ...(load === undefined ? ['duty.load'] : []),
    ...(axialLimit === undefined ? ['motor.axial_limit'] : []),
  ];
  if (load === undefined || axialLimit === undefined) return notJudged(...missing);
  const { force, words } = strongest(path, load, lifts ? (upward ?? 0) : 0);
  const own = hard({ max: axialLimit });
  const { max = axialLimit } = limits.of(own).pass;
  if (lifts && upward === undefined && force <= max) return notJudged('duty.upward');
  const cure = force > max ? '; carry the screw by a thrust bearing and a collar' : '';
  return valued(
    exactly(force),
    `${words} the motor shaft, which may carry ${plain(max, 1)} N${cure || jamWords(jam, max)}`,
    own,
  );
}

/** The greater of what weighs on the motor and what the work lifts with. */
function strongest(path: AxialPath, load: number, upward: number): { readonly force: number; readonly words: string } {
  const { mounting } = path;
  const screw = mounting === 'horizontal' ? { force: 0, words: '' } : ownWeight(path);
  const force = load + screw.force;
  const moves = mounting === 'motor-above' ? 'push' : 'pull';
  if (upward > force)
    return { force: upward, words: `${plain(upward, 1)} N with which the work lifts the screw ${moves}` };
  const parts = screw.force > 0 ? ` (${plain(load, 1)} N and ${screw.words})` : '';
  const acts = { 'motor-below': 'stand on', 'motor-above': 'hang from', horizontal: 'pull or push' };
  return { force, words: `${plain(force, 1)} N${parts} ${acts[mounting ?? 'motor-above']}` };
}

/** What is taken for granted of a jam; nothing where the motor carries it for good. */
function jamWords(jam: number | undefined, carries: number): string {
  if (jam === undefined) return '; that it bears a jam, which pushes harder for a moment, is assumed';
  if (jam <= carries) return '';
  return `; that it bears a jam, up to ${plain(jam, 0)} N for a moment, is assumed, since motors' data do not rate it: a thrust bearing takes it`;
}
