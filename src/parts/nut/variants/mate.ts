import { SOLID_GROUP } from '../../../judge/accept.js';
import { type CheckFacts, type Finding, hard, valued } from '../../../judge/check.js';
import { finding } from '../../../judge/run-checks.js';
import type { Kernel, Pose } from '../../../solid/kernel.js';
import { NO_COMMON_VOLUME } from '../../../solid/mate.js';
import type { Shape } from '../../../solid/recipe.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { type NutPocket, nutPocketOutline } from '../../common/bought-nut.js';
import { floatIn } from '../../common/float.js';
import { type FloatTrial, floatFinding, floatPins, LEAST_TRIED } from '../../common/float-mate.js';
import type { NutDesign } from '../dimensions.js';
import { mateNut, nutMate } from '../mate.js';
import { nutBodies } from './bodies.js';

const ASSEMBLY: CheckFacts = {
  id: 'solid-assembly',
  group: SOLID_GROUP,
  question: 'prints',
  title: 'Common volume of the pieces put together',
  unit: 'mm³',
  source: 'derived: the solids themselves',
  limits: hard({ max: NO_COMMON_VOLUME }),
  moves: 'family, catch_nut',
};

/** Mates the thread with its screw, the pieces with each other, and bought nuts with their pockets. */
export function mateVariant(design: NutDesign, kernel: Kernel): Finding[] {
  const { family, catchPocket } = design;
  const shapes = () => nutBodies(asFinished(design)).map(({ recipe }) => recipe.shape);
  const floats = floatTrial(design, shapes).map((trial) => floatFinding(trial, kernel));
  const thread = [...(family?.kind === 'holder' ? [] : mateNut(design, kernel)), ...floats];
  if (family?.kind === 'twin') return [...thread, bothThreads(design, family.shift, kernel)];
  const pocket = family?.kind === 'holder' ? family.pocket : catchPocket;
  if (pocket) return [...thread, boughtNut(design, pocket, kernel)];
  if (family?.kind === 'split' || family?.kind === 'anti-backlash') return [...thread, pieces(design, kernel)];
  return thread;
}

/** The whole screw at its largest through both threads, in the middle of the play that they leave and pushed both ways. */
function bothThreads(design: NutDesign, shift: number, kernel: Kernel): Finding {
  const [body] = nutBodies(asFinished(design));
  const { screw, play } = nutMate(design);
  const { pitch } = design.finished.thread;
  const bar: Shape = {
    kind: 'thread',
    thread: { ...screw, from: -pitch, to: design.finished.length + pitch },
  };
  const push = (0.9 * Math.max(0, play - shift)) / 2;
  const poses = [0, push, -push].map((by): Pose => ({ by: [0, 0, shift / 2 + by], turn: 0 }));
  const common = Math.max(...kernel.commonVolumes(body!.recipe.shape, bar, poses));
  return finding(
    ASSEMBLY,
    valued(exactly(common), `the screw in both threads at once, pushed both ways by ${plain(push, 3)} mm`),
  );
}

/** The nut over what stands in its holes, where it floats. */
function floatTrial({ float, holes, finished }: NutDesign, shapes: () => readonly Shape[]): FloatTrial[] {
  if (!float || !holes) return [];
  const sideways = floatIn(holes.diameter, float.pin).likely;
  if (sideways < LEAST_TRIED) return [];
  const moving = floatPins(holes.centres, { pin: float.pin, from: -finished.length, to: 2 * finished.length });
  const radius = Math.max(...holes.centres.map((centre) => Math.hypot(...centre)));
  return [{ still: shapes(), moving, free: sideways, stop: sideways, radius }];
}

/** The design with the sizes in use for those of the file. */
export function asFinished(design: NutDesign): NutDesign {
  const compensation = { shrink: 'none', holes: 'none' } as const;
  return { ...design, printed: design.finished, printer: { ...design.printer, compensation } };
}

function boughtNut(design: NutDesign, pocket: NutPocket, kernel: Kernel): Finding {
  const [body] = nutBodies(asFinished(design));
  const { length, flange } = design.finished;
  const bottom = -(flange?.offset ?? 0);
  const low = design.family?.kind === 'holder' && design.family.opens === 'face';
  const air = 0.01;
  const from = low ? bottom + pocket.depth - pocket.nut.height - air : bottom + length - pocket.depth + air;
  const nut: Shape = {
    kind: 'prism',
    outlines: [nutPocketOutline(pocket, pocket.nut.acrossFlats)],
    from,
    to: from + pocket.nut.height,
  };
  const [common] = kernel.commonVolumes(body!.recipe.shape, nut, [{ by: [0, 0, 0], turn: 0 }]);
  return finding(
    ASSEMBLY,
    valued(
      exactly(common!),
      `the bought nut, ${plain(pocket.nut.acrossFlats)} mm across its flats, stands in its pocket`,
    ),
  );
}

function pieces(design: NutDesign, kernel: Kernel): Finding {
  const [first, second] = nutBodies(asFinished(design));
  const still: Pose = { by: [0, 0, 0], turn: 0 };
  const { family } = design;
  const pressed = family?.kind === 'anti-backlash' ? Math.min(1.5, family.spring.working - family.spring.solid) : 0;
  const poses = pressed > 0 ? [still, { by: [0, 0, -pressed] as const, turn: 0 }] : [still];
  const common = Math.max(...kernel.commonVolumes(first!.recipe.shape, second!.recipe.shape, poses));
  const words =
    pressed > 0
      ? `the follower slides on its keys, ${plain(pressed)} mm further in too`
      : 'the halves meet in one plane';
  return finding(ASSEMBLY, valued(exactly(common), words));
}
