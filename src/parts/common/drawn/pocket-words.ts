import type { Joint, Pocket } from '../joints.js';
import type { PrintSizes } from '../print-sizes.js';
import { notedSize, type SizeWay } from './spread.js';

/** What a note says of the pockets beside holes: `counterbore ⌀6.18 ±0.06 mm, 3.00 ±0.02 mm deep`. */
export function pocketWords(
  joint: Joint,
  pocket: Pocket,
  {
    print: { inside, along },
    spread,
  }: { readonly print: PrintSizes; readonly spread: (size: number, way: SizeWay) => { spread?: number } },
): string {
  const [across, depth] = [inside(pocket.kind === 'round' ? pocket.diameter : pocket.acrossFlats), along(pocket.depth)];
  const wide = notedSize(across, spread(across, 'inside'));
  const form = pocket.kind === 'round' ? `${joint} ⌀${wide}` : `hexagon ${wide} across flats`;
  return `${form}, ${notedSize(depth, spread(depth, 'along'))} deep`;
}
