import { SOLID_GROUP } from '../../judge/accept.js';
import { type CheckFacts, type Finding, hard, valued } from '../../judge/check.js';
import { finding } from '../../judge/run-checks.js';
import type { Kernel } from '../../solid/kernel.js';
import { NO_COMMON_VOLUME } from '../../solid/mate.js';
import type { Shape } from '../../solid/recipe.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import {
  type Assembly,
  lowerJaws,
  misplaced,
  pared,
  placedInsert,
  playAngle,
  squeezedVolume,
  upperJaws,
} from './assembly.js';
import type { CouplingDesign } from './dimensions.js';
import { flankSteps } from './jaws.js';
import { squeezeAt } from './misalignment.js';

/** Directions of the misalignment within one pitch of the jaws; the rest of the turn repeats them. */
const DIRECTIONS = 4;
/** Gap at each flank with which the play is tried where the lobes are squeezed, mm. */
const TRIAL_GAP = 0.1;
/** A lobe just touching its flank is taken back by this, and by the chords of a curved flank, mm. */
function touch({ jaws: { hollow } }: Assembly): number {
  return 0.002 + hollow / flankSteps(hollow) ** 2;
}

/** A smaller play is tried with the gap, degrees. */
const LEAST_PLAY = 0.15;
/** Squeezed volumes below this are compared with it, mm³. */
const LEAST_SQUEEZE = 1;

const solid = {
  group: SOLID_GROUP,
  question: 'prints',
  source: 'derived: the solids themselves',
  moves: 'jaws, insert, misalignment',
};

/**
 * Hubs and insert must not stand in each other by more than what is squeezed.
 *
 *     V = greatest common volume of two of them, lobes taken back by the squeeze; in place, pulled apart and misaligned
 */
const MATE: CheckFacts = {
  ...solid,
  id: 'solid-mate',
  title: 'Common volume of hubs and insert beyond the intended squeeze',
  unit: 'mm³',
  limits: hard({ max: NO_COMMON_VOLUME }),
};
/**
 * The lobes are squeezed on the solids as they were worked out.
 *
 *     off = |V of the solids − V worked out| / greater of V worked out and 1 mm³, V = lobes and jaws of one hub in common
 */
const SQUEEZE: CheckFacts = {
  ...solid,
  id: 'solid-squeeze',
  title: 'Squeeze of the lobes on the solids against arithmetic: relative difference',
  unit: '',
  limits: hard({ max: 0.05 }),
};
/**
 * The insert turns on the solids as far as was worked out.
 *
 *     off = |turn until the solids meet − turn worked out| · π/180 · reach of the lobes, turns in °
 */
const PLAY: CheckFacts = {
  ...solid,
  id: 'solid-play',
  title: 'Play of the insert on the solids against arithmetic: difference at the reach of the lobes',
  unit: 'mm',
  limits: hard({ max: 0.01 }),
};

/** Tries hubs and insert together on the solids: in place, misaligned, pulled apart and turned until they meet. */
export function mateCoupling(design: CouplingDesign, kernel: Kernel): Finding[] {
  const assembly = assemblyOf(design);
  const lower: Shape = { kind: 'mesh', mesh: kernel.fuse(lowerJaws(assembly)) };
  return [
    finding(MATE, valued(exactly(commonBeyondSqueeze(design, assembly, lower, kernel)), mateWords(design))),
    ...squeeze(assembly, lower, kernel),
    play(assembly, lower, kernel),
  ];
}

/** Hubs and insert of a design at finished sizes. */
export function assemblyOf({ jaws, insert, gap }: CouplingDesign): Assembly {
  // where flanks are curved, play hangs on how exactly the room inside the jaws is drawn
  return { jaws, insert: insert.finished, gap, chordError: jaws.hollow > 0 ? 0.005 : 0.04 };
}

function mateWords({ misalignment: { angular, parallel, axial }, jaws }: CouplingDesign): string {
  const offsets = `${plain(angular)}°, ${plain(parallel)} mm aside and ${plain(axial)} mm along`;
  return `in place, pulled apart, and misaligned by ${offsets} in ${DIRECTIONS * jaws.count} positions of a turn`;
}

