import { type Check, hard, notJudged, soft, told, valued } from '../../../judge/check.js';
import { allKeep, keeps } from '../../../judge/judge.js';
import { allowableStress, standingDuration } from '../../../mechanics/strength/allowable.js';
import { thrustRating } from '../../../standards/bearings/thrust-rating.js';
import { plain, worked } from '../../../units/format.js';
import { exactly, plusMinus, scaled, sum } from '../../../units/measured.js';
import { pullAsked } from '../../common/axial-grip.js';
import { judgeBearingLoad } from '../../common/bearing-rating.js';
import { borePlay } from '../../common/bore-play.js';
import { holeResidual } from '../../common/residual.js';
import type { CollarDesign } from '../dimensions.js';
import { backing, washerOffset } from '../seat.js';
import { untoldOf } from '../untold.js';

type CollarCheck = Check<CollarDesign>;
const seat = { group: 'bearing', question: 'turns', source: 'common practice' } as const;

/** A collar without a bearing rubs. */
export const runsOn: CollarCheck = {
  ...seat,
  id: 'runs-on',
  title: 'What the collar runs on',
  unit: '',
  moves: 'bearing, duty.load',
  run: ({ bearing, axial }) => {
    if (bearing)
      return told('pass', `a thrust bearing, centred by ${bearing.centredBy === 'lip' ? 'its lip' : 'the shaft'}`);
    const isIdle = axial.mounting === 'horizontal' && axial.load === 0;
    if (isIdle) return told('pass', 'nothing: no load is told, and the screw lies');
    return told(
      'caution',
      'its face rubs where it carries a load: give it a thrust bearing (bearing: 51100 and the like)',
    );
  },
};

/**
 * The washer must pass over the screw.
 *
 *     room = ⌀bore of the bearing − ⌀shaft
 */
export const bearingBore: CollarCheck = {
  ...seat,
  id: 'bearing-bore',
  question: 'goes-on',
  title: 'Shaft in its bearing',
  unit: 'mm',
  limits: hard({ min: 0 }),
  moves: 'bearing, screw.major, shaft',
  run: ({ bearing, shaft }, { pass }) => {
    if (!bearing) return undefined;
    const { least, likely, most } = shaft.diameter;
    const room = { least: bearing.bore - most, likely: bearing.bore - likely, most: bearing.bore - least };
    const wanted = Math.ceil(100 * (most + (pass.min ?? 0)) - 1e-6) / 100;
    const cure = allKeep(room, pass) ? '' : `; a bearing bored ${plain(wanted, 2)} mm or more goes over it for sure`;
    return valued(room, `a bore of ${plain(bearing.bore)} mm on a shaft of ${plain(likely)} mm${cure}`);
  },
};

/** Balls that run off the axis knock once a turn. */
export const bearingCentre: CollarCheck = {
  ...seat,
  id: 'bearing-centre',
  title: 'Eccentricity of the bearing',
  unit: 'mm',
  limits: soft({ max: 0.25 }),
  moves: 'bearing, screw.major, hold.bore_clearance',
  run: (design, { pass }) => {
    const { bearing, shaft, finished } = design;
    if (!bearing) return undefined;
    const own = washerOffset(bearing, shaft);
    const off = finished.lip
      ? sum(own, plusMinus(0, halfOf(holeResidual(design, finished.lip.diameter))), playOf(design))
      : own;
    const kept = { least: Math.max(0, off.least), likely: off.likely, most: off.most };
    const by = finished.lip ? 'the lip, which the bore centres on the shaft' : 'the shaft';
    const cure = keeps(kept.most, pass) ? '' : '; a bearing whose bore fits the shaft runs truer';
    return valued(
      kept,
      `centred by ${by}, ${worked(kept.likely, 'mm')} mm to one side, ${worked(kept.most, 'mm')} mm at most${cure}`,
    );
  },
};

function halfOf({ likely, most }: { readonly likely: number; readonly most: number }): number {
  return (most - likely) / 2;
}

/** Half the play of the bore on its shaft; clamped, it is taken up to one side. */
function playOf(design: CollarDesign) {
  const { shaft, clearance, finished } = design;
  const half = scaled(borePlay({ clearance, shaft, bore: finished.bore }, design), 0.5);
  return { least: Math.max(0, half.least), likely: Math.max(0, half.likely), most: Math.max(0, half.most) };
}

