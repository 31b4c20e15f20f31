import { circleOutline, hexagonOutline, type Outline, polygonArea, sidesFor } from '../../solid/outline.js';
import type { Shape } from '../../solid/recipe.js';
import { prismVolume } from '../../solid/volume.js';
import type { Pocket } from './joints.js';
import type { PrintSizes } from './print-sizes.js';
import { commonArea } from './section-volume.js';

/** Cutters stand out of what they cut by this much, mm. */
export const OVERSHOOT = 1;

/** A cutter, and what it takes out of the body. */
export interface Cut {
  readonly shape: Shape;
  /** mm³ */
  readonly volume: number;
}

/** A hole to be cut: heights printed, diameters finished. */
export interface Hole {
  readonly center: readonly [number, number];
  /** faces of the body where the hole stands */
  readonly from: number;
  readonly to: number;
  readonly bore: number;
  /** a blind hole ends this far from the face it starts at */
  readonly blind?: { readonly side: 'low' | 'high'; readonly depth: number };
  readonly pocket?: { readonly pocket: Pocket; readonly side: 'low' | 'high'; readonly depth: number };
  /** corner of a hexagon pocket turned so far past the hole's own direction from the axis, degrees */
  readonly turn?: number;
}

/** Cuts a hole with its pocket. */
export function holeCut(hole: Hole, inside: PrintSizes['inside'], chordError: number): Cut {
  const { center, from, to } = hole;
  const radius = inside(hole.bore) / 2;
  const outline = circleOutline({ radius, sides: sidesFor(radius, chordError), circumscribed: true, center });
  const [low, high] = spanOf(hole);
  const bore: Shape = {
    kind: 'prism',
    outlines: [outline],
    from: low <= from ? from - OVERSHOOT : low,
    to: high >= to ? to + OVERSHOOT : high,
  };
  const drilled = prismVolume({ outlines: [outline], from: low, to: high });
  if (!hole.pocket) return { shape: bore, volume: drilled };
  const { side, depth, pocket } = hole.pocket;
  const sunk = pocketOutline(pocket, { center, turn: hole.turn ?? 30, chordError, inside });
  const span = side === 'low' ? { from: from - OVERSHOOT, to: from + depth } : { from: to - depth, to: to + OVERSHOOT };
  return {
    shape: { kind: 'union', of: [bore, { kind: 'prism', outlines: [sunk], ...span }] },
    volume: drilled + (polygonArea(sunk) - commonArea(outline, sunk)) * depth,
  };
}

function spanOf({ from, to, blind }: Hole): readonly [number, number] {
  if (!blind) return [from, to];
  return blind.side === 'low' ? [from, Math.min(to, from + blind.depth)] : [Math.max(from, to - blind.depth), to];
}

/** Where a pocket stands. */
export interface PocketPlace {
  readonly center: readonly [number, number];
  readonly turn: number;
  readonly chordError: number;
  readonly inside: PrintSizes['inside'];
}

/** A hexagon turns with the direction of its hole from the axis. */
export function pocketOutline(pocket: Pocket, { center, turn, chordError, inside }: PocketPlace): Outline {
  if (pocket.kind === 'round') {
    const radius = inside(pocket.diameter) / 2;
    return circleOutline({ radius, sides: sidesFor(radius, chordError), circumscribed: true, center });
  }
  const direction = (Math.atan2(center[1], center[0]) * 180) / Math.PI;
  return hexagonOutline({ acrossFlats: inside(pocket.acrossFlats), center, turn: direction + turn });
}
