import type { Point } from '../../parts/part-views.js';
import { plain } from '../../units/format.js';
import { xmlText } from '../xml-text.js';

/** A number of a drawing, to a thousandth of a millimetre of paper. */
export function num(value: number): string {
  return plain(value, 3);
}

/** A point as path data. */
export function at([x, y]: Point): string {
  return `${num(x)} ${num(y)}`;
}

/** A straight line between two points of the paper. */
export function lineTag(className: string, [x1, y1]: Point, [x2, y2]: Point): string {
  return `<path class="${className}" d="M${at([x1, y1])}L${at([x2, y2])}"/>`;
}

/** How a text stands. */
export interface TextPlace {
  readonly at: Point;
  /** capital height [mm] */
  readonly height: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** degrees, counter-clockwise as read */
  readonly turn?: number;
  readonly bold?: boolean;
  /** further attributes, already escaped */
  readonly more?: string;
}

/** A capital is about 0.72 of the font size in the fonts that readers have. */
const CAPITAL = 0.72;

/** A line of text, its foot at the point. */
export function textTag(text: string, place: TextPlace): string {
  const {
    at: [x, y],
    height,
    anchor = 'start',
    turn = 0,
    bold = false,
    more = '',
  } = place;
  const turned = turn === 0 ? '' : ` transform="rotate(${num(-turn)} ${num(x)} ${num(y)})"`;
  const weight = bold ? ' font-weight="bold"' : '';
  const size = ` font-size="${num(height / CAPITAL)}"`;
  const side = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  return `<text x="${num(x)}" y="${num(y)}"${size}${side}${weight}${turned}${more}>${xmlText(text)}</text>`;
}

/** About how wide a text comes out [mm]. */
export function textWidth(text: string, height: number): number {
  return (0.55 * height * Array.from(text).length) / CAPITAL;
}

/** A text as so many lines at most; what does not fit into the last ends in dots. */
export function wrapped(text: string, room: number, height: number, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word;
    if (lines.length === 0 || (lines.length < most && textWidth(longer, height) > room)) lines.push(word);
    else lines[lines.length - 1] = longer;
  }
  return lines.map((line) => shortened(line, room, height));
}

/** A text cut so that it fits, with dots. */
export function shortened(text: string, room: number, height: number): string {
  if (textWidth(text, height) <= room) return text;
  const characters = Array.from(text);
  const fit = Math.floor((room / textWidth(text, height)) * characters.length) - 1;
  return `${characters.slice(0, fit).join('').trimEnd()}…`;
}

/** Length and half width of an arrow [mm]. */
export const ARROW = { length: 2.5, half: 0.45 };

/** A filled arrow with its tip at a point and its shaft from another; `outside` has it point inwards from beyond. */
export function arrowTag(tip: Point, from: Point, outside: boolean): string {
  const length = Math.hypot(tip[0] - from[0], tip[1] - from[1]) || 1;
  const way = (outside ? -1 : 1) / length;
  const [dx, dy] = [way * (tip[0] - from[0]), way * (tip[1] - from[1])];
  const back: Point = [tip[0] - ARROW.length * dx, tip[1] - ARROW.length * dy];
  const [nx, ny] = [-dy * ARROW.half, dx * ARROW.half];
  return `<path class="f" d="M${at(tip)}L${num(back[0] + nx)} ${num(back[1] + ny)}L${num(back[0] - nx)} ${num(back[1] - ny)}Z"/>`;
}
