import type { HardwareRow } from '../parts/part-kind.js';
import type { Cell } from './csv/write-csv.js';
import type { RememberedPart } from './made-part.js';

/** Parts with how many of them are wanted. */
export type Counted = readonly { readonly made: RememberedPart; readonly quantity: number }[];

/** Mass of one material  [g]. */
export interface MaterialMass {
  readonly material: string;
  readonly mass: number;
}

/** What must be bought for parts, equal things in one row, in order of item and size. */
export function hardwareOf(parts: Counted): HardwareRow[] {
  return hardwareSum(
    parts.map(({ made, quantity }) => made.hardware.map((row) => ({ ...row, count: row.count * quantity }))),
  );
}

/** Several hardware lists as one. */
export function hardwareSum(lists: readonly (readonly HardwareRow[])[]): HardwareRow[] {
  const counts = new Map<string, HardwareRow>();
  for (const { item, size, count } of lists.flat()) {
    const key = JSON.stringify([item, size]);
    counts.set(key, { item, size, count: (counts.get(key)?.count ?? 0) + count });
  }
  return [...counts.values()].filter(({ count }) => count > 0).sort(byItem);
}

/** Filament by material, supports and waste aside. */
export function filamentOf(parts: Counted): MaterialMass[] {
  return filamentSum(
    parts.map(({ made, quantity }) => made.bodies.map(({ material, mass }) => ({ material, mass: mass * quantity }))),
  );
}

/** Several lists of filament as one. */
export function filamentSum(lists: readonly (readonly MaterialMass[])[]): MaterialMass[] {
  const masses = new Map<string, number>();
  for (const { material, mass } of lists.flat()) masses.set(material, (masses.get(material) ?? 0) + mass);
  return [...masses].map(([material, mass]) => ({ material, mass })).sort((a, b) => (a.material < b.material ? -1 : 1));
}

/** The hardware lists of all machines and of each as a table. */
export function* hardwareTable(
  all: readonly HardwareRow[],
  machines: Iterable<{ readonly machine: string; readonly hardware: readonly HardwareRow[] }>,
): Iterable<Cell[]> {
  const rows = (machine: string, list: readonly HardwareRow[]) =>
    list.map(({ item, size, count }): Cell[] => [machine, item, size, count]);
  yield ['machine', 'item', 'size', 'count'];
  yield* rows('', all);
  for (const { machine, hardware } of machines) yield* rows(machine, hardware);
}

function byItem(a: HardwareRow, b: HardwareRow): number {
  const [first, second] = [sortKey(a), sortKey(b)];
  return first < second ? -1 : first > second ? 1 : 0;
}

/** M3x8 before M3x10 */
function sortKey({ item, size }: HardwareRow): string {
  return `${item}\u0000${size.replace(/\d+/g, (digits) => digits.padStart(6, '0'))}`;
}
