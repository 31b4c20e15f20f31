import { type Check, notJudged, soft, told, valued } from '../../../judge/check.js';
import { allowableStress, standingDuration } from '../../../mechanics/strength/allowable.js';
import { HOURS } from '../../../mechanics/strength/plastic.js';
import { creepModulus } from '../../../mechanics/strength/stiffness.js';
import { PULLS, type Pull } from '../../../sheet/sections/duty.js';
import { plain, worked } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import {
  type Borne,
  judgeCases,
  judgeCrash,
  judgedTemperature,
  type LoadCase,
  loadCases,
  missingOf,
  usedShare,
} from '../../common/load-cases.js';
import { floorStress } from '../../common/pocket-floor.js';
import { bendPlate, type PlateBending } from '../bending.js';
import type { AdapterDesign } from '../dimensions.js';
import { pocketed } from './joints.js';

type AdapterCheck = Check<AdapterDesign>;
const strength = { group: 'strength', question: 'holds', source: 'common practice', grave: true } as const;

const HELD = {
  screws: "between the carriage's screws",
  edge: "over the carriage's opening",
  tipped: "beside the carriage's screws and tips about its edge",
} as const;

/** How the plate bends in either direction. */
function bendings(design: AdapterDesign): Readonly<Record<Pull, PlateBending | undefined>> {
  return { away: bendPlate(design, 'away'), onto: bendPlate(design, 'onto') };
}

/** A plate that hangs between its screws breaks where its section is weakest for its arm. */
export const plateBending: AdapterCheck = {
  ...strength,
  id: 'plate-bending',
  title: 'Bending of the plate',
  unit: 'MPa',
  moves:
    'plate.thickness, plate.outline, plate.cutouts, register.depth, carriage.holes, duty.load, duty.pull, duty.temperature, material',
  run: (design, limits) => {
    const bent = bendings(design);
    if (!bent.away && !bent.onto) return told('pass', 'the flange covers what holds the plate: nothing bends');
    const asked = new Set(loadCases(design).map(({ pull }) => pull));
    if ([...asked].some((pull) => bent[pull]?.strip.stress === Infinity))
      return told(
        'fail',
        'a cut-out or a hole parts the nut from a screw of the carriage: move it, or widen the plate',
      );
    const borne = (one: LoadCase) => bornePlate(design, bent[one.pull], one);
    const corner = PULLS.some((pull) => (bent[pull]?.strip.corner ?? 1) > 1)
      ? 'rounder corners in plan (a cut-out with a diameter), '
      : '';
    const recess = bent.away?.strip.floor || bent.onto?.strip.floor ? 'a shallower recess (register.depth), ' : '';
    return (
      judgeCases(design, limits, {
        borne,
        cure: `use ${recess}${corner}a thicker or wider plate, screws nearer to the nut, or a stronger material`,
      }) ?? told('pass', 'the load presses the plate on the carriage, whose face carries it')
    );
  },
};

function bornePlate(design: AdapterDesign, bent: PlateBending | undefined, one: LoadCase): Borne | undefined {
  if (!bent) return undefined;
  const { material, duty, layout } = design;
  const { strip, held } = bent;
  const value = one.force * strip.stress;
  const allowed = allowableStress(material, {
    kind: 'tension',
    duration: one.duration,
    temperature: judgedTemperature(duty),
  });
  const moment = one.force * strip.share * strip.arm;
  const { thickness, notch } = strip.floor ?? { thickness: layout.plate.thickness, notch: 1 };
  const width = strip.section.area / thickness;
  const corner = notch > 1 ? `, ${plain(notch, 1)} times that at its sharp corner` : '';
  const floor = strip.floor ? `, the floor of a recess${corner}` : '';
  const sharp = strip.corner > 1 ? `, ${plain(strip.corner, 1)} times that at its corner in plan` : '';
  if (held === 'ring')
    return {
      value,
      allowed,
      words: `${worked(value, 'MPa')} MPa: ${one.pull === 'away' ? 'pulled off' : 'pressed on'} the carriage, the plate turns inside out around its bore, as a loose ring`,
    };
  const how = one.pull === 'away' ? 'pulled off the carriage, it hangs' : 'pressed on the carriage, it bends';
  return {
    value,
    allowed,
    words: `${worked(value, 'MPa')} MPa: ${how} ${HELD[held]}, ${plain(moment, 0)} N·mm (${plain(one.force * strip.share, 0)} N, ${plain(strip.arm, 1)} mm of arm) on a section of ${plain(width, 1)} × ${plain(thickness, 1)} mm${floor}${sharp}`,
  };
}

