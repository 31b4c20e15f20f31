import type { Shape } from '../../../solid/recipe.js';
import type { SizeWay } from '../../common/drawn/spread.js';
import { beyond, crossing } from '../../common/drawn/strokes.js';
import { polar } from '../../common/hole-pattern.js';
import type { AskedView, Point, SizeMark } from '../../part-views.js';
import type { InsertPlan } from '../insert.js';
import { jawWidth } from '../jaws.js';
import type { CouplingInSight } from './standing.js';

/** Section across the axis in the middle between the floors, jaw 1 of the motor hub on +X: jaws and lobes as they are. */
export function acrossView(coupling: CouplingInSight): AskedView {
  const { hubs, inUse, design, floor } = coupling;
  const reach = hubs[0]!.plan.jaws.outer;
  return {
    title: 'Section B–B, jaws and insert',
    solid: { bodies: inUse, sight: { kind: 'across', height: floor + design.gap / 2 } },
    strokes: crossing([0, 0], reach + beyond(reach)),
    sizes: jawSizes(coupling),
    letters: [],
  };
}

/** Jaws of both hubs are alike; the first one's are stated. */
function jawSizes({ hubs, spread, design }: CouplingInSight): SizeMark[] {
  const { plan, group, way } = hubs[0]!;
  const { jaws } = plan;
  const middle = (jaws.inner + jaws.outer) / 2;
  const width = jawWidth(jaws, middle);
  // flanks with a draft are drawn where they are cut
  const lean = (design.gap / 2) * Math.tan((jaws.draft * Math.PI) / 180);
  const cut = jawWidth({ ...jaws, halfSlot: jaws.halfSlot + lean }, middle);
  const turn = way === 1 ? 0 : 180 / jaws.count;
  const flank = (Math.atan2(cut / 2, middle) * 180) / Math.PI;
  const led = leaders(`${group}.`, spread.hubs);
  return [
    led('jaw_width', width, 'outside', polar(Math.hypot(middle, cut / 2), turn + flank), 'across a jaw'),
    led('jaw_height', jaws.height, 'along', polar(jaws.outer, turn - flank / 2), 'high'),
    led('jaw_inner_diameter', 2 * jaws.inner, 'inside', polar(jaws.inner, turn), 'inside the jaws'),
  ];
}

/** The insert by itself. */
export function insertView({ insert, insertShape, spread }: CouplingInSight): AskedView {
  return insertSizes({ plan: insert, shape: lobeOnX(insert, insertShape), spread: spread.insert });
}

/** An insert turned until a lobe lies on +X. */
export function lobeOnX({ lobes }: InsertPlan, shape: Shape): Shape {
  return { kind: 'moved', turn: -180 / lobes, shape };
}

interface InsertInSight {
  readonly plan: InsertPlan;
  readonly shape: Shape;
  readonly spread: CouplingInSight['spread']['insert'];
}

/** The face of an insert with its sizes, a lobe on +X. */
export function insertSizes({ plan, shape, spread }: InsertInSight): AskedView {
  const { lobes, reach, halfWidth, middle, hole, height, ring: around } = plan;
  const led = leaders('insert.', spread);
  return {
    title: 'Insert',
    solid: { bodies: [shape], sight: { kind: 'end', from: 1 } },
    strokes: crossing([0, 0], reach + beyond(reach)),
    sizes: [
      led('lobe_width', 2 * halfWidth, 'outside', [middle, halfWidth], 'across a lobe'),
      led('height', height, 'along', [reach, 0], 'high'),
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
