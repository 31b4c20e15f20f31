import type { SizeWay } from '../../common/drawn/spread.js';
import { spreadOf } from '../../common/drawn/spread.js';
import type { Point, SizeChoice } from '../../part-views.js';
import type { CouplingDesign, Hub } from '../dimensions.js';
import type { HubPlan } from '../hub-plan.js';
import type { SpiderPlan } from '../spider.js';

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
}

/** A coupling at the sizes of one choice, put together. */
export interface CouplingInSight {
  readonly design: CouplingDesign;
  readonly hubs: readonly Standing[];
  readonly insert: SpiderPlan;
  /** height of the floor under the insert, and of the insert */
  readonly floor: number;
  readonly from: number;
  readonly spread: { readonly hubs: Spread; readonly insert: Spread };
}

/** A coupling put together at the sizes of one choice. */
export function inSight(design: CouplingDesign, choice: SizeChoice): CouplingInSight {
  const { insert, gap } = design;
  const below = design.hubs.find(({ name }) => name === 'motor-hub');
  const floor = below ? below[choice].length : 0;
  return {
    design,
    hubs: design.hubs.map((hub) => {
      const plan = hub[choice];
      return hub.name === 'motor-hub' ? placed(hub, plan, 0, 1) : placed(hub, plan, floor + gap + plan.length, -1);
    }),
    insert: insert[choice],
    floor,
    from: floor + (gap - insert[choice].height) / 2,
    spread: { hubs: spreadOf(design, choice), insert: spreadOf(insert, choice) },
  };
}

function placed(hub: Hub, plan: HubPlan, end: number, way: 1 | -1): Standing {
  const [group, title] = [hub.name.replace('-', '_'), hub.name.replace('-', ' ')];
  return { hub, plan, group, title, end, way, onPaper: ([z, x]) => [-(end + way * z), way * x] };
}
