import { MEMBRANE } from '../../solid/facet-roles.js';
import { circleOutline, hexagonOutline, type Outline, polygonArea, sidesFor } from '../../solid/outline.js';
import type { Prism, Shape } from '../../solid/recipe.js';
import { prismVolume } from '../../solid/volume.js';
import type { Pocket } from './joints.js';
import type { PrintSizes } from './print-sizes.js';
import { type Roof, steppedRoof, takesRoof } from './roof.js';
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
  readonly pocket?: {
    readonly pocket: Pocket;
    readonly side: 'low' | 'high';
    readonly depth: number;
    /** where it opens on the bed and is bridged */
    readonly roof?: Roof;
  };
  /** corner of a hexagon pocket turned so far past the hole's own direction from the axis, degrees */
  readonly turn?: number;
}

/** Cuts a hole with its pocket. */
export function holeCut(hole: Hole, inside: PrintSizes['inside'], chordError: number): Cut {
  const { center, from, to } = hole;
  const radius = inside(hole.bore) / 2;
  const outline = circleOutline({ radius, sides: sidesFor(radius, chordError), circumscribed: true, center });
  const [low, high] = spanOf(hole);
  const bore: Prism = {
    kind: 'prism',
    outlines: [outline],
    from: low <= from ? from - OVERSHOOT : low,
    to: high >= to ? to + OVERSHOOT : high,
  };
  const drill: Shape = hole.blind ? { kind: 'feature', name: 'blind', shape: bore } : bore;
  const drilled = prismVolume({ outlines: [outline], from: low, to: high });
  if (!hole.pocket) return { shape: drill, volume: drilled };
  const { side, depth, pocket } = hole.pocket;
  const sunk = pocketOutline(pocket, { center, turn: hole.turn ?? 30, chordError, inside });
  const span = side === 'low' ? { from: from - OVERSHOOT, to: from + depth } : { from: to - depth, to: to + OVERSHOOT };
  const plain: Cut = {
    shape: {
      kind: 'union',
      of: [drill, { kind: 'feature', name: 'pocket', shape: { kind: 'prism', outlines: [sunk], ...span } }],
    },
    volume: drilled + (polygonArea(sunk) - commonArea(outline, sunk)) * depth,
  };
  const { roof } = hole.pocket;
  const floor = to - from - depth;
  if (!roof || !takesRoof(floor, roof)) return plain;
  return roofed({ plain, bore, outline, sunk, center, radius }, { from, to, side, depth, roof });
}

interface Drilled {
  readonly plain: Cut;
  readonly bore: Prism;
  readonly outline: Outline;
  readonly sunk: Outline;
  readonly center: Hole['center'];
  readonly radius: number;
}

/** The same with a roof over the pocket: the hole begins a layer on, or is led to in steps. */
function roofed(
  { plain, bore, outline, sunk, center, radius }: Drilled,
  at: {
    readonly from: number;
    readonly to: number;
    readonly side: 'low' | 'high';
    readonly depth: number;
    readonly roof: Roof;
  },
): Cut {
  const { from, to, side, depth, roof } = at;
  const { layer } = roof;
  const along = (near: number, far: number) =>
    side === 'low' ? { from: from + near, to: from + far } : { from: to - far, to: to - near };
  const sunkShape: Shape = {
    kind: 'feature',
    name: 'pocket',
    shape: { kind: 'prism', outlines: [sunk], ...along(-OVERSHOOT, depth) },
  };
  if (roof.kind === 'membrane') {
    const rest =
      side === 'low' ? { from: from + depth + layer, to: bore.to } : { from: bore.from, to: to - depth - layer };
    return {
      shape: { kind: 'union', of: [{ kind: 'feature', name: MEMBRANE, shape: { ...bore, ...rest } }, sunkShape] },
      volume: plain.volume - polygonArea(outline) * layer,
    };
  }
  const reach = radius / Math.cos(Math.PI / outline.length);
  const steps = steppedRoof(sunk, center, reach);
  return {
    shape: {
      kind: 'union',
      of: [
        bore,
        sunkShape,
        ...steps.map(
          (step, i): Shape => ({ kind: 'prism', outlines: [step], ...along(depth / 2, depth + (i + 1) * layer) }),
        ),
      ],
    },
    volume: plain.volume + steps.reduce((sum, step) => sum + (polygonArea(step) - polygonArea(outline)) * layer, 0),
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
function pocketOutline(pocket: Pocket, { center, turn, chordError, inside }: PocketPlace): Outline {
  if (pocket.kind === 'round') {
    const radius = inside(pocket.diameter) / 2;
    return circleOutline({ radius, sides: sidesFor(radius, chordError), circumscribed: true, center });
  }
  const direction = (Math.atan2(center[1], center[0]) * 180) / Math.PI;
  return hexagonOutline({ acrossFlats: inside(pocket.acrossFlats), center, turn: direction + turn });
}
