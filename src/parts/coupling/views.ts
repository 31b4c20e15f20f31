import { latheMesh } from '../../solid/lathe-mesh.js';
import { circleOutline, sidesFor } from '../../solid/outline.js';
import { cylinder } from '../../solid/recipe.js';
import { plain } from '../../units/format.js';
import { box, crossing, loop, ring } from '../common/drawn/strokes.js';
import type { Companion, DrawnView, PartViews, Point, SizeChoice, SizeMark, Stroke } from '../part-views.js';
import type { CouplingDesign, Hub } from './dimensions.js';
import type { HubPlan } from './hub-plan.js';
import { spiderOutline } from './spider.js';

/** How far shafts stand out of their hubs in a picture, in diameters. */
const SHAFT_BEYOND = 1.5;
/** Free room between bodies that are pulled apart [mm]. */
const APART = 10;

/** A hub in its place along the axis: the first stands on its end at z = 0, the second is turned over above it. */
interface Standing {
  readonly hub: Hub;
  readonly plan: HubPlan;
  /** group of its names in the report */
  readonly group: string;
  /** height of its own end and the way from there to its floor */
  readonly end: number;
  readonly way: 1 | -1;
}

/** What a drawing and the page show of a coupling: put together, with its shafts. */
export function couplingViews(design: CouplingDesign, choice: SizeChoice): PartViews {
  const hubs = standing(design, choice);
  const first = hubs[0];
  const { insert, gap, material } = design;
  const floor = first && first.way === 1 ? first.plan.length : 0;
  const middle = floor + (gap - insert[choice].height) / 2;
  const away = design.insert.printed.height + APART;
  return {
    side: sideView(hubs, { from: middle, height: insert[choice].height, reach: insert[choice].reach }),
    end: endView(design, choice, hubs),
    holes: [],
    notes: [
      `Insert of ${insert.hardness}, ${plain(insert[choice].lobes)} lobes; ${plain(gap, 2)} between the floors of the hubs`,
      ...hubs.map(({ hub, group }) => `${group.replace('_', ' ')}: shaft goes in ${plain(hub.depth, 2)}`),
    ],
    material: [...new Set([material.name, insert.material.name])].join(', '),
    companions: hubs.map(shaftOf),
    inUse: Object.fromEntries([
      ...hubs.map(({ hub, end, way }) => [
        hub.name,
        way === 1
          ? { by: [0, 0, end] as const }
          : { tilt: 180, turn: 180 / hub.printed.jaws.count - 180, by: [0, 0, end] as const },
      ]),
      ['insert', { by: [0, 0, middle] as const }],
    ]),
    apart: Object.fromEntries(hubs.map(({ hub, way }) => [hub.name, [0, 0, -way * away] as const])),
    cutTowards: 90,
    turnedOver: false,
  };
}

function standing({ hubs, gap }: CouplingDesign, choice: SizeChoice): Standing[] {
  const below = hubs.find(({ name }) => name === 'motor-hub');
  const floor = below ? below[choice].length : 0;
  return hubs.map((hub): Standing => {
    const plan = hub[choice];
    const group = hub.name.replace('-', '_');
    if (hub.name === 'motor-hub') return { hub, plan, group, end: 0, way: 1 };
    return { hub, plan, group, end: floor + gap + plan.length, way: -1 };
  });
}

/** The shaft at its likely size, from its end in the hub to outside. */
function shaftOf({ hub, end, way, group }: Standing): Companion {
  const diameter = hub.shaft.diameter.likely;
  const tip = end + way * hub.depth;
  const out = end - way * SHAFT_BEYOND * diameter;
  const radius = diameter / 2;
  const shape = cylinder({
    radius,
    sides: sidesFor(radius, 0.01),
    circumscribed: false,
    from: Math.min(tip, out),
    to: Math.max(tip, out),
  });
  return { name: `${group.startsWith('motor') ? 'motor' : 'driven'} shaft`, mesh: latheMesh(shape) };
}

