import type { LengthReading, Readings } from '../identify/readings.js';
import type { ReadingsSheet } from '../sheet/sections/readings.js';
import type { Quantity } from '../units/quantity.js';

/** The readings of a screw, as typed, in the form in which a screw is named from them. */
export function readingsOf(sheet: ReadingsSheet): Readings {
  const { major, crests, travel, starts, minor, nut_bore, crest_flat, wires, crest, hand, uncertainty, cannot } = sheet;
  return {
    ...(major && { major: major.map(({ value }) => value) }),
    ...(crests && { crests: { count: crests.count, length: crests.length.value } }),
    ...(travel && { travel: { turns: travel.turns, length: travel.length.value } }),
    ...(starts !== undefined && { starts }),
    ...(minor && { minor: minor.value }),
    ...(nut_bore && { nutBore: { goes: nut_bore.goes.value, stops: nut_bore.stops.value } }),
    ...(crest_flat && { crestFlat: crest_flat.value }),
    ...(wires && { wires: { wire: wires.wire, over: wires.over.value } }),
    ...(crest && { crest }),
    ...(hand && { hand }),
    ...(uncertainty !== undefined && { uncertainty }),
    ...(cannot && { cannot }),
    uncertainties: ownUncertainties({
      major: worst(major),
      crests: crests?.length.half,
      travel: travel?.length.half,
      minor: minor?.half,
      nutBore: nut_bore?.goes.half,
      crestFlat: crest_flat?.half,
      wires: wires?.over.half,
    }),
  };
}

/** The largest uncertainty that any of the readings states. */
function worst(readings: readonly Quantity[] = []): number | undefined {
  const stated = readings.flatMap(({ half }) => half ?? []);
  return stated.length === 0 ? undefined : Math.max(...stated);
}

function ownUncertainties(
  stated: Readonly<Record<LengthReading, number | undefined>>,
): NonNullable<Readings['uncertainties']> {
  return Object.fromEntries(Object.entries(stated).filter(([, half]) => half !== undefined));
}
