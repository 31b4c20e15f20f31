import type { Printer } from '../../presets/printer.js';
import { outlineBounds } from '../../solid/convex.js';
import { type Outline, polygonArea, rectangleOutline } from '../../solid/outline.js';
import type { Shape } from '../../solid/recipe.js';
import { textOutlines } from '../../solid/text-outlines.js';
import type { Cut } from '../common/cut.js';
import { lessChords } from '../common/wall-in-file.js';
import { thinnest, type Wall } from '../common/walls.js';
import type { PlannedBody } from '../part-kind.js';

type Point = readonly [number, number];

/** Something that stands on the plate: straight walls up to its height, opened by a cut. */
export interface Column {
  readonly outline: Outline;
  /** over the bed */
  readonly height: number;
  /** its thinnest wall: of a ring its wall, of a block or post its width */
  readonly wall: number;
  readonly cut?: Cut;
  /** the cut seen from above */
  readonly opening?: Opening;
}

/** What an opening shows from above. */
export type Opening =
  | { readonly kind: 'plain'; readonly outline: Outline }
  | { readonly kind: 'thread'; readonly center: Point; readonly minor: number; readonly major: number };

/** A raised mark. */
export interface Mark {
  readonly text: string;
  readonly at: Point;
  readonly strokes: readonly Outline[];
}

/** A column with its mark, drawn around the origin; it is moved to its place on the strip. */
export interface Station {
  readonly mark: string;
  /** half its width along the strip, and across it */
  readonly half: number;
  readonly column: (center: Point) => Column;
}

/** A plate with what stands on it. */
export interface Plate {
  readonly name: string;
  readonly outline: Outline;
  readonly thickness: number;
  readonly columns: readonly Column[];
  readonly marks: readonly Mark[];
}

/** How marks are drawn. */
export interface MarkStyle {
  /** of a letter */
  readonly height: number;
  readonly stroke: number;
  /** over the plate */
  readonly rise: number;
}

/** Marks of strokes two lines wide, raised so that they can be read off the print. */
export function markStyle(lineWidth: number): MarkStyle {
  const stroke = 2 * lineWidth;
  return { height: Math.max(4.5, 5 * stroke), stroke, rise: 0.6 };
}

/** A mark is sunk so far into its plate that no faces are shared. */
const SUNK = 0.2;
/** Room around columns and marks, and between the stations, mm. */
const ROOM = 0.8;
const BETWEEN = 1.6;

/** A mark about a place. */
export function markAt(text: string, at: Point, { height, stroke }: MarkStyle): Mark {
  const moved = ([u, v]: Point): Point => [u + at[0], v + at[1]];
  return { text, at, strokes: textOutlines({ text, height, stroke }).map((outline) => outline.map(moved)) };
}

/** Width of a mark along its line. */
export function markWidth(text: string, style: MarkStyle): number {
  const { min, max } = outlineBounds(markAt(text, [0, 0], style).strokes.flat());
  return max[0] - min[0];
}

/**
 * Stations in a row along X, each with its mark below it, on one plate.
 * @param corner lower left corner of the plate
 */
export function strip(
  name: string,
  stations: readonly Station[],
  { corner, thickness, style }: { readonly corner: Point; readonly thickness: number; readonly style: MarkStyle },
): Plate {
  const cells = stations.map(({ mark, half }) => Math.max(2 * half, markWidth(mark, style)) + BETWEEN);
  const deepest = Math.max(...stations.map(({ half }) => half));
  const size: Point = [cells.reduce((sum, cell) => sum + cell, 0), style.height + 2 * deepest + 3 * ROOM];
  const line = corner[1] + ROOM + style.height / 2;
  const middle = corner[1] + 2 * ROOM + style.height + deepest;
  let at = corner[0];
  const placed = stations.map((station, i) => {
    const x = at + cells[i]! / 2;
    at += cells[i]!;
    return { column: station.column([x, middle]), mark: markAt(station.mark, [x, line], style) };
  });
  const center: Point = [corner[0] + size[0] / 2, corner[1] + size[1] / 2];
  return {
    name,
    outline: rectangleOutline({ size, center }),
    thickness,
    columns: placed.map(({ column }) => column),
    marks: placed.map(({ mark }) => mark),
  };
}

function markShape(outlines: readonly Outline[], from: number, to: number): Shape {
  return { kind: 'feature', name: 'mark', shape: { kind: 'strokes', outlines, from, to } };
}

/** A plate as a recipe, and what it must measure. */
export function plateBody(
  { name, outline, thickness, columns, marks }: Plate,
  { material, printer }: { readonly material: { readonly name: string }; readonly printer: Printer },
  { rise }: MarkStyle,
): PlannedBody {
  const raised = marks.flatMap(({ strokes }) => strokes);
  const prism = (one: Outline, from: number, to: number): Shape => ({ kind: 'prism', outlines: [one], from, to });
  const solid: Shape = {
    kind: 'union',
    of: [
      prism(outline, 0, thickness),
      ...columns.map(
        ({ outline: wall, height }): Shape => ({
          kind: 'feature',
          name: 'column',
          shape: prism(wall, thickness / 2, height),
        }),
      ),
      ...(raised.length === 0 ? [] : [markShape(raised, thickness - SUNK, thickness + rise)]),
    ],
  };
  const cuts = columns.flatMap(({ cut }) => cut ?? []);
  const standing = columns.reduce((sum, one) => sum + polygonArea(one.outline) * (one.height - thickness), 0);
  const cutAway = () => cuts.reduce((sum, { volume }) => sum + volume, 0);
  const { min, max } = outlineBounds(outline);
  return {
    recipe: {
      name,
      material: material.name,
      shape: cuts.length === 0 ? solid : { kind: 'difference', of: [solid, ...cuts.map(({ shape }) => shape)] },
    },
    expected: () => ({
      volume: polygonArea(outline) * thickness + standing - cutAway(),
      mark: raised.reduce((sum, mark) => sum + polygonArea(mark) * rise, 0),
      bounds: [
        [min[0], min[1], 0],
        [max[0], max[1], Math.max(thickness + (marks.length > 0 ? rise : 0), ...columns.map(({ height }) => height))],
      ],
    }),
    printer,
    leastWall: lessChords(leastPlateWall({ thickness, columns }), printer.chordError),
  };
}

/** The thinnest wall of a plate by arithmetic: its own thickness, or that of what stands on it. */
function leastPlateWall({ thickness, columns }: Pick<Plate, 'thickness' | 'columns'>): Wall {
  return thinnest([
    { where: 'plate', size: thickness },
    ...columns.map(({ wall, height }) => ({ where: 'what stands on the plate', size: Math.min(wall, height) })),
  ]);
}
