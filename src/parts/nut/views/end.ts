import { reachOf } from '../../../solid/convex.js';
import { circleOutline, type Outline } from '../../../solid/outline.js';
import { flatArea } from '../../common/drawn/flat-area.js';
import { beyond, crossing, line, loop, ring } from '../../common/drawn/strokes.js';
import { polar } from '../../common/hole-pattern.js';
import type { DrawnView, Letter, Point, Stroke } from '../../part-views.js';
import type { NutSizes } from '../dimensions.js';
import { endSizes } from './end-sizes.js';
import { directionOf, type HoleInSight, type NutInSight } from './in-sight.js';
import type { Member } from './member.js';

/** The nut seen from +Z, with the planes of the section. */
export function endView(nut: NutInSight, member: Member): DrawnView {
  const { sizes, holes, body, plate } = nut;
  const outside = plate ?? body;
  const { open = {}, title, strokes, sizes: more } = member.end;
  const widest = Math.max(...outside.flatMap(([x, y]) => [Math.abs(x), Math.abs(y)]));
  const planes = member.planes.map((angle) => ({ angle, reach: reachOf(outside, angle) }));
  const circle = onCircle(holes.map(({ at }) => at));
  return {
    title: title ?? `Seen from ${sizes.flange ? 'the body end' : '+Z'}`,
    strokes: [
      ...(plate ? outlineOpen(plate, open.plate) : []),
      ...outlineOpen(body, open.body),
      ...(member.threads.length > 0 ? threadSeen(sizes) : []),
      ...holes.flatMap(holeStrokes),
      ...(circle ? [ring('centre', [0, 0], circle)] : []),
      ...crossing([0, 0], widest + beyond(widest)),
      ...planes.map(({ angle, reach }) => line('centre', [0, 0], polar(reach + beyond(reach), angle))),
      ...strokes,
    ],
    hatched: [],
    sizes: [...endSizes(nut), ...more],
    letters: [
      // beside the line
      ...planes.map(({ angle, reach }): Letter => ({ at: polar(reach, angle), text: 'A', away: polar(1, angle + 40) })),
      ...holes.map(holeNumber),
    ],
  };
}

/** An outline where nothing opens it; else what is left of its edge. */
function outlineOpen(outline: Outline, open: readonly Outline[] = []): Stroke[] {
  return open.length === 0
    ? [loop('outline', outline)]
    : flatArea([outline], open).map((points) => loop('outline', points));
}

/** ISO 6410: the crest as an outline, three quarters of the root thin. */
export function threadSeen({ thread }: Pick<NutSizes, 'thread'>): Stroke[] {
  return [
    ring('outline', [0, 0], thread.minor / 2),
    { kind: 'arc', line: 'thin', center: [0, 0], radius: thread.major / 2, from: 95, to: 355 },
  ];
}

/** A bore as a loop that opens outlines where a slit leads into it. */
export function boreLoop(radius: number): Outline {
  return circleOutline({ radius, sides: 96 });
}

function holeStrokes({ at, diameter, sunk }: HoleInSight): Stroke[] {
  const hole = ring('outline', at, diameter / 2);
  if (!sunk) return [hole];
  const seen = sunk.side === 'body' ? 'outline' : 'hidden';
  const { pocket, outline } = sunk;
  if (pocket.kind === 'hexagon') return [hole, loop(seen, outline)];
  const radius = Math.min(...outline.map(([x, y]) => Math.hypot(x - at[0], y - at[1])));
  return [hole, ring(seen, at, radius * Math.cos(Math.PI / outline.length))];
}

/** Beside its hole, farther from the axis than it is wide. */
function holeNumber({ at, diameter }: HoleInSight, i: number): Letter {
  return { at: polar(Math.hypot(...at) + diameter / 2, directionOf(at) + 9), text: `${i + 1}`, away: [0, 0] };
}

/** Radius of the circle that all centres lie on. */
function onCircle(centres: readonly Point[]): number | undefined {
  const [first] = centres;
  if (!first) return undefined;
  const radius = Math.hypot(...first);
  return centres.every((at) => Math.abs(Math.hypot(...at) - radius) < 1e-6) ? radius : undefined;
}
