import { type Check, hard, notJudged, valued } from '../../../judge/check.js';
import { allKeep, keeps } from '../../../judge/judge.js';
import { PLASTIC_EXPANSION, REFERENCE_TEMPERATURE, thermalGrowth } from '../../../mechanics/print/thermal.js';
import { interferenceWarm, pressFit, pressStrain } from '../../../mechanics/shaft/press-fit.js';
import { HOURS } from '../../../mechanics/strength/plastic.js';
import { strainKept } from '../../../mechanics/strength/relaxation.js';
import { innerReach, widestShoulder } from '../../../standards/bearings/deep-groove.js';
import { plain, worked } from '../../../units/format.js';
import { exactly, type Measured, shifted } from '../../../units/measured.js';
import { holeResidual } from '../../common/residual.js';
import type { EndHolderDesign } from '../dimensions.js';
import { seatDiameter } from '../plan.js';
import { wallAround } from '../walls.js';

type HolderCheck = Check<EndHolderDesign>;

/** Under plate or lip a bearing may lie so loose in its pocket, on the diameter. @source common-practice */
const SLACK = 0.15;

/** A pocket that is too tight cracks or pinches the ring; one that is too wide holds nothing. */
const pocketFit: HolderCheck = {
  id: 'pocket-fit',
  group: 'bearing',
  question: 'goes-in',
  title: 'Bearing in its pocket',
  unit: 'mm',
  source: 'common practice',
  moves: 'fit.interference, fit.pocket, held_by, material',
  run: (design, inForce) => {
    const { bearing, interference, heldBy, material, finished } = design;
    if (!bearing || !interference) return undefined;
    const most = pressStrain(material.creep.strain) * bearing.outside;
    const press = heldBy === 'press';
    const words = `pocket ${plain(seatDiameter(finished, bearing), 2)} mm for ${plain(bearing.outside, 2)} mm${press ? pushWords({ ...design, bearing, interference }) : ''}; ${material.name} takes ${worked(most, 'mm')} mm for good`;
    const own = press ? hard({ min: 0, max: most }) : { pass: { min: -SLACK, max: most }, fail: { max: most } };
    const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = inForce.of(own).pass;
    const loose = press
      ? '; print the pocket, measure it and write fit.pocket, or hold the bearing by a plate (held_by: plate)'
      : '; print the pocket narrower (fit.interference), or the bearing knocks in it';
    const cure =
      interference.most > max
        ? '; print the pocket, measure it, and set fit.interference by it'
        : interference.least < min
          ? loose
          : '';
    return valued(interference, `${words}${cure}`, own);
  },
};

/** What it takes to press the bearing in, where it does not fall in. */
function pushWords({
  bearing,
  interference,
  material,
  finished,
}: EndHolderDesign & Required<Pick<EndHolderDesign, 'bearing' | 'interference'>>): string {
  if (interference.likely <= 0) return '';
  const { push } = pressFit({
    interference: interference.likely,
    diameter: bearing.outside,
    outside: bearing.outside + 2 * wallAround(finished),
    width: bearing.width - (bearing.flange?.thickness ?? 0),
    modulus: material.modulus,
  });
  return `, pressed in by some ${plain(push, 0)} N`;
}

/**
 * Plastic grows away from steel when it warms and when it takes up room air, and what it was strained by for years it springs back by in
 * part alone.
 *
 *     i = c·i₀ − (ε + μ)·D        μ from none to all of the growth from dry to room air, half of it as likely
 */
const pressHot: HolderCheck = {
  id: 'press-hot',
  group: 'bearing',
  question: 'holds',
  title: 'Press fit left after years, hottest',
  unit: 'mm',
  source: 'derived: difference of expansions, relaxation of held strains',
  limits: hard({ min: 0 }),
  moves: 'duty.temperature, fit.interference, held_by, material',
  grave: true,
  run: ({ bearing, interference, heldBy, duty, material }, { pass }) => {
    if (!bearing || !interference || heldBy !== 'press') return undefined;
    if (duty.temperature === undefined) return notJudged('duty.temperature');
    const { temperature } = duty;
    const kept = strainKept(material, { hours: HOURS.years, temperature });
    const left = (of: number, expansion: number, damp: number) =>
      interferenceWarm({
        interference: of,
        diameter: bearing.outside,
        growth: thermalGrowth({ temperature, expansion }) + damp,
        kept,
      });
    const swells = material.moistureGrowth;
    const { least, likely, most } = PLASTIC_EXPANSION;
    const value: Measured = {
      least: Math.min(left(interference.least, least, swells), left(interference.least, most, swells)),
      likely: left(interference.likely, likely, swells / 2),
      most: Math.max(left(interference.most, least, 0), left(interference.most, most, 0)),
    };
    const holds = keeps(value.least, pass);
    const cure = holds ? '' : '; a plate over the outer ring holds it whatever heat and damp do (held_by: plate)';
    const damp =
      swells > 0
        ? `; room air opens the pocket by up to ${worked(swells * bearing.outside, 'mm')} mm from dry, half of it taken as likely`
        : '';
    return valued(
      value,
      `of ${worked(interference.likely, 'mm')} mm years leave ${plain(100 * kept, 0)} %, and ${plain(temperature, 0)} °C ${worked(value.likely, 'mm')} mm${damp}${cure}`,
    );
  },
};