/** Sag that an axis shows: so much of the span, and so many degrees. @source common-practice */
const SAG = { ofSpan: 1 / 200, lean: 0.4 } as const;

/** A plate that sags tilts the nut, and goes on sagging. */
export const plateSag: AdapterCheck = {
  ...strength,
  id: 'plate-sag',
  title: 'Sag of the plate',
  unit: 'mm',
  moves: 'plate.thickness, plate.outline, carriage.holes, duty.load, duty.pull, duty.temperature, material',
  run: (design, inForce) => {
    const { duty, material, pulls } = design;
    const bent = pulls.flatMap((pull) => bendPlate(design, pull) ?? []).filter(({ sag }) => Number.isFinite(sag));
    if (bent.length === 0) return undefined;
    const missing = missingOf(duty);
    if (missing.length > 0) return notJudged(...missing);
    const worst = bent.reduce((a, b) => (b.sag > a.sag ? b : a));
    const hours = HOURS[standingDuration(duty.axis)];
    const modulus = creepModulus(material, { hours, temperature: duty.temperature! });
    if (modulus === 0)
      return told('fail', `${material.name} is soft at ${plain(duty.temperature!, 0)} °C: it sags without end`);
    const scale = duty.load! / modulus;
    const [sag, lean, strain] = [scale * worst.sag, scale * worst.lean, scale * worst.strip.stress];
    const { span } = worst;
    const limits = [
      { most: SAG.ofSpan * span, why: `a 200th of the ${plain(span, 0)} mm between what holds it` },
      { most: (sag * SAG.lean) / lean, why: `a lean of ${plain(SAG.lean)}°` },
      { most: (sag * material.creep.strain) / strain, why: `${plain(100 * material.creep.strain, 1)} % of strain` },
    ];
    const least = limits.reduce((a, b) => (b.most < a.most ? b : a));
    const own = soft({ max: least.most });
    const { max = least.most } = inForce.of(own).pass;
    const cure = sag > max ? '; a thicker plate sags less by the cube of its thickness' : '';
    return valued(
      exactly(sag),
      `sags ${worked(sag, 'mm')} mm and leans ${plain(lean, 2)}° after ${plain(hours, 0)} h at ${plain(duty.temperature!, 0)} °C, strained by ${plain(100 * strain, 2)} %; ${worked(max, 'mm')} mm ${max === least.most ? `is ${least.why}` : 'are allowed by the sheet'}${cure}`,
      own,
    );
  },
};

/** An axis driven against its end. */
export const endStop: AdapterCheck = {
  ...strength,
  id: 'end-stop',
  title: 'Crash at the end of travel',
  unit: '',
  grave: false,
  limits: soft({ max: 1 }),
  moves: 'duty.motor.torque, material',
  run: (design, { pass: { max = 1 } }) =>
    judgeCrash(design, max, ({ force, temperature }) => {
      const allowed = allowableStress(design.material, { kind: 'tension', duration: 'moment', temperature });
      const stress = force * Math.max(...PULLS.map((pull) => bendPlate(design, pull)?.strip.stress ?? 0));
      return [
        ['the plate', usedShare(stress, allowed)],
        ...pocketed(design).map(
          (one) => ['the floor of its pockets', usedShare(force * floorStress(one), allowed)] as const,
        ),
      ];
    }),
};
