import { insideBy, reachOf, rimAround } from '../../solid/convex.js';
import type { Outline } from '../../solid/outline.js';
import { polygonArea } from '../../solid/outline.js';
import type { Shape } from '../../solid/recipe.js';
import { textOutlines } from '../../solid/text-outlines.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { OVERSHOOT } from '../common/cut.js';
import { polar } from '../common/hole-pattern.js';
import type { NutDesign } from './nut-design.js';
import type { NutSizes } from './nut-sizes.js';
import { bodyOutline, flangeOutline } from './plan.js';
import { headRadius, openingRadius } from './pockets.js';

export type { Mark } from './mark-asked.js';

/** Height of raised letters, how far they reach into the flange, and depth of engraved ones, mm. */
const RAISED = { height: 0.6, sunk: 0.2 };
const DEPTH = 0.4;
/** Room around the strokes, mm. */
const CLEAR = 0.4;
/** Capital letters that are tried, the largest first; smaller ones cannot be read on a print, mm. */
const HEIGHTS = [5, 4, 3.5, 3] as const;
const ANGLES = [0, 90, 180, 270, 45, 135, 225, 315] as const;
const MOST_LINES = 4;
/** From line to line, over the height of a letter. */
const SPACING = 1.5;

/** A mark as shapes: raised ones are added, engraved ones cut. */
export interface MarkShapes {
  readonly raised: readonly Shape[];
  readonly cut: readonly Shape[];
  /** what an engraved mark takes at most, mm³ */
  readonly taken: number;
  /** by how much strokes that overlap may make that less, or a raised mark the volume more, mm³ */
  readonly leeway: number;
}

/** The mark of a nut; nothing where none is asked for. */
export function markShapes(design: NutDesign): MarkShapes {
  const { mark, printed } = design;
  const outlines = markOutlines(design);
  if (!mark || outlines.length === 0) return { raised: [], cut: [], taken: 0, leeway: 0 };
  const plane = printed.flange!.thickness;
  const isRaised = mark.style === 'raised';
  const [from, to] = isRaised ? [plane - RAISED.sunk, plane + RAISED.height] : [plane - DEPTH, plane + OVERSHOOT];
  const shapes: Shape[] = [{ kind: 'feature', name: 'mark', shape: { kind: 'strokes', outlines, from, to } }];
  const area = outlines.reduce((sum, outline) => sum + polygonArea(outline), 0);
  return isRaised
    ? { raised: shapes, cut: [], taken: 0, leeway: area * RAISED.height }
    : { raised: [], cut: shapes, taken: area * DEPTH, leeway: area * DEPTH };
}

type Marked = Pick<NutDesign, 'mark' | 'printed' | 'carriage' | 'stands' | 'holes' | 'printer' | 'family'>;

/** Strokes of the mark on the flange, on as few lines and as large as they fit; none where they do not. */
function markOutlines({ mark, printed, holes, printer }: Marked): readonly Outline[] {
  if (!mark || !printed.flange) return [];
  const room = roomOf(printed, printer.chordError);
  for (const height of HEIGHTS) {
    for (const lines of wrappings(mark.text)) {
      const block = blockOf(lines, height, 2 * printer.lineWidth);
      for (const angle of ANGLES) {
        const reach = (reachOf(room.body, angle) + reachOf(room.plate, angle)) / 2;
        const strokes = block.map((outline) => placed(outline, reach, angle));
        if (strokes.every((outline) => fits(outline, { ...room, fillet: printed.fillet, holes, printed })))
          return strokes;
      }
    }
  }
  return [];
}

/**
 * Refuses a mark that has no place, with what it needs and what there is.
 * @throws InputError
 */
