import type { HardwareRow } from '../parts/part-kind.js';

/**
 * What is bought, as one list: sizes of one thing stand together, as a shop sells them.
 * @example hardwareWords([{item: 'plain washer', size: 'M3', count: 8}]) // ['8 × M3 plain washer']
 */
export function hardwareWords(hardware: readonly HardwareRow[]): string[] {
  const items = [...new Set(hardware.map(({ item }) => item))];
  return items.map((item) => {
    const sizes = hardware.filter((row) => row.item === item).map(({ size, count }) => `${count} × ${size}`);
    return `${sizes.join(', ')} ${item}`;
  });
}
