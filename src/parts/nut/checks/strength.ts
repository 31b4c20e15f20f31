import { type Check, hard, notJudged, soft, valued } from '../../../fit/check.js';
import { flangeBending } from '../../../mechanics/flange/flange-bending.js';
import { standingHeatShare } from '../../../mechanics/strength/heat-shares.js';
import { threadPressure } from '../../../mechanics/thread/bearing-pressure.js';
import { threadBending } from '../../../mechanics/thread/bending.js';
import { grooveWidthAt } from '../../../mechanics/thread/nut-thread.js';
import { threadShear } from '../../../mechanics/thread/shear.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import type { NutDesign } from '../dimensions.js';

type NutCheck = Check<NutDesign>;
const strength = { group: 'strength', question: 'holds', unit: 'MPa', source: 'common practice' } as const;

/** Design stress is the strength divided by this for loads that stand still. @source common-practice */
const SAFETY = 3;

/** Ridges of a printed flank carry the load: half of what a smooth one bears. @source common-practice */
const PRINTED_SURFACE = 0.5;

/** The turns of a nut and the flank they share with the screw, finished sizes. */
export function engagementOf({ finished, screw }: NutDesign) {
  const { thread, length } = finished;
  const overlap = Math.min(screw.major.likely, thread.major) - Math.max(screw.minor.likely, thread.minor);
  return {
    pitchDiameter: screw.pitchDiameter.likely,
    flankDepth: Math.max(0.01, overlap / 2),
    engagedLength: length,
    pitch: thread.pitch,
    rootDiameter: thread.major,
    rootWidth: thread.pitch - grooveWidthAt(thread, thread.major),
    depth: (thread.major - thread.minor) / 2,
  };
}

/** A flank that is pressed too hard creeps out of shape. */
export const threadPressureCheck: NutCheck = {
  ...strength,
  id: 'thread-pressure',
  title: 'Pressure on the flanks',
  moves: 'duty.load, body.length, material',
  run: (design) => {
    const { duty, material } = design;
    if (duty.load === undefined) return notJudged('duty.load');
    const pressure = threadPressure({ ...engagementOf(design), axialForce: duty.load });
    const most = PRINTED_SURFACE * material.pressureLimit;
    const cure = pressure > most ? '; a longer nut, another material or less load' : '';
    return valued(
      exactly(pressure),
      `${plain(pressure)} MPa; a printed flank of ${material.name} bears ${plain(most)} MPa in motion${cure}`,
      soft({ max: most }, { max: 3 * most }),
    );
  },
};

/** Teeth that shear off at their root. */
export const threadShearCheck: NutCheck = {
  ...strength,
  id: 'thread-shear',
  title: 'Shear at the root of the teeth',
  moves: 'duty.load, body.length, material',
  run: (design) => {
    const { duty, material } = design;
    if (duty.load === undefined) return notJudged('duty.load');
    const shear = threadShear({ ...engagementOf(design), axialForce: duty.load });
    const most = material.shear / SAFETY;
    return valued(
      exactly(shear),
      `${plain(shear)} MPa of ${plain(most)} MPa, a third of what ${material.name} stands`,
      hard({ max: most }),
    );
  },
};

/** Teeth that bend off. */
export const threadBendingCheck: NutCheck = {
  ...strength,
  id: 'thread-bending',
  title: 'Bending at the root of the teeth',
  moves: 'duty.load, body.length, material',
  run: (design) => {
    const { duty, material } = design;
    if (duty.load === undefined) return notJudged('duty.load');
    const bending = threadBending({ ...engagementOf(design), axialForce: duty.load });
    const most = material.tensile / SAFETY;
    return valued(
      exactly(bending),
      `${plain(bending)} MPa of ${plain(most)} MPa, a third of what ${material.name} stands`,
      soft({ max: most }, { max: material.tensile }),
    );
  },
};

/** Bending in the flange, or undefined where no bolts hold one. */
function flangeStress({ finished, holes, duty }: NutDesign): number | undefined {
  if (!finished.flange || !holes || duty.load === undefined) return undefined;
  const circle = 2 * Math.max(...holes.centres.map((centre) => Math.hypot(...centre)));
  return flangeBending({
    axialForce: duty.load,
    bodyDiameter: Math.min(finished.body.across, finished.body.flats ?? Infinity),
    boltCircle: circle,
    thickness: finished.flange.thickness,
  });
}

/** The load goes from the thread through the flange to the bolts. */
export const flangeBendingCheck: NutCheck = {
  ...strength,
  id: 'flange-bending',
  title: 'Bending of the flange',
  moves: 'flange.thickness, holes.circle, duty.load, material',
  grave: true,
  run: (design) => {
    const { finished, holes, duty, material } = design;
    if (!finished.flange || !holes) return undefined;
    if (duty.load === undefined) return notJudged('duty.load');
    const stress = flangeStress(design)!;
    const most = material.tensile / SAFETY;
    return valued(
      exactly(stress),
      `${plain(stress)} MPa of ${plain(most)} MPa where flange and body meet`,
      soft({ max: most }, { max: material.tensile }),
    );
  },
};

/** A load that never lets go makes plastic flow. */
export const creepCheck: NutCheck = {
  ...strength,
  id: 'creep',
  title: 'Load that stands for years',
  unit: '',
  moves: 'duty.load, duty.temperature, body.length, flange.thickness, material',
  run: (design) => {
    const { duty, material } = design;
    if (duty.axis === 'horizontal') return undefined;
    if (duty.load === undefined) return notJudged('duty.load');
    if (duty.temperature === undefined) return notJudged('duty.temperature');
    const at = { ...engagementOf(design), axialForce: duty.load };
    const shares: readonly (readonly [string, number])[] = [
      ['flanks', threadPressure(at) / (PRINTED_SURFACE * material.compressive)],
      ['shear of the teeth', threadShear(at) / material.shear],
      ['bending of the teeth', threadBending(at) / material.tensile],
      ['flange', (flangeStress(design) ?? 0) / material.tensile],
    ];
    const [where, share] = shares.reduce((worst, next) => (next[1] > worst[1] ? next : worst));
    const most = material.shares.years * standingHeatShare(material, duty.temperature);
    return valued(
      exactly(share),
      `${plain(100 * share, 1)} % of the strength by ${where}; ${material.name} carries ${plain(100 * most, 1)} % for good at ${plain(duty.temperature, 0)} °C`,
      soft({ max: most }, { max: 3 * most }),
    );
  },
};
