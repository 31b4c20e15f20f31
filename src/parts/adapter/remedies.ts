import type { Remedy } from '../../judge/advice.js';
import type { LimitsInForce } from '../../judge/check.js';
import { rounded } from '../../units/format.js';
import { type BoreEntered, boresEntered } from './bores-entered.js';
import type { AdapterDesign } from './dimensions.js';

const check = 'mount-bore';

/** Ways to let a bought nut into the bores that it does not enter, the least trouble first. */
export function boreRemedies(design: AdapterDesign, { pass }: LimitsInForce): readonly Remedy[] {
  const { nut } = design;
  if (!nut) return [];
  const least = pass.min ?? 0;
  const tight = boresEntered(design).filter(({ room }) => room.least < least);
  const wider = Object.fromEntries(tight.flatMap((one) => widened(design, one, least)));
  const other = nut.seat === 'outside' ? 'carriage' : 'outside';
  return [
    ...(Object.keys(wider).length > 0 ? [{ check, say: 'bore it out', set: wider }] : []),
    { check, say: 'seat the nut on the other side', set: { 'nut.seat': other } },
    ...(nut.stands === 'through'
      ? [{ check, say: 'let the nut stand away from the plate', set: { 'nut.stands': 'away', ...withoutBore(design) } }]
      : []),
  ];
}

/** The bore that lets the nut in, by its field; a slot has no diameter. */
function widened({ layout, carriage }: AdapterDesign, { of, room }: BoreEntered, least: number): [string, number][] {
  const missing = least - room.least;
  if (of === 'step') return [['plate.step.diameter', tenths(layout.plate.outerStep!.diameter + missing)]];
  if (of === 'plate') return [['plate.bore', tenths(layout.plate.bore + missing)]];
  return carriage.bore ? [['carriage.bore', tenths(carriage.bore.likely + missing)]] : [];
}

/** A nut that stands away cannot be centred by the plate's bore. */
function withoutBore({ registers }: AdapterDesign): Remedy['set'] {
  return registers.nut === 'bore' ? { 'register.nut': 'recess' } : {};
}

function tenths(value: number): number {
  return rounded(Math.ceil(10 * value - 1e-9) / 10);
}
