import { SOLID_GROUP } from '../../judge/accept.js';
import { type CheckFacts, type Finding, told } from '../../judge/check.js';
import { finding } from '../../judge/run-checks.js';
import { floatTurn } from '../../mechanics/float.js';
import type { Kernel, Pose } from '../../solid/kernel.js';
import { NO_COMMON_VOLUME } from '../../solid/mate.js';
import { cylinder, type Shape } from '../../solid/recipe.js';
import { plain } from '../../units/format.js';
import { polar } from './hole-pattern.js';

const FLOAT: CheckFacts = {
  id: 'solid-float',
  group: SOLID_GROUP,
  question: 'prints',
  title: 'Nut moved through its float and turned against its stop',
  unit: '',
  source: 'derived: the solids themselves',
  moves: 'float, holes.diameter, nut.holes.diameter',
};

/** Ways in which the nut is pushed. */
const DIRECTIONS = 8;
/** Shares of the float at which it must be free, and at which it must have met its stop. */
const FREE = 0.9;
const STOPPED = 1.1;
/** Facets of pins are inscribed: so much further it must be stopped for certain, mm. */
const FACETS = 0.05;

/** A float below this is none to try; the checks of the fit speak of it, mm. */
export const LEAST_TRIED = 0.02;

/** What is tried. */
export interface FloatTrial {
  readonly still: readonly Shape[];
  readonly moving: Shape;
  /** float that everything leaves, each way, and the one at which the holes stop it, mm */
  readonly free: number;
  readonly stop: number;
  /** of the holes that stop it, from the axis, mm */
  readonly radius: number;
}

/** Moves one against the other on the solids: free within the float each way and turn, stopped beyond it. */
export function floatFinding({ still, moving, free, stop, radius }: FloatTrial, kernel: Kernel): Finding {
  const common = (poses: readonly Pose[]) =>
    still
      .map((shape) => kernel.commonVolumes(shape, moving, poses))
      .reduce((sum, one) => sum.map((volume, i) => volume + one[i]!));
  const turn = (float: number) => floatTurn({ float, radius });
  const words = `${plain(free)} mm each way and ±${plain(turn(stop), 2)}°`;
  const loose = common(posesAt(FREE * free, FREE * turn(stop)));
  if (Math.max(...loose) > NO_COMMON_VOLUME)
    return finding(FLOAT, told('fail', `it meets what it should float between within ${words}`));
  const far = STOPPED * stop + FACETS;
  const stopped = common(posesAt(far, turn(far)));
  if (Math.min(...stopped) <= NO_COMMON_VOLUME) return finding(FLOAT, told('fail', `nothing stops it beyond ${words}`));
  return finding(FLOAT, told('pass', `free within ${words}, and stopped beyond`));
}

/** Sideways in every direction, and turned either way about the middle. */
function posesAt(sideways: number, turn: number): Pose[] {
  const pushed = Array.from({ length: DIRECTIONS }, (_, i): Pose => {
    const [x, y] = polar(sideways, (360 * i) / DIRECTIONS);
    return { by: [x, y, 0], turn: 0 };
  });
  return [...pushed, { by: [0, 0, 0], turn }, { by: [0, 0, 0], turn: -turn }];
}

/** What stands in the holes of a floating nut. */
export function floatPins(
  centres: readonly (readonly [number, number])[],
  { pin, from, to }: { readonly pin: number; readonly from: number; readonly to: number },
): Shape {
  const one = cylinder({ radius: pin / 2, sides: 96, circumscribed: false, from, to });
  return { kind: 'union', of: centres.map(([x, y]): Shape => ({ kind: 'moved', by: [x, y, 0], shape: one })) };
}
