import { type Check, soft, told } from '../../../judge/check.js';
import { bodyRoot } from '../../../mechanics/flange/body-root.js';
import { type AskedStress, allowableStress } from '../../../mechanics/strength/allowable.js';
import { rootNotch } from '../../../mechanics/strength/notch.js';
import { threadBending } from '../../../mechanics/thread/bending.js';
import { threadShear } from '../../../mechanics/thread/shear.js';
import { PULLS, type Pull } from '../../../sheet/sections/duty.js';
import { circleOutline, polygonArea } from '../../../solid/outline.js';
import { plain, worked } from '../../../units/format.js';
import {
  type Borne,
  judgeCases,
  judgeCrash,
  judgedTemperature,
  type LoadCase,
  usedShare,
} from '../../common/load-cases.js';
import { floorStress } from '../../common/pocket-floor.js';
import { commonArea } from '../../common/section-volume.js';
import type { NutDesign } from '../dimensions.js';
import { type TeethFormula, worstTeeth } from '../engagement.js';
import { bendFlange, type FlangeBending, isDrawnOut } from '../flange-bending.js';
import { bodyOutline, flangeOutline } from '../plan.js';
import { boreOf, pocketedOf } from '../pockets.js';
import { seatOf, seatStresses } from '../variants/nut-seat.js';
import { leverOf } from '../variants/twin.js';

type NutCheck = Check<NutDesign>;
const strength = { group: 'strength', question: 'holds', unit: 'MPa', source: 'common practice' } as const;

const CHORD = 0.02;

/** The load goes from the thread through the flange to the bolts, or to the edge that it lies on. */
export const flangeBendingCheck: NutCheck = {
  ...strength,
  id: 'flange-bending',
  title: 'Bending of the flange',
  moves: 'flange.thickness, flange, fillet, holes.circle, duty.load, duty.pull, duty.temperature, material',
  grave: true,
  run: (design, limits) => {
    if (!design.finished.flange || !design.holes) return undefined;
    const bent = { away: bendFlange(design, 'away'), onto: bendFlange(design, 'onto') };
    if (!bent.away && !bent.onto) return told('pass', 'its screws stand within the body: nothing bends');
    const borne = (one: LoadCase): Borne | undefined => {
      const found = bent[one.pull];
      if (!found) return undefined;
      const value = one.force * found.stress;
      const how = one.pull === 'away' ? 'pulled off its carriage' : 'pressed on its carriage';
      return {
        value,
        allowed: tensionOf(design, one, 'plane'),
        words: `${worked(value, 'MPa')} MPa ${how}, ${found.words}`,
      };
    };
    return (
      judgeCases(design, limits, {
        borne,
        cure: 'use a thicker flange, screws nearer to the body, or a stronger material',
      }) ?? told('pass', 'the load presses the flange on its carriage, which carries it')
    );
  },
};

/** What the plastic bears in tension in a case. */
function tensionOf(
  { material, duty }: NutDesign,
  { duration }: Pick<LoadCase, 'duration'>,
  direction: 'plane' | 'across',
) {
  return allowableStress(material, { kind: 'tension', duration, direction, temperature: judgedTemperature(duty) });
}

/** What the barrel is bored by: its thread, or the bore that lets the screw of a bought nut through, mm. */
function boredBy({ finished: { thread }, family }: NutDesign): number {
  return family?.kind === 'holder' ? family.bore : thread.major;
}

/** Section of the barrel beside its bore, mm². */
function barrelArea(design: NutDesign): number {
  return polygonArea(bodyOutline(design.finished.body, CHORD)) - (Math.PI / 4) * boredBy(design) ** 2;
}

/** What the skin of the body bears where it leaves its flange, for one newton. */
interface Root {
  /** MPa, with what its corner adds where that is pulled */
  readonly stress: number;
  readonly words: string;
}

/** The flange that is held further out turns the wall beside the bore; drawn out of it, the wall is pulled at its corner. */
function rootOf(design: NutDesign, pull: Pull): Root {
  const { body, fillet } = design.finished;
  const [across, bore] = [Math.min(body.across, body.flats ?? Infinity), boredBy(design)];
  const wall = (across - bore) / 2;
  const area = barrelArea(design);
  const turned = turnedBy(design, bendFlange(design, pull), { wall, radius: (across + bore) / 4 });
  const notch = isDrawnOut(design, pull) ? rootNotch({ fillet, thickness: wall }) : 1;
  const bent = leverOf(design) / sectionModulus({ outside: across, bore });
  const beside = bent > 0 ? `, bent by a lever of ${plain(leverOf(design))} mm` : '';
  const more = turned > 1 ? `, ${plain(turned, 1)} times that as its flange turns it` : '';
  const corner = notch > 1 ? `, ${plain(notch, 1)} times at its corner` : '';
  return {
    stress: (notch * turned) / area + rootNotch({ fillet, thickness: wall }) * bent,
    words: `${plain(area, 0)} mm² of body beside its bore${more}${corner}${beside}`,
  };
}

/** Of the ring around the bore: (π/32)·(D⁴ − d⁴)/D, mm³. */
function sectionModulus({ outside, bore }: { readonly outside: number; readonly bore: number }): number {
  return (Math.PI / 32) * ((outside ** 4 - bore ** 4) / outside);
}