export function requireMarkFits(design: Marked): void {
  const { mark, printed, carriage, stands, printer, family } = design;
  if (!mark) return;
  const refuse = (allowed: string) => fault('mark', mark.text, allowed);
  if (mark.text.trim() === '') throw refuse('must hold more than spaces');
  if (!printed.flange) throw refuse('stands on a flange, and this nut has none');
  if (family?.kind === 'split') throw refuse('does not belong to a split nut, whose joint would cut it');
  if (mark.style === 'raised' && carriage.bore && stands !== 'away')
    throw refuse('would lie between flange and carriage; use mark: {text: …, style: engraved}');
  if (mark.style === 'raised' && printed.flange.offset + printed.flange.thickness + RAISED.height > printed.length)
    throw refuse('would stand out over the body; use mark: {text: …, style: engraved}');
  if (markOutlines(design).length > 0) return;
  const height = HEIGHTS.at(-1)!;
  const sizes = wrappings(mark.text).map((lines) => sizeOf(blockOf(lines, height, 2 * printer.lineWidth)));
  const needs = sizes.map(([wide, high]) => `${plain(wide, 1)} × ${plain(high, 1)} mm`).join(' or ');
  const { plate, body } = roomOf(printed, printer.chordError);
  const ring =
    Math.max(...ANGLES.map((angle) => reachOf(plate, angle) - reachOf(body, angle))) - printed.fillet - 2 * CLEAR;
  throw refuse(
    `needs ${needs} at the smallest letters of ${height} mm; the flange leaves ${plain(Math.max(0, ring), 1)} mm beside the body, less where its holes are: shorten it, or use a larger flange`,
  );
}

function roomOf(printed: NutSizes, chordError: number) {
  return { plate: flangeOutline(printed.flange!, chordError), body: bodyOutline(printed.body, chordError) };
}

/** The text on one line, and broken at its spaces into more, each as even as may be. */
function wrappings(text: string): string[][] {
  const words = text.trim().split(/ +/);
  const most = Math.min(MOST_LINES, words.length);
  return Array.from({ length: most }, (_, i) => evenLines(words, i + 1));
}

/** Words on so many lines, the longest as short as it can be. */
function evenLines(words: readonly string[], lines: number): string[] {
  if (lines === 1) return [words.join(' ')];
  const tries = Array.from({ length: words.length - lines + 1 }, (_, i) => [
    words.slice(0, i + 1).join(' '),
    ...evenLines(words.slice(i + 1), lines - 1),
  ]);
  const longest = (one: readonly string[]) => Math.max(...one.map(({ length }) => length));
  return tries.reduce((best, one) => (longest(one) < longest(best) ? one : best));
}

/** Lines one under the other about the origin. */
function blockOf(lines: readonly string[], height: number, stroke: number): Outline[] {
  return lines.flatMap((text, i) => {
    const up = ((lines.length - 1) / 2 - i) * SPACING * height;
    return textOutlines({ text, height, stroke }).map((outline) => outline.map(([x, y]) => [x, y + up] as const));
  });
}

function sizeOf(block: readonly Outline[]): readonly [wide: number, high: number] {
  const [xs, ys] = [0, 1].map((axis) => block.flat().map((point) => point[axis as 0 | 1])) as [number[], number[]];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}

function placed(outline: Outline, reach: number, angle: number): Outline {
  const [ox, oy] = polar(reach, angle);
  const [c, s] = polar(1, angle - 90);
  return outline.map(([x, y]): [number, number] => [ox + c * x - s * y, oy + s * x + c * y]);
}

function fits(
  outline: Outline,
  at: { plate: Outline; body: Outline; fillet: number; holes: NutDesign['holes']; printed: NutSizes },
): boolean {
  if (rimAround(outline, at.plate) < CLEAR) return false;
  if (outline.some((point) => -insideBy(at.body, point) < at.fillet + CLEAR)) return false;
  const radius = at.holes ? Math.max(openingRadius(at.holes), headRadius(at.holes)) : 0;
  return (at.printed.holes?.centres ?? []).every(([x, y]) =>
    outline.every(([u, v]) => Math.hypot(u - x, v - y) > radius + CLEAR),
  );
}
