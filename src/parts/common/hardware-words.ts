import type { HardwareRow } from '../part-kind.js';

/**
 * What is bought, as one list: sizes of one thing stand together, as a shop sells them.
 * @example hardwareWords([{item: 'plain washer', size: 'M3', count: 8}]) // ['8 × M3 plain washer']
 */
export function hardwareWords(hardware: readonly HardwareRow[]): string[] {
  const items = [...new Set(hardware.map(({ item }) => item))];
  return items.map(
    (item) =>
      `${hardware
        .filter((row) => row.item === item)
        .map(sized)
        .join(', ')} ${item}`,
  );
}

function sized(row: HardwareRow): string {
  return `${row.count} × ${row.size}${untoldWords(row)}`;
}

/**
 * Which reading tells how long a screw is to be, in brackets; nothing where its length is known.
 * @example untoldWords({untold: 'carriage.thickness'}) // ' (as long as carriage.thickness tells)'
 */
export function untoldWords({ untold }: Pick<HardwareRow, 'untold'>): string {
  return untold === undefined ? '' : ` (as long as ${untold} tells)`;
}
