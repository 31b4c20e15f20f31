import { circleOutline, type Outline, turnedOutline } from '../../../solid/outline.js';
import { outlineAt } from '../../common/carved.js';
import { flatArea } from '../../common/drawn/flat-area.js';
import type { SizeWay } from '../../common/drawn/spread.js';
import { beyond, crossing, loop, ring } from '../../common/drawn/strokes.js';
import { polar } from '../../common/hole-pattern.js';
import type { DrawnView, Point, SizeMark } from '../../part-views.js';
import { type JawPlan, jawWidth, slotLevels, slotOutlines } from '../jaws.js';
import { holeOutline, spiderOutline } from '../spider.js';
import type { CouplingInSight, Standing } from './standing.js';

/** How finely the rounds of a section are drawn [mm]. */
const CHORD = 0.01;

/** Section across the axis in the middle between the floors, jaw 1 of the motor hub on +X: jaws and lobes as they are. */
export function acrossView(coupling: CouplingInSight): DrawnView {
  const { hubs, insert, design } = coupling;
  const jaws = hubs.flatMap((hub) => jawsAt(hub.plan.jaws, design.gap / 2).map((points) => turnedInto(hub, points)));
  const reach = hubs[0]!.plan.jaws.outer;
  const hole = holeOutline(insert, CHORD);
  const outline = spiderOutline(insert, CHORD);
  return {
    title: 'Section B–B, jaws and insert',
    strokes: [
      ring('outline', [0, 0], reach),
      ...jaws.map((points) => loop('outline', points)),
      loop('outline', outline),
      ...(insert.hole > 0 ? [ring('outline', [0, 0], insert.hole / 2)] : []),
      ...crossing([0, 0], reach + beyond(reach)),
    ],
    hatched: jaws.map((points) => [points]),
    crossHatched: [hole ? [outline, hole] : [outline]],
    sizes: jawSizes(coupling),
    letters: [],
  };
}

/** Jaws of a hub cut at a height over its floor, jaw 1 on +X. */
export function jawsAt(jaws: JawPlan, up: number): Point[][] {
  const disc = circleOutline({ radius: jaws.outer, sides: 180 });
  const core = circleOutline({ radius: jaws.inner, sides: 120 });
  const levels = slotLevels(jaws);
  return flatArea([disc], [core, ...slotOutlines(jaws).map((slot): Outline => outlineAt(slot, levels, up))]);
}

/** The screw hub is turned over, its jaws between those of the motor hub. */
function turnedInto({ way, plan }: Standing, points: readonly Point[]): readonly Point[] {
  return way === 1
    ? points
    : turnedOutline(
        points.map(([x, y]) => [-x, y] as const),
        180 / plan.jaws.count - 180,
      );
}

/** Jaws of both hubs are alike; the first one's are stated. */
function jawSizes({ hubs, spread }: CouplingInSight): SizeMark[] {
  const { plan, group, way } = hubs[0]!;
  const { jaws } = plan;
  const middle = (jaws.inner + jaws.outer) / 2;
  const width = jawWidth(jaws, middle);
  const turn = way === 1 ? 0 : 180 / jaws.count;
  const flank = (Math.atan2(width / 2, middle) * 180) / Math.PI;
  const led = leaders(`${group}.`, spread.hubs);
  return [
    led('jaw_width', width, 'outside', polar(Math.hypot(middle, width / 2), turn + flank), 'across a jaw'),
    led('jaw_height', jaws.height, 'along', polar(middle, turn - flank / 2), 'high'),
    led('jaw_inner_diameter', 2 * jaws.inner, 'inside', polar(jaws.inner, turn - flank), 'inside the jaws'),
  ];
}

/** The insert by itself, a lobe on +X. */
export function insertView({ insert, spread }: CouplingInSight): DrawnView {
  const { lobes, reach, halfWidth, middle, hole, height, ring: around } = insert;
  const outline = turnedOutline(spiderOutline(insert, CHORD), -180 / lobes);
  const led = leaders('insert.', spread.insert);
  return {
    title: 'Insert',
    strokes: [
      loop('outline', outline),
      ...(hole > 0 ? [ring('outline', [0, 0], hole / 2)] : []),
      ...crossing([0, 0], reach + beyond(reach)),
    ],
    hatched: [],
    sizes: [
      led('lobe_width', 2 * halfWidth, 'outside', [middle, halfWidth], 'across a lobe'),
      led('height', height, 'along', polar(middle, 0), 'high'),
      led('outside_diameter', 2 * reach, 'outside', polar(reach, -360 / lobes), 'over the lobes'),
      led('ring_diameter', 2 * around, 'outside', polar(around, 180 / lobes), 'between lobes'),
      ...(hole > 0 ? [led('hole_diameter', hole, 'inside', polar(hole / 2, -40))] : []),
    ],
    letters: [],
  };
}

type Lead = (name: string, value: number, way: SizeWay, to: Point, after?: string) => SizeMark;

/** Leaders to points of a section, where dimension lines would find no room. */
function leaders(before: string, spread: CouplingInSight['spread']['hubs']): Lead {
  return (name, value, way, to, after) => ({
    name: `${before}${name}`,
    value,
    ...(name.endsWith('diameter') ? { sign: '⌀' } : {}),
    ...(after ? { after } : {}),
    ...spread(value, way),
    from: [0, 0],
    to,
    side: 'leader',
  });
}