/** Both hubs and the insert from the side, opened through the axis, +Z to the left. */
function sideView(hubs: readonly Standing[], insert: { from: number; height: number; reach: number }): DrawnView {
  const regions = hubs.flatMap(hubRegions);
  const [low, high] = [insert.from, insert.from + insert.height];
  const { reach } = insert;
  const ends = hubs.map(({ end }) => end);
  const axis: Stroke = {
    kind: 'path',
    line: 'centre',
    points: [
      [4 - Math.min(low, ...ends), 0],
      [-4 - Math.max(high, ...ends), 0],
    ],
  };
  return {
    title: 'Section along the axis, put together',
    strokes: [
      ...regions.map((points) => loop('outline', points)),
      box('hidden', [-high, -reach], [-low, reach]),
      ...hubs.map(jawBox),
      axis,
    ],
    hatched: regions.map((region) => [region]),
    sizes: hubs.flatMap(hubSizes),
    letters: [],
  };
}

/** Cut material of a hub above and below the axis; a bore that ends in the hub leaves its floor closed. */
function hubRegions({ plan, end, way }: Standing): Point[][] {
  const { outside, length, bore, chamfer } = plan;
  const [r, mouth] = [outside / 2, bore.diameter / 2];
  return ([1, -1] as const).map((side) =>
    [
      [chamfer, r],
      [length, r],
      [length, mouth],
      [chamfer, mouth],
      [0, mouth + chamfer],
      [0, r - chamfer],
    ].map(([z, radius]): Point => [-(end + way * z!), side * radius!]),
  );
}

/** The room that the jaws of a hub stand in. */
function jawBox({ plan, end, way }: Standing): Stroke {
  const { length, jaws } = plan;
  return box('thin', [-(end + way * length), -jaws.outer], [-(end + way * (length + jaws.height)), jaws.outer]);
}

function hubSizes({ plan, end, way, group }: Standing): SizeMark[] {
  const { outside, length, bore, jaws } = plan;
  const side = way === 1 ? 'right' : 'left';
  const across = (name: string, value: number): SizeMark => ({
    name: `${group}.${name}`,
    value,
    sign: '⌀',
    from: [-end, -value / 2],
    to: [-end, value / 2],
    side,
  });
  const along = (name: string, from: number, to: number, where: 'below' | 'above'): SizeMark => {
    const y = where === 'below' ? -outside / 2 : outside / 2;
    return {
      name: `${group}.${name}`,
      value: Math.abs(to - from),
      from: [-(end + way * from), y],
      to: [-(end + way * to), y],
      side: where,
    };
  };
  return [
    across('bore_diameter', bore.diameter),
    across('outside_diameter', outside),
    along('length', 0, length, 'below'),
    along('jaw_height', length, length + jaws.height, 'above'),
  ];
}

/** The motor hub with the insert in it, seen along the axis. */
function endView(design: CouplingDesign, choice: SizeChoice, hubs: readonly Standing[]): DrawnView {
  const { insert, printer } = design;
  const widest = Math.max(insert[choice].reach, ...hubs.map(({ plan }) => plan.outside / 2));
  const bore = hubs[0]?.plan.bore;
  const inner = hubs[0]?.plan.jaws.inner;
  return {
    title: 'Insert in the hub',
    strokes: [
      ring('outline', [0, 0], widest),
      loop('outline', spiderOutline(insert[choice], printer.chordError)),
      ...(inner ? [ring('hidden', [0, 0], inner)] : []),
      ...(insert[choice].hole > 0 ? [ring('outline', [0, 0], insert[choice].hole / 2)] : []),
      ...(bore ? [boreStroke(bore.diameter, bore.across)] : []),
      ...crossing([0, 0], widest + 2),
    ],
    hatched: [],
    sizes: [
      {
        name: 'insert.outside_diameter',
        value: 2 * insert[choice].reach,
        sign: '⌀',
        from: [-insert[choice].reach, 0],
        to: [insert[choice].reach, 0],
        side: 'below',
      },
    ],
    letters: [],
  };
}

/** A round bore, or one with a flat, as it stands below. */
function boreStroke(diameter: number, across: number | undefined): Stroke {
  if (across === undefined) return ring('hidden', [0, 0], diameter / 2);
  const flat = across - diameter / 2;
  const round = circleOutline({ radius: diameter / 2, sides: 96 });
  return loop(
    'hidden',
    round.map(([x, y]): Point => [Math.min(x, flat), y]),
  );
}
