import type { Point } from '../../parts/part-views.js';

/** Lines by ISO 128: wide and narrow full ones, narrow dashed and chain ones, and wide ends of a cutting plane. */
export type Pen = 'wide' | 'narrow' | 'hidden' | 'centre' | 'hatch';

/** What is put on the paper: mm, y downwards; angles in degrees, counter-clockwise as seen. */
export type Ink =
  | {
      readonly kind: 'line';
      readonly pen: Pen;
      readonly points: readonly Point[];
      readonly closed?: boolean;
      readonly id?: string;
    }
  | {
      readonly kind: 'arc';
      readonly pen: Pen;
      readonly center: Point;
      readonly radius: number;
      readonly from: number;
      readonly to: number;
    }
  | { readonly kind: 'fill'; readonly points: readonly Point[] }
  | ({ readonly kind: 'text'; readonly text: string } & TextPlace)
  | { readonly kind: 'group'; readonly id: string; readonly of: readonly Ink[] };

/** How a text stands, its foot at the point. */
export interface TextPlace {
  readonly at: Point;
  /** capital height [mm] */
  readonly height: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** degrees, counter-clockwise as read */
  readonly turn?: number;
  readonly bold?: boolean;
  /** name of the size that it states */
  readonly size?: string;
  /** field of the sheet that it shows, or `derived` */
  readonly field?: string;
}

/** A straight line between two points of the paper. */
export function lineInk(pen: Pen, from: Point, to: Point): Ink {
  return { kind: 'line', pen, points: [from, to] };
}

/** An upright rectangle between two opposite corners. */
export function boxInk(pen: Pen, [x0, y0]: Point, [x1, y1]: Point): Ink {
  const points = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ] as const;
  return { kind: 'line', pen, points, closed: true };
}

export function circleInk(pen: Pen, center: Point, radius: number): Ink {
  return { kind: 'arc', pen, center, radius, from: 0, to: 360 };
}

/** A line of text. */
export function textInk(text: string, place: TextPlace): Extract<Ink, { kind: 'text' }> {
  return { kind: 'text', text, ...place };
}

/** Length and half width of an arrow [mm]. */
export const ARROW = { length: 2.5, half: 0.45 };

/** A filled arrow with its tip at a point and its shaft from another; `outside` has it point inwards from beyond. */
export function arrowInk(tip: Point, from: Point, outside: boolean): Ink {
  const length = Math.hypot(tip[0] - from[0], tip[1] - from[1]) || 1;
  const way = (outside ? -1 : 1) / length;
  const [dx, dy] = [way * (tip[0] - from[0]), way * (tip[1] - from[1])];
  const back: Point = [tip[0] - ARROW.length * dx, tip[1] - ARROW.length * dy];
  const [nx, ny] = [-dy * ARROW.half, dx * ARROW.half];
  return { kind: 'fill', points: [tip, [back[0] + nx, back[1] + ny], [back[0] - nx, back[1] - ny]] };
}

/** Ink that many times as large about the corner of the sheet; lines keep their widths. */
export function enlarged(ink: Ink, by: number): Ink {
  const point = ([x, y]: Point): Point => [by * x, by * y];
  switch (ink.kind) {
    case 'line':
    case 'fill':
      return { ...ink, points: ink.points.map(point) };
    case 'arc':
      return { ...ink, center: point(ink.center), radius: by * ink.radius };
    case 'text':
      return { ...ink, at: point(ink.at), height: by * ink.height };
    case 'group':
      return { ...ink, of: ink.of.map((one) => enlarged(one, by)) };
  }
}
