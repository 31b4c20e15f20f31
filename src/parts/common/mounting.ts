import type { HardwareRow } from '../part-kind.js';
import { hardwareWords } from './hardware-words.js';

/** Before any screw goes in. */
export const SEAT = 'Seat the part on its face without screws and look for light under it.';

/** How a part finds its place where nothing else is known of it. */
export const CENTRE = 'Let the screw or the shafts centre it, then tighten crosswise in two rounds.';

/** What is put in, and how; nothing where nothing is bought. */
export function putIn(rows: readonly HardwareRow[], words = 'Put in, finger tight'): string[] {
  return rows.length === 0 ? [] : [`${words}: ${hardwareWords(rows).join('; ')}.`];
}

/** Inserts are in the plastic before anything is screwed into them. */
export function meltIn(rows: readonly HardwareRow[]): string[] {
  return putIn(
    rows.filter(({ item }) => item === INSERT),
    'Melt the inserts in, square and flush, and let them cool under a flat weight',
  );
}

/** All but inserts. */
export function withoutInserts(rows: readonly HardwareRow[]): HardwareRow[] {
  return rows.filter(({ item }) => item !== INSERT);
}

const INSERT = 'heat-set insert';
