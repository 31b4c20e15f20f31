import { table } from '../output/page/html.js';
import { xmlText } from '../output/xml-text.js';
import { plain } from '../units/format.js';
import type { AxisDesign } from './axis-design.js';
import { figureOf, type Known } from './known.js';

/** Places along the screw in their order, each with the sum that gives it. */
export function alongTable({ along, duty }: AxisDesign): string {
  const places: readonly (readonly [string, Known])[] = [
    ['the coupling begins', along.shaftRoom],
    ['the screw begins', along.screwStart],
    ['the coupling ends', along.jointEnd],
    ['the nut comes to, at the motor', along.near],
    ['the nut comes to, at the far end', along.far],
    ['the end holder ends', along.holderEnd],
    ['the screw ends', along.screwEnd],
  ];
  const rows = places
    .flatMap(([name, known]) => {
      const value = figureOf(known);
      return value ? [{ name, value }] : [];
    })
    .sort((a, b) => a.value.likely - b.value.likely)
    .map(({ name, value }) => [xmlText(name), plain(value.likely, 2), plain(value.most - value.likely, 2)]);
  if (rows.length === 0) return '';
  const free = duty.span === undefined ? '' : `<p>Free length of the screw: ${plain(duty.span, 1)} mm.</p>`;
  const caption = 'From the face that the motor’s shaft stands out of, mm';
  return `${table(caption, ['', 'at', '±'], rows, [1, 2])}${free}`;
}
