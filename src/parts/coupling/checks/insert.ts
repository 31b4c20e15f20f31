import { type Check, hard, notJudged, soft, valued } from '../../../judge/check.js';
import { allKeep, keeps } from '../../../judge/judge.js';
import { crownedShare } from '../../../mechanics/coupling/crowned-lobe.js';
import { elastomerModulus } from '../../../mechanics/coupling/elastomer.js';
import { insertGive } from '../../../mechanics/coupling/hard-insert.js';
import { lobeAllowance, lobeStress } from '../../../mechanics/coupling/insert-stress.js';
import { temperatureFactor } from '../../../mechanics/coupling/service-factors.js';
import { axialLostMotion, windUp } from '../../../mechanics/coupling/wind-up.js';
import { plain, worked } from '../../../units/format.js';
import { exactly, plusMinus } from '../../../units/measured.js';
import { playAngle } from '../assembly.js';
import type { CouplingDesign } from '../dimensions.js';
import { contactIn, crowdedBy } from '../jaw-load.js';
import { assemblyOf } from '../mate.js';
import { allowedMisalignment, MOST_SQUEEZE, squeezeAt, usedMisalignment } from '../misalignment.js';
import { driveFactors } from '../peak-torque.js';
import { insertTemperature } from '../temperatures.js';

type CouplingCheck = Check<CouplingDesign>;
const insert = { group: 'insert', question: 'carries', source: 'common practice' } as const;

/** Where jaws and lobes touch, finished sizes. */
function contactOf({ insert: { finished }, jaws, gap }: CouplingDesign) {
  const { bottom: _, top: __, ...contact } = contactIn({ jaws, insert: finished, gap });
  return contact;
}

function factors(design: CouplingDesign) {
  const { at, known } = insertTemperature(design);
  const warm = temperatureFactor(Math.min(120, at));
  return { warm, known, ...driveFactors(design.duty) };
}

function allowanceOf({ insert: { modulus } }: CouplingDesign) {
  return lobeAllowance({ modulus, reference: elastomerModulus({ hardness: 95, scale: 'A' }) });
}

/**
 * Pressure where lobes touch: barrelled ones meet flanks that are less hollow in their middle alone.
 *
 *     σ/t        σ = pressure as if they touched all along, n/z times that of all n jaws where z of them carry with a hard insert,
 *                t = share of that in which they do
 */
function pressed(design: CouplingDesign, factor: number) {
  const { insert: own, jaws, motor } = design;
  const torque = motor.torque * crowdedBy(jaws.count, own.modulus);
  const even = factor * lobeStress({ torque, ...contactOf(design) });
  const crown = Math.max(0, own.finished.barrel - jaws.hollow);
  const share = crownedShare({ stress: even, width: 2 * own.finished.halfWidth, modulus: own.modulus, crown });
  const stress = even > 0 ? even / share : 0;
  const words = share < 1 ? ` on ${plain(100 * share, 0)} % of a barrelled lobe` : '';
  const cure = share < 1 ? '; straight lobes (insert.lobes), curved flanks (jaws.flank),' : ';';
  return { stress, words, cure: `${cure} a larger outside, a higher insert or a harder one carries it` };
}

/** Lobes that are crushed in steady running. */
export const insertStress: CouplingCheck = {
  ...insert,
  id: 'insert-stress',
  title: 'Pressure on lobes, running',
  unit: 'MPa',
  source: 'DIN 740-2 factors; allowance: common practice',
  moves: 'motor.torque, hubs.outside_diameter, insert.height, insert.hardness, insert.lobes',
  run: (design, limits) => {
    const { warm, known } = factors(design);
    const { stress, words, cure: carries } = pressed(design, warm);
    const { normal } = allowanceOf(design);
    const own = hard({ max: normal });
    const { pass } = limits.of(own);
    const holds = keeps(stress, pass);
    if (holds && !known) return notJudged('duty.temperature');
    const cure = holds ? '' : carries;
    return valued(
      exactly(stress),
      `${plain(stress, 2)} MPa${words} with temperature factor ${plain(warm, 1)}; ${design.insert.hardness} carries ${plain(pass.max!, 2)} MPa${cure}`,
      own,
    );
  },
};

/** Lobes that are crushed when it starts or jams. */
export const insertPeak: CouplingCheck = {
  ...insert,
  id: 'insert-stress-peak',
  title: 'Pressure on lobes, start and stall',
  unit: 'MPa',
  source: 'DIN 740-2 factors; allowance: common practice',
  moves: 'motor.torque, duty.starts, duty.shock, hubs.outside_diameter, insert.height',
  run: (design, limits) => {
    const { warm, known, start, shock } = factors(design);
    const factor = warm * Math.max(start * 1.5, shock);
    const { stress, words, cure: carries } = pressed(design, factor);
    const { peak } = allowanceOf(design);
    const own = hard({ max: peak });
    const { pass } = limits.of(own);
    const holds = keeps(stress, pass);
    if (holds && !known) return notJudged('duty.temperature');
    const cure = holds ? '' : carries;
    return valued(
      exactly(stress),
      `${plain(stress, 2)} MPa${words} at ${plain(factor, 2)} × the motor torque; ${design.insert.hardness} carries ${plain(pass.max!, 2)} MPa${cure}`,
      own,
    );
  },
};

