import { type Check, hard, notJudged, valued } from '../../../fit/check.js';
import { plain } from '../../../units/format.js';
import { exactly, scaled, shifted, smallest } from '../../../units/measured.js';
import type { NutDesign } from '../dimensions.js';

type NutCheck = Check<NutDesign>;

/** A thin wall splits. */
export const wall: NutCheck = {
  id: 'wall',
  group: 'body',
  title: 'Least wall beside the thread',
  unit: 'mm',
  source: 'common practice',
  limits: hard({ min: 1.6 }),
  moves: 'body.diameter, holes.circle',
  run: ({ finished, holes, screw, printer }) => {
    const { body, thread, flange } = finished;
    const across = Math.min(body.across, body.flats ?? Infinity, flange?.flats ?? Infinity);
    const spread = scaled(shifted(screw.major, -screw.major.likely), -0.5);
    const beside = shifted(spread, (across - thread.major) / 2);
    const inFlange = holes
      ? Math.min(...holes.centres.map((c) => Math.hypot(...c))) - holes.diameter.likely / 2 - thread.major / 2
      : Infinity;
    const least = smallest(beside, shifted(spread, inFlange));
    const lines = least.likely / printer.lineWidth;
    const cure =
      least.likely < 1.6 ? `; a body of ${plain(thread.major + 3.2, 2)} mm is the slimmest for this screw` : '';
    return valued(least, `${plain(least.likely)} mm, ${plain(lines, 1)} lines${cure}`, limitsFor(printer.nozzle));
  },
};

/** Four lines carry a load; 1.6 mm are four lines of the usual nozzle, and a wide nozzle wants more. */
function limitsFor(nozzle: number) {
  return { pass: { min: Math.max(1.6, 4 * nozzle) }, fail: { min: 1.6 } };
}

/** A warm nut softens. */
export const heat: NutCheck = {
  id: 'heat',
  group: 'body',
  title: 'Reserve of temperature before the material softens',
  unit: '°C',
  source: 'common practice',
  limits: hard({ min: 20 }),
  moves: 'duty.temperature, material',
  run: ({ duty, material }) => {
    if (duty.temperature === undefined) return notJudged('duty.temperature');
    const reserve = material.softening - duty.temperature;
    const cure = reserve < 20 ? '; use a material that softens later, or keep the heat away' : '';
    return valued(
      exactly(reserve),
      `${material.name} softens at ${plain(material.softening, 0)} °C, ${plain(duty.temperature, 0)} °C around it${cure}`,
    );
  },
};