/** How much more than its section the skin of the wall bears as its flange turns it. */
function turnedBy(
  { finished }: NutDesign,
  bent: FlangeBending | undefined,
  { wall, radius }: { readonly wall: number; readonly radius: number },
): number {
  if (!bent) return 1;
  const { arm, crowding } = bent;
  return bodyRoot({ force: 1, area: 1, arm: arm + wall / 2, radius, thickness: finished.flange!.thickness, crowding });
}

/** A body printed standing parts between two layers, where it leaves its flange. */
export const barrelPull: NutCheck = {
  ...strength,
  id: 'barrel-pull',
  title: 'Pull on the body across its layers',
  moves:
    'flange.thickness, body.diameter, fillet, holes.circle, duty.load, duty.motor.torque, duty.temperature, material',
  grave: true,
  run: (design, limits) => {
    if (!design.finished.flange) return undefined;
    const borne = (one: LoadCase): Borne => {
      const root = rootOf(design, one.pull);
      const value = one.force * root.stress;
      const words = `${worked(value, 'MPa')} MPa where it leaves its flange: the whole load on ${root.words}`;
      return { value, allowed: tensionOf(design, one, 'across'), words };
    };
    return judgeCases(design, limits, {
      borne,
      cure: 'use a thicker flange, a wider body, a larger fillet, screws nearer to it, or a stronger material',
    });
  },
};

/** What the seat of the flange is pressed with. */
export const seatPressure: NutCheck = {
  ...strength,
  id: 'seat-pressure',
  title: 'Pressure on the seat of the flange',
  moves: 'flange.diameter, carriage.bore, duty.load, duty.pull, material',
  grave: true,
  run: (design, limits) => {
    const area = seatArea(design);
    if (area === undefined) return undefined;
    const { bore } = design.carriage;
    if (area <= 0)
      return told(
        'fail',
        `nothing of the flange lies on a carriage bored ${plain(bore?.likely ?? 0)} mm: use a larger flange`,
      );
    const borne = (one: LoadCase): Borne | undefined => {
      if (one.pull === 'away') return undefined;
      const value = one.force / area;
      const { material, duty } = design;
      const at = { duration: one.duration, temperature: judgedTemperature(duty) };
      const allowed = allowableStress(material, { kind: 'pressure', ...at });
      return { value, allowed, words: `${worked(value, 'MPa')} MPa on a seat of ${plain(area, 0)} mm²` };
    };
    return (
      judgeCases(design, limits, { borne, cure: 'use a larger flange, or a stronger material' }) ??
      told('pass', 'the load pulls the flange off its carriage: the screws carry it')
    );
  },
};

/** Part of the flange that lies on the carriage, its holes taken off; undefined where there is no flange, mm². */
function seatArea(design: NutDesign): number | undefined {
  const { finished, holes, carriage, stands } = design;
  const { flange, body, leadIn } = finished;
  if (!flange) return undefined;
  const outline = flangeOutline(flange, CHORD);
  const opening = boredBy(design) / 2 + leadIn;
  const round = (radius: number) => circleOutline({ radius, sides: 180 });
  const withoutBore = stands === 'away' && flange.offset === 0 ? round(opening) : bodyOutline(body, CHORD);
  const middle = carriage.bore ? round(Math.max(carriage.bore.most / 2, opening)) : withoutBore;
  const drilled = holes ? holes.centres.length * (Math.PI / 4) * boreOf(holes) ** 2 : 0;
  return polygonArea(outline) - commonArea(middle, outline) - drilled;
}

/** An axis driven against its end. */
export const endStop: NutCheck = {
  ...strength,
  id: 'end-stop',
  title: 'Crash at the end of travel',
  unit: '',
  limits: soft({ max: 1 }),
  moves: 'duty.motor.torque, material',
  run: (design, { pass: { max = 1 } }) =>
    judgeCrash(design, max, ({ force, temperature }) => {
      const bears = (kind: AskedStress['kind'], direction: 'plane' | 'across' = 'plane') =>
        allowableStress(design.material, { kind, direction, duration: 'moment', temperature });
      const flange = Math.max(...PULLS.map((pull) => bendFlange(design, pull)?.stress ?? 0));
      const pocketed = pocketedOf(design);
      const root = Math.max(...PULLS.map((pull) => rootOf(design, pull).stress));
      return [
        ['the flange', usedShare(force * flange, bears('tension'))],
        ...(pocketed
          ? [['the floor of its pockets', usedShare(force * floorStress(pocketed), bears('tension'))] as const]
          : []),
        ['the body beside its flange', usedShare(force * root, bears('tension', 'across'))],
        ...engaged(design, force).map(([what, stress, kind]) => [what, usedShare(stress, bears(kind))] as const),
      ];
    }),
};

/** What a force does where it comes in: to the teeth, or to the plastic under a bought nut. */
function engaged(design: NutDesign, force: number): readonly (readonly [string, number, AskedStress['kind']])[] {
  if (design.family?.kind === 'holder')
    return seatStresses(seatOf(design)!, force).map(({ kind, stress }) => ['the plastic under the nut', stress, kind]);
  const teeth = (formula: TeethFormula) => worstTeeth(design, force, formula).value.likely;
  return [
    ['the teeth', teeth(threadShear), 'shear'],
    ['the teeth', teeth(threadBending), 'tension'],
  ];
}