/** Plastic shrinks onto steel in the cold. */
const pressCold: HolderCheck = {
  id: 'press-cold',
  group: 'bearing',
  question: 'holds',
  title: 'Squeeze of the bearing, coldest',
  unit: 'mm',
  source: 'derived: difference of expansions',
  moves: 'duty.temperature, fit.interference, fit.pocket, material',
  run: ({ bearing, interference, material, duty: { temperature = REFERENCE_TEMPERATURE } }, inForce) => {
    if (!bearing || !interference || temperature >= REFERENCE_TEMPERATURE) return undefined;
    const cold = (at: number, expansion: number) =>
      interferenceWarm({
        interference: at,
        diameter: bearing.outside,
        growth: thermalGrowth({ temperature, expansion }),
      });
    const { least, likely, most } = PLASTIC_EXPANSION;
    const value: Measured = {
      least: cold(interference.least, least),
      likely: cold(interference.likely, likely),
      most: cold(interference.most, most),
    };
    const borne = pressStrain(material.creep.strain) * bearing.outside;
    const own = hard({ max: borne });
    const cure = allKeep(value, inForce.of(own).pass)
      ? ''
      : '; a wider pocket (fit.interference) under a plate (held_by: plate)';
    return valued(
      value,
      `${worked(interference.likely, 'mm')} mm at ${REFERENCE_TEMPERATURE} °C become ${worked(value.likely, 'mm')} mm at ${plain(temperature, 0)} °C; ${material.name} takes ${worked(borne, 'mm')} mm for good${cure}`,
      own,
    );
  },
};

/** The outer ring is backed, the inner one is clear. */
const shoulder: HolderCheck = {
  id: 'shoulder',
  group: 'bearing',
  question: 'turns',
  title: 'Shoulder behind the outer ring',
  unit: 'mm',
  source: 'common practice',
  moves: 'fit.shoulder, bearing.chamfer',
  run: (design, inForce) => {
    const { bearing, finished } = design;
    // behind a flanged one the bore goes through
    if (!bearing || bearing.flange) return undefined;
    const [least, most] = [innerReach(bearing), widestShoulder(bearing)];
    const value = shifted(holeResidual(design, finished.bore), finished.bore);
    const own = hard({ min: least, max: most });
    const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = inForce.of(own).pass;
    const cure =
      value.least < min
        ? '; open it, or the inner ring rubs'
        : value.most > max
          ? '; make it narrower, so that it backs the ring past its chamfer'
          : '';
    return valued(
      value,
      `clears what turns up to ${plain(least, 2)} mm, backs the outer ring below ${plain(most, 2)} mm${cure}`,
      own,
    );
  },
};

/** Play of screw and bore by what the holder is for, on the diameter. @source common-practice */
const PLAYS = {
  bearing: { pass: { min: 0, max: 0.35 }, fail: { min: 0 } },
  bush: { pass: { min: 0.1, max: 0.5 }, fail: { min: 0 } },
  ring: { pass: { min: 1, max: 4 }, fail: { min: 0.5 } },
} as const;

/** A screw that binds in its end, or rattles. */
const screwFit: HolderCheck = {
  id: 'screw-fit',
  group: 'bearing',
  question: 'goes-in',
  title: 'Play of the screw, on diameter',
  unit: 'mm',
  source: 'common practice',
  moves: 'bearing, bore, turned_end, screw.major',
  run: (design, inForce) => {
    const play = screwPlay(design);
    const { bearing, role } = design;
    const limits = bearing ? PLAYS.bearing : role === 'free' ? PLAYS.ring : PLAYS.bush;
    const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = inForce.of(limits).pass;
    const cure =
      play.least < min
        ? '; take a larger bore or bearing, or turn the end of the screw down (turned_end)'
        : play.most > max
          ? '; take a smaller one'
          : '';
    const what = bearing ? 'in the bearing' : 'in its bore';
    return valued(play, `the screw of ${plain(design.held.diameter.likely, 2)} mm ${what}${cure}`, limits);
  },
};

/** Room between the screw, which may be as thin as its class allows, and what holds it, on the diameter. */
export function screwPlay(design: EndHolderDesign): Measured {
  const { bearing, finished, held } = design;
  const bore = bearing ? exactly(bearing.bore) : shifted(holeResidual(design, finished.bore), finished.bore);
  const { least, likely, most } = held.diameter;
  return {
    least: bore.least - most,
    likely: bore.likely - likely,
    most: bore.most - Math.min(least, held.thinnest ?? least),
  };
}

/** Whether a bearing or bush goes in and stays in. */
export const FIT_CHECKS: readonly HolderCheck[] = [pocketFit, screwFit, shoulder, pressHot, pressCold];
