import { type Check, hard, type LimitsInForce, notJudged, soft, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { finerNozzle, oneOf } from '../../common/finer-print.js';
import type { CouplingDesign } from '../dimensions.js';
import { bareJaw, type JawLoad, type JawWork, jawLoads } from '../jaw-load.js';
import { jawWidth } from '../jaws.js';
import { peakTorque } from '../peak-torque.js';

type CouplingCheck = Check<CouplingDesign>;
const jaws = { group: 'hubs', question: 'carries', source: 'derived: strength by duration and heat' } as const;

/** The jaws of the hotter hub. */
function workOf({
  hubs,
  jaws: plan,
  insert,
  gap,
  misalignment,
  demand,
  motor,
  duty,
  material,
}: CouplingDesign): JawWork {
  return {
    jaws: plan,
    insert: insert.finished,
    gap,
    modulus: insert.modulus,
    flankClearance: insert.flankClearance,
    angle: misalignment.angular,
    working: demand.working,
    peak: peakTorque({ torque: motor.torque, starts: duty.starts, shock: duty.shock }),
    material,
    temperature: Math.max(...hubs.map(({ temperature }) => temperature.at)),
  };
}

/** What the corner at the foot adds, in words. */
function notchWords({ notch }: JawLoad, { jaws: { fillet } }: CouplingDesign): string {
  return ` (notch ${plain(notch, 1)}, ${fillet > 0 ? `fillet ${plain(fillet, 2)} mm` : 'a sharp corner'})`;
}

/** The load that comes nearest to what the plastic bears. */
function worstOf(design: CouplingDesign, kind: 'bending' | 'shear') {
  const of = (load: JawLoad) => ({
    stress: load[kind],
    borne: load[`${kind}Borne`],
    when: kind === 'bending' ? `${load.when}${notchWords(load, design)}` : load.when,
  });
  const rows = jawLoads(workOf(design)).map(of);
  return rows.reduce((a, b) => (b.stress * a.borne > a.stress * b.borne ? b : a));
}

function judgeJaw(design: CouplingDesign, limits: LimitsInForce, kind: 'bending' | 'shear', cure: string) {
  if (design.hubs.length === 0) return undefined;
  const { stress, borne, when } = worstOf(design, kind);
  const own = hard({ max: borne });
  const { pass } = limits.of(own);
  const holds = keeps(stress, pass);
  if (holds && design.hubs.some(({ temperature }) => !temperature.known)) return notJudged('duty.temperature');
  const words = `${plain(stress, 2)} MPa ${when}, of ${plain(pass.max!, 2)} MPa at ${plain(workOf(design).temperature, 0)} °C`;
  return valued(exactly(stress), `${words}${holds ? '' : `; ${cure}`}`, own);
}

/**
 * A jaw that breaks off at its foot, between two layers.
 *
 *     σ = K·F·h / (l·w²/6), K of the fillet at its foot over w; in work, reversing, and for a moment
 *     F = 1.5·T/(z·r), z = all n jaws up to Shore 98 A, 2 + (n − 2)·E_98A/E with a harder insert
 */
export const jawBending: CouplingCheck = {
  ...jaws,
  id: 'jaw-bending',
  title: 'Bending at the foot of a jaw',
  unit: 'MPa',
  moves: 'hubs.outside_diameter, jaws.fillet, jaws.width, jaws.height, misalignment.angular, duty.load, material',
  run: (design, limits) =>
    judgeJaw(
      design,
      limits,
      'bending',
      'a larger outside, wider or lower jaws, a larger jaws.fillet, shafts better in line or duty.load told',
    ),
};

/** A jaw that shears off along a layer. */
export const jawShear: CouplingCheck = {
  ...jaws,
  id: 'jaw-shear',
  title: 'Shear at the foot of a jaw',
  unit: 'MPa',
  moves: 'hubs.outside_diameter, jaws.width, duty.load, material',
  run: (design, limits) => judgeJaw(design, limits, 'shear', 'a larger outside or wider jaws'),
};

/**
 * Jaws that meet tip to tip when the insert is worn away: one of them carries.
 *
 *     σ = K·F·H / (l·w²/6), K of the fillet at its foot over w; for a moment
 */
export const jawBare: CouplingCheck = {
  ...jaws,
  id: 'jaw-bare',
  title: 'Bending of a bare jaw',
  unit: 'MPa',
  moves: 'hubs.outside_diameter, jaws.fillet, jaws.width, jaws.height, material',
  run: (design, limits) => {
    if (design.hubs.length === 0) return undefined;
    const load = bareJaw(workOf(design), design.motor.torque);
    const { bending, bendingBorne } = load;
    const own = soft({ max: bendingBorne });
    const { pass } = limits.of(own);
    const holds = keeps(bending, pass);
    if (holds && design.hubs.some(({ temperature }) => !temperature.known)) return notJudged('duty.temperature');
    const cure = holds ? '' : ': never run it without its insert, a jaw may break off';
    return valued(
      exactly(bending),
      `${plain(bending, 2)} MPa for a moment${notchWords(load, design)}, of ${plain(pass.max!, 2)} MPa${cure}`,
      own,
    );
  },
};

/**
 * What is thinner than two lines is not printed whole.
 *
 *     lines = least of (jaw at its inner end − 2 · bevel), lobe and (radius of the ring − ⌀hole/2), each / its line width
 */
export const printLines: CouplingCheck = {
  ...jaws,
  source: 'common practice',
  group: 'print',
  id: 'print-lines',
  question: 'prints',
  title: 'Thinnest jaw or lobe, in lines',
  unit: '',
  limits: soft({ min: 2 }, { min: 1 }),
  moves: 'jaws.count, jaws.width, insert.hole, printer.nozzle',
  run: ({ hubs, jaws: plan, insert, printer }, { pass }) => {
    const { halfWidth, ring, hole } = insert.finished;
    const own = insert.printer.lineWidth;
    const features = [
      ...(hubs.length > 0
        ? [
            {
              where: 'inner end of a jaw',
              lines: (jawWidth(plan, plan.inner) - 2 * plan.bevel) / printer.lineWidth,
              help: 'fewer or wider jaws',
              of: printer,
            },
          ]
        : []),
      { where: 'a lobe', lines: (2 * halfWidth) / own, help: 'fewer or narrower jaws', of: insert.printer },
      ...(hole > 0
        ? [
            {
              where: 'ring of the insert',
              lines: (ring - hole / 2) / own,
              help: 'a smaller insert.hole',
              of: insert.printer,
            },
          ]
        : []),
    ];
    const least = features.reduce((a, b) => (b.lines < a.lines ? b : a));
    const { of } = least;
    const section = of === printer ? 'printer' : 'insert.printer';
    const finer = finerNozzle(of, (least.lines * of.lineWidth) / pass.min!, section);
    const cure = keeps(least.lines, pass) ? '' : oneOf(least.help, finer);
    return valued(exactly(least.lines), `${plain(least.lines, 1)} lines: ${least.where}${cure}`);
  },
};
