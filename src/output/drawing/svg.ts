import type { Point } from '../../parts/part-views.js';
import { plain } from '../../units/format.js';
import { xmlText } from '../xml-text.js';
import type { Ink, Pen } from './ink.js';
import { CAPITAL } from './text-width.js';

/**
 * Widths of ISO 128: one wide line, twice the narrow one. They stand at each line as attributes, so that every reader
 * draws them alike; ink takes the colour of the text around it.
 */
const PENS: Readonly<Record<Pen, string>> = {
  wide: 'class="o" stroke-width=".5"',
  narrow: 'class="t" stroke-width=".25"',
  hidden: 'class="h" stroke-width=".25" stroke-dasharray="3 .75"',
  centre: 'class="c" stroke-width=".25" stroke-dasharray="6 .75 .125 .75"',
  hatch: 'class="m" stroke-width=".25"',
};

/** Of the group that all lines stand in. */
export const INK_STYLE =
  'fill="none" stroke="currentColor" stroke-linecap="round" stroke-linejoin="round" font-family="DejaVu Sans,Liberation Sans,Arial,sans-serif"';

/**
 * Ink as SVG.
 *
 * @param own what its names end in, where others of the same name may stand in one page
 */
export function svgOf(ink: Ink, own = ''): string {
  switch (ink.kind) {
    case 'line': {
      const id = ink.id ? ` id="${ink.id}${own}"` : '';
      return `<path ${PENS[ink.pen]}${id} d="${pathData(ink.points, ink.closed === true)}"/>`;
    }
    case 'arc':
      return `<${arcShape(ink)} ${PENS[ink.pen]}/>`;
    case 'fill':
      return `<path class="f" fill="currentColor" stroke="none" d="${pathData(ink.points, true)}"/>`;
    case 'text':
      return textOf(ink);
    case 'group':
      return [`<g id="${ink.id}${own}">`, ...ink.of.map((one) => svgOf(one, own)), '</g>'].join('\n');
  }
}

/** A number of a drawing, to a thousandth of a millimetre of paper. */
function num(value: number): string {
  return plain(value, 3);
}

function at([x, y]: Point): string {
  return `${num(x)} ${num(y)}`;
}

function pathData(points: readonly Point[], closed: boolean): string {
  return `M${points.map(at).join('L')}${closed ? 'Z' : ''}`;
}

function arcShape({ center: [x, y], radius, from, to }: Extract<Ink, { kind: 'arc' }>): string {
  if (to - from >= 360) return `circle cx="${num(x)}" cy="${num(y)}" r="${num(radius)}"`;
  const [start, end] = [from, to].map((degrees): Point => {
    const angle = (degrees * Math.PI) / 180;
    return [x + radius * Math.cos(angle), y - radius * Math.sin(angle)];
  }) as [Point, Point];
  const large = to - from > 180 ? 1 : 0;
  return `path d="M${at(start)}A${num(radius)} ${num(radius)} 0 ${large} 0 ${at(end)}"`;
}

function textOf({
  text,
  at: [x, y],
  height,
  anchor = 'start',
  turn = 0,
  bold = false,
  size,
  field,
}: Extract<Ink, { kind: 'text' }>): string {
  const turned = turn === 0 ? '' : ` transform="rotate(${num(-turn)} ${num(x)} ${num(y)})"`;
  const weight = bold ? ' font-weight="bold"' : '';
  const side = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  const name = size ? ` data-size="${xmlText(size)}"` : '';
  const shows = field ? ` data-field="${xmlText(field)}"` : '';
  return `<text x="${num(x)}" y="${num(y)}" font-size="${num(height / CAPITAL)}" fill="currentColor" stroke="none"${side}${weight}${turned}${name}${shows}>${xmlText(text)}</text>`;
}