/**
 * Lobes that are squeezed too hard set and wear.
 *
 *     share = squeeze of a lobe at one flank / width of the lobe
 *     squeeze = squeeze built in + (aside/2 + t·(h/2 + t·r)) · b + fillet met; t = tan(angle/2)
 *     b = 1 of straight lobes, above 1 of barrelled ones; h, r = height of the insert and reach of its lobes
 */
export const insertSqueeze: CouplingCheck = {
  ...insert,
  id: 'insert-squeeze',
  title: 'Squeeze of a lobe, of its width',
  unit: '',
  limits: { pass: { max: MOST_SQUEEZE }, fail: { max: 0.25 } },
  moves: 'insert.flank_clearance, misalignment',
  run: (design, { pass }) => {
    const squeeze = squeezeAt(design);
    const width = 2 * design.insert.finished.halfWidth;
    // a bought jaw is as wide as it was measured, half of that on either flank
    const read = design.skipped.length > 0 ? design.calipers / 2 : 0;
    const share = plusMinus(squeeze / width, read / width);
    const cure = allKeep(share, pass) ? '' : '; more insert.flank_clearance or better lined up shafts ease it';
    return valued(share, `${worked(squeeze, 'mm')} mm at one flank of a lobe ${plain(width, 2)} mm wide${cure}`);
  },
};

/**
 * Lobes that slide along their jaws, hubs that touch.
 *
 *     used = angle / angle allowed + aside / aside allowed + along / along allowed
 *     allowed of angle and aside: up to 98 Shore A what the gaps leave, above it E_98A/E of what is usual
 */
export const misalignmentTaken: CouplingCheck = {
  ...insert,
  id: 'misalignment',
  question: 'turns',
  title: 'Misalignments together',
  unit: '',
  limits: soft({ max: 1 }, { max: 2 }),
  moves: 'misalignment, insert.hardness, hubs.outside_diameter, jaws.height',
  run: (design, { pass }) => {
    const allowed = allowedMisalignment(design);
    const { angular, parallel, axial } = design.misalignment;
    const used = usedMisalignment(design);
    const cure = keeps(used, pass)
      ? ''
      : insertGive(design.insert) < 1
        ? '; set the shafts better in line (misalignment), or take a softer insert (insert.hardness)'
        : '; set the shafts better in line (misalignment), or take a larger outside or lower jaws';
    const hard = insertGive(design.insert) < 1 ? `; an insert of ${design.insert.hardness} gives less` : '';
    const words = `${plain(angular, 2)} of ${plain(allowed.angular, 2)}°, ${plain(parallel, 2)} of ${plain(allowed.parallel, 2)} mm aside, ${plain(axial, 2)} of ${plain(allowed.axial, 2)} mm along`;
    return valued(exactly(used), `${words}${hard}${cure}`);
  },
};

/** Play between reversals, both interfaces, each way. */
function freeAngle(design: CouplingDesign): number {
  return 4 * playAngle(assemblyOf(design));
}

/**
 * Play that shows as backlash.
 *
 *     play = 4 · turn of the insert in one hub from its middle until a lobe meets a flank
 */
export const couplingPlay: CouplingCheck = {
  ...insert,
  id: 'coupling-play',
  question: 'turns',
  title: 'Play of hub against hub',
  unit: '°',
  limits: soft({ max: 1 }),
  moves: 'insert.flank_clearance',
  run: (design, { pass }) => {
    const angle = freeAngle(design);
    const cure = keeps(angle, pass) ? '' : '; less insert.flank_clearance takes it out';
    return valued(
      exactly(angle),
      angle === 0 ? 'none: the lobes are squeezed' : `${plain(angle, 2)}° from stop to stop${cure}`,
    );
  },
};

/** Lost motion where it matters: along the screw. */
export const lostMotion: CouplingCheck = {
  ...insert,
  id: 'lost-motion',
  question: 'turns',
  title: 'Lost motion along the screw',
  unit: 'mm',
  limits: soft({ max: 0.05 }),
  moves: 'insert.flank_clearance, insert.hardness, hubs.outside_diameter',
  run: (design, { pass }) => {
    const { lead, insert: own, motor } = design;
    if (lead === undefined) return undefined;
    const contact = contactOf(design);
    const stress = lobeStress({ torque: motor.torque / 2, ...contact });
    const wound = windUp({
      stress,
      width: 2 * own.finished.halfWidth,
      modulus: own.modulus,
      meanRadius: contact.meanRadius,
    });
    const free = freeAngle(design);
    const lost = axialLostMotion({ angle: free + 2 * wound, lead });
    const help = free > 2 * wound ? 'less insert.flank_clearance' : 'a harder insert or a larger outside';
    const cure = keeps(lost, pass) ? '' : `; ${help} leaves less`;
    return valued(
      exactly(lost),
      `${plain(free, 2)}° of play and ${plain(wound, 2)}° of wind-up each way, at a lead of ${plain(lead)} mm${cure}`,
    );
  },
};