function commonBeyondSqueeze(design: CouplingDesign, assembly: Assembly, lower: Shape, kernel: Kernel): number {
  const { gap, jaws, insert } = assembly;
  const upper = upperJaws(lower, assembly);
  const pull = [0.3, 0.9].map((share) => ({ by: [0, 0, share * jaws.height] as const }));
  const inPlace = placedInsert({ ...assembly, insert: pared(insert, assembly, touch(assembly)) });
  const aligned = [
    ...kernel.commonVolumes(lower, upper, [{}, ...pull]),
    ...kernel.commonVolumes(lower, inPlace, [{}, ...pull]),
    ...kernel.commonVolumes(upper, inPlace, [{}]),
  ];
  const { angular, parallel, axial } = design.misalignment;
  const lean = placedInsert({ ...assembly, insert: pared(insert, assembly, squeezeAt(design) + touch(assembly)) });
  const misaligned = Array.from({ length: DIRECTIONS }, (_, i) => (360 * i) / (DIRECTIONS * jaws.count)).flatMap(
    (towards) => {
      const far = misplaced(upper, gap, { angular, parallel, axial, towards });
      const half = misplaced(lean, gap, { angular: angular / 2, parallel: parallel / 2, axial: axial / 2, towards });
      return [lower, half]
        .flatMap((still) => kernel.commonVolumes(still, far, [{}]))
        .concat(kernel.commonVolumes(lower, half, [{}]));
    },
  );
  return Math.max(...aligned, ...misaligned);
}

function squeeze(assembly: Assembly, lower: Shape, kernel: Kernel): Finding[] {
  const wanted = squeezedVolume(assembly);
  if (wanted < 0.01) return [];
  const [found] = kernel.commonVolumes(lower, placedInsert(assembly), [{}]);
  const words = `lobes and jaws of one hub share ${plain(found!, 2)} mm³, ${plain(wanted, 2)} mm³ were worked out`;
  return [finding(SQUEEZE, valued(exactly(Math.abs(found! - wanted) / Math.max(wanted, LEAST_SQUEEZE)), words))];
}

/** Shares of the worked-out play between which the solids are asked, and how often the stretch is halved. */
const MEETING = { free: 0.8, met: 1.4, halvings: 7 };

/** Share of the worked-out play at which the solids meet; 0 where they meet long before, 2 where they never do. */
function firstMeeting(meets: (share: number) => boolean): number {
  let { free, met } = MEETING;
  if (meets(free)) return 0;
  if (!meets(met)) return 2;
  for (let i = 0; i < MEETING.halvings; i++) {
    const middle = (free + met) / 2;
    if (meets(middle)) met = middle;
    else free = middle;
  }
  return (free + met) / 2;
}

/** Turns the insert in one hub until they meet, about the angle that was worked out. */
function play(assembly: Assembly, lower: Shape, kernel: Kernel): Finding {
  const own = playAngle(assembly);
  const trial = own > LEAST_PLAY ? assembly : { ...assembly, insert: pared(assembly.insert, assembly, TRIAL_GAP) };
  const wanted = playAngle(trial);
  const meets = (share: number) => {
    const turns = [{ turn: share * wanted }, { turn: -share * wanted }];
    return Math.max(...kernel.commonVolumes(lower, placedInsert(trial), turns)) > NO_COMMON_VOLUME;
  };
  const found = firstMeeting(meets);
  const with_ = own > LEAST_PLAY ? 'as it is' : `with lobes taken back to ${plain(TRIAL_GAP)} mm at each flank`;
  const words = `${with_}, the insert turns ${plain(found * wanted)}° before it meets a jaw; ${plain(wanted)}° were worked out`;
  const apart = Math.abs(found - 1) * wanted * (Math.PI / 180) * trial.insert.reach;
  return finding(PLAY, valued(exactly(apart), words));
}
