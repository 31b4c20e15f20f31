import type { Placement } from '../../../solid/mesh.js';
import type { Shape } from '../../../solid/recipe.js';
import { type SizeWay, spreadOf } from '../../common/drawn/spread.js';
import type { Point, SizeChoice } from '../../part-views.js';
import type { CouplingDesign, Hub } from '../dimensions.js';
import type { HubPlan } from '../hub-plan.js';
import type { InsertPlan } from '../insert.js';
import { couplingBodies } from '../solid.js';

type Spread = (size: number, way: SizeWay) => { spread?: number };

/** A hub in its place along the axis: the motor hub stands on its end at z = 0, the screw hub is turned over above it. */
export interface Standing {
  readonly hub: Hub;
  readonly plan: HubPlan;
  /** group of its names in the report */
  readonly group: string;
  /** in words */
  readonly title: string;
  /** height of its own end and the way from there to its floor */
  readonly end: number;
  readonly way: 1 | -1;
  /**
   * place on the paper of [z, x] of its own, both hubs turned so that their jaws stand between one another: the slit of
   * the motor hub on top, that of the screw hub below
   */
  readonly onPaper: (point: Point) => Point;
  /** the hub by itself, lying as it is printed; and in its place in the section, its slit in the plane of the section */
  readonly alone: Shape;
  readonly shape: Shape;
}

/** A coupling at the sizes of one choice, put together. */
export interface CouplingInSight {
  readonly design: CouplingDesign;
  readonly hubs: readonly Standing[];
  readonly insert: InsertPlan;
  /** height of the floor under the insert, and of the insert */
  readonly floor: number;
  readonly from: number;
  readonly insertShape: Shape;
  /** all bodies as they stand in use, jaws between jaws, the insert second */
  readonly inUse: readonly Shape[];
  readonly spread: { readonly hubs: Spread; readonly insert: Spread };
}

/** A coupling put together at the sizes of one choice. */
export function inSight(design: CouplingDesign, choice: SizeChoice): CouplingInSight {
  const { insert, gap } = design;
  const shapes = new Map(couplingBodies(design, choice).map(({ recipe }) => [recipe.name, recipe.shape]));
  const below = design.hubs.find(({ name }) => name === 'motor-hub');
  const floor = below ? below[choice].length : 0;
  const from = floor + (gap - insert[choice].height) / 2;
  const hubs = design.hubs.map((hub) => {
    const plan = hub[choice];
    const alone = shapes.get(hub.name)!;
    return hub.name === 'motor-hub'
      ? placed(hub, { plan, alone, end: 0, way: 1 })
      : placed(hub, { plan, alone, end: floor + gap + plan.length, way: -1 });
  });
  const insertShape: Shape = { kind: 'moved', by: [0, 0, from], shape: shapes.get('insert')! };
  const [first, ...others] = hubs.map((hub): Shape => ({ kind: 'moved', ...placementOf(hub), shape: hub.alone }));
  return {
    design,
    hubs,
    insert: insert[choice],
    floor,
    from,
    insertShape,
    inUse: [first!, insertShape, ...others],
    spread: { hubs: spreadOf(design, choice), insert: spreadOf(insert, choice) },
  };
}

/** Where a hub stands in use; the screw hub is turned over, its jaws between those of the other. */
export function placementOf({ end, way, plan }: Pick<Standing, 'end' | 'way' | 'plan'>): Placement {
  const by = [0, 0, end] as const;
  return way === 1 ? { by } : { tilt: 180, turn: 180 / plan.jaws.count - 180, by };
}

function placed(hub: Hub, standing: Pick<Standing, 'plan' | 'alone' | 'end' | 'way'>): Standing {
  const { end, way, alone } = standing;
  const [group, title] = [hub.name.replace('-', '_'), hub.name.replace('-', ' ')];
  return {
    ...standing,
    hub,
    group,
    title,
    onPaper: ([z, x]) => [-(end + way * z), way * x],
    // turned over about Y, its slit comes to lie on −X
    shape: { kind: 'moved', ...(way === 1 ? {} : { tilt: 180 }), by: [0, 0, end], shape: alone },
  };
}
