import { type Check, hard, soft, valued } from '../../../fit/check.js';
import { jawStresses } from '../../../mechanics/coupling/jaw-strength.js';
import { SHOCK_FACTORS, startFactor } from '../../../mechanics/coupling/service-factors.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { heldWalls } from '../../common/hub-walls.js';
import { LEAST_WALL, thinnest } from '../../common/walls.js';
import type { CouplingDesign } from '../dimensions.js';
import { jawWidth } from '../jaws.js';
import { contactOf } from './insert.js';

type CouplingCheck = Check<CouplingDesign>;
const jaws = { group: 'hubs', source: 'common practice' } as const;

/** A static load may use a third of the strength. */
const SAFETY = 3;

function stressesOf(design: CouplingDesign) {
  const { jaws: plan } = design.hubs[0]!.finished;
  const { meanRadius, length } = contactOf(design);
  const torque =
    design.motor.torque * Math.max(1.5 * startFactor(design.duty.starts ?? 0), SHOCK_FACTORS[design.duty.shock]);
  const arm = Math.max(0.5, design.gap / 2);
  return jawStresses({ torque, jaws: plan.count, meanRadius, arm, length, width: jawWidth(plan, meanRadius) });
}

/** A jaw that breaks off at its foot, between two layers. */
export const jawBending: CouplingCheck = {
  ...jaws,
  id: 'jaw-bending',
  title: 'Bending at the foot of a jaw, across the layers',
  unit: 'MPa',
  moves: 'hubs.outside_diameter, jaws.width, jaws.height, material',
  run: (design) => {
    const { bending } = stressesOf(design);
    const allowed = design.material.tensileAcross / SAFETY;
    return valued(
      exactly(bending),
      `${plain(bending, 2)} MPa at start or shock; a third of the strength across the layers is ${plain(allowed, 1)} MPa`,
      hard({ max: allowed }),
    );
  },
};

/** A jaw that shears off along a layer. */
export const jawShear: CouplingCheck = {
  ...jaws,
  id: 'jaw-shear',
  title: 'Shear at the foot of a jaw, along the layers',
  unit: 'MPa',
  moves: 'hubs.outside_diameter, jaws.width, material',
  run: (design) => {
    const { shear } = stressesOf(design);
    const allowed = design.material.shear / SAFETY;
    return valued(exactly(shear), `${plain(shear, 2)} MPa of ${plain(allowed, 1)} MPa`, hard({ max: allowed }));
  },
};

/** A thin wall splits. */
export const wall: CouplingCheck = {
  ...jaws,
  id: 'wall',
  title: 'Least wall beside bores, pockets and slits',
  unit: 'mm',
  moves: 'hubs.outside_diameter, motor_hub.clamp, screw_hub.clamp',
  run: ({ hubs, printer }) => {
    const walls = hubs.flatMap(({ name, finished }) =>
      heldWalls(finished).map(({ where, size }) => ({ where: `${name.replace('-', ' ')}, ${where}`, size })),
    );
    const { where, size } = thinnest(walls);
    const cure = size < LEAST_WALL ? '; a larger outside gives it room' : '';
    return valued(exactly(size), `${plain(size, 2)} mm: ${where}${cure}`, {
      pass: { min: Math.max(LEAST_WALL, 4 * printer.nozzle) },
      fail: { min: LEAST_WALL },
    });
  },
};

/** What is thinner than two lines is not printed whole. */
export const printLines: CouplingCheck = {
  ...jaws,
  group: 'print',
  id: 'print-lines',
  title: 'Thinnest of jaws, lobes and ring, in printed lines',
  unit: '',
  limits: soft({ min: 2 }, { min: 1 }),
  moves: 'jaws.count, jaws.width, insert.hole, printer.nozzle',
  run: ({ hubs, insert, printer }) => {
    const plan = hubs[0]!.finished.jaws;
    const { halfWidth, ring, hole } = insert.finished;
    const own = insert.printer.lineWidth;
    const features = [
      { where: 'inner end of a jaw', lines: (jawWidth(plan, plan.inner) - 2 * plan.bevel) / printer.lineWidth },
      { where: 'a lobe', lines: (2 * halfWidth) / own },
      ...(hole > 0 ? [{ where: 'ring of the insert', lines: (ring - hole / 2) / own }] : []),
    ];
    const least = features.reduce((a, b) => (b.lines < a.lines ? b : a));
    return valued(exactly(least.lines), `${plain(least.lines, 1)} lines: ${least.where}`);
  },
};

/** Roofs that are printed over air. */
export const printBridge: CouplingCheck = {
  ...jaws,
  group: 'print',
  id: 'print-bridge',
  title: 'Widest bridge over slit and pockets',
  unit: 'mm',
  limits: soft({ max: 10 }),
  moves: 'motor_hub.clamp, screw_hub.clamp',
  run: ({ hubs }) => {
    const bridges = hubs.flatMap(({ finished: { slit, clamp, setScrew } }) => [
      ...(slit ? [slit.width] : []),
      ...(clamp ? [clamp.nut / Math.sqrt(3), clamp.head * (Math.SQRT2 - 1)] : []),
      ...(setScrew?.slot ? [setScrew.slot.thickness] : []),
    ]);
    if (bridges.length === 0) return undefined;
    const widest = Math.max(...bridges);
    return valued(exactly(widest), `${plain(widest, 2)} mm, printed without support; round roofs close at 45°`);
  },
};