/**
 * A washer that stands over air bends under its balls.
 *
 *     share = (π·(a² − i²) − slits · width · (a − i)) / (π/4 · (⌀outside² − ⌀bore²)), of the bearing
 *     a, i = outer and inner radius where washer and face of the collar meet, its chamfers left out
 */
export const seatBacking: CollarCheck = {
  ...seat,
  id: 'seat-backing',
  question: 'holds',
  title: "Bearing's washer that is backed",
  unit: '',
  limits: soft({ min: 0.75 }, { min: 0.5 }),
  moves: 'outside_diameter, bearing',
  run: ({ bearing, finished }, { pass }) => {
    if (!bearing) return undefined;
    const { share } = backing(finished, bearing);
    const cure = keeps(share, pass) ? '' : '; a larger outside, or a bearing that is wider than the bore, is backed';
    return valued(
      exactly(share),
      `${plain(100 * share, 0)} % of a washer of ${plain(bearing.outside)} mm, slit and mouth left out${cure}`,
    );
  },
};

/** Plastic under the washer flows. */
export const seatPressure: CollarCheck = {
  ...seat,
  id: 'seat-pressure',
  question: 'holds',
  title: 'Pressure of bearing on collar',
  unit: 'MPa',
  source: 'derived: strength by duration and heat',
  moves: 'duty.load, motor.torque, duty.temperature, outside_diameter, material',
  grave: true,
  run: (design, inForce) => {
    const { bearing, finished, axial, material, temperature, jam = 0 } = design;
    if (!bearing) return undefined;
    const asked = pullAsked(axial);
    const { area } = backing(finished, bearing);
    if (area <= 0) return told('fail', 'nothing of the washer is backed: take a larger outside or a wider bearing');
    const standing = standingDuration(axial.mounting === 'horizontal' ? 'horizontal' : 'vertical');
    const bears = (duration: 'moment' | 'years' | 'level') =>
      allowableStress(material, { kind: 'pressure', duration, temperature: temperature.at });
    const rows = [
      { force: asked.needed / 2, bears: bears(standing), when: 'for good' },
      { force: jam, bears: bears('moment'), when: 'for a moment, the axis jammed' },
    ];
    const worst = rows.reduce((a, b) => (b.force * a.bears > a.force * b.bears ? b : a));
    const own = hard({ max: worst.bears });
    const { pass } = inForce.of(own);
    const pressure = worst.force / area;
    const missing = untoldOf(design);
    const holds = keeps(pressure, pass);
    if (holds && missing.length > 0) return notJudged(...missing);
    const cure = holds ? '' : '; a larger bearing, a stronger material or less heat';
    return valued(
      exactly(pressure),
      `${plain(pressure, 2)} MPa under ${plain(worst.force, 0)} N ${worst.when}, ${plain(pass.max ?? 0, 1)} MPa are borne${cure}`,
      own,
    );
  },
};

/** Standing, a bearing is loaded by half of its rating at most. @source common-practice */
const STANDS = 2;

/** Balls that are loaded too much dent their tracks, and wear out. */
export const bearingRating: CollarCheck = {
  ...seat,
  id: 'bearing-rating',
  question: 'holds',
  title: "Bearing's load over its rating",
  unit: '',
  source: 'ISO 76 and ISO 281, balls by the size of the bearing',
  limits: hard({ max: 1 }),
  moves: 'bearing, duty.load, motor.torque',
  run: (design, { pass }) => {
    const { bearing, axial, jam = 0 } = design;
    if (!bearing) return undefined;
    const { standing, turning } = thrustRating(bearing, bearing.designation?.startsWith('AXK'));
    return judgeBearingLoad(
      {
        load: pullAsked(axial).needed / 2,
        jam,
        carries: { forGood: standing / STANDS, moment: standing, turning },
        missing: untoldOf(design),
        cure: 'a larger bearing, or less load',
      },
      pass,
    );
  },
};

/** A washer that wobbles wears its balls. */
export const seatRunout: CollarCheck = {
  ...seat,
  id: 'seat-runout',
  title: "Run-out of the bearing's face",
  unit: '',
  moves: 'bearing',
  run: ({ bearing, finished }) => {
    if (!bearing) return undefined;
    return finished.lip
      ? told(
          'caution',
          'the face in the lip is printed upwards and may run out by more than 0.05 mm: lay a flat steel washer on it, or take a bearing whose bore fits the shaft, which runs on the bed side',
        )
      : told('pass', 'the face is printed on the bed, within 0.05 mm');
  },
};
