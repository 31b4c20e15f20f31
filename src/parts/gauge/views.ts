import type { Shape } from '../../solid/recipe.js';
import { onceFor } from '../../units/once.js';
import { screwBar } from '../common/drawn/screw-bar.js';
import { sectionPlanes } from '../common/drawn/section-planes.js';
import { noted, type SizeWay, spreadOf } from '../common/drawn/spread.js';
import { beyond, crossing, line } from '../common/drawn/strokes.js';
import { detailMark, threadDetail } from '../common/drawn/thread-detail.js';
import { threadRoot, threadRoots } from '../common/drawn/thread-roots.js';
import type { AskedView, HoleRow, PartViews, SizeChoice } from '../part-views.js';
import type { GaugeDesign, GaugePlan, GaugeRing } from './dimensions.js';
import { ringShape } from './solid.js';

/** How far the screw stands out of the ring it is shown in, in its diameters. */
const BEYOND = 1;

/** Room between the rings where they are shown in a row, mm. */
const BETWEEN = 4;

/** A gauge at the sizes of one choice. */
interface GaugeInSight {
  readonly plan: GaugePlan;
  /** the same solid each time it is asked for */
  readonly shapeOf: (ring: GaugeRing) => Shape;
  readonly spread: (size: number, way: SizeWay) => { spread?: number };
}

/** What a drawing and the page show of a gauge: a ring of the ladder, the two rings of turns, and the thread. */
export function gaugeViews(design: GaugeDesign, choice: SizeChoice): PartViews {
  const gauge: GaugeInSight = {
    plan: design[choice],
    shapeOf: onceFor((ring: GaugeRing) => ringShape(design, ring, choice)),
    spread: spreadOf(design, choice),
  };
  const { rings, outside, leadIn } = gauge.plan;
  const [first] = rings;
  const [two, ten] = rings.slice(-2);
  const radius = outside / 2;
  return {
    side: section(gauge, first!, { title: 'Section A–A', name: 'length', isMarked: true }),
    end: {
      title: 'Seen from the figure',
      solid: { bodies: [gauge.shapeOf(first!)], sight: { kind: 'end', from: 1 } },
      strokes: [threadRoot({ thread: first!.thread }), ...crossing([0, 0], radius + beyond(radius))],
      sizes: [
        {
          name: 'outside_diameter',
          value: outside,
          sign: '⌀',
          ...gauge.spread(outside, 'outside'),
          from: [0, -radius],
          to: [0, radius],
          side: 'left',
        },
      ],
      planes: sectionPlanes([0, 180], () => radius),
      letters: [],
    },
    further: [
      section(gauge, two!, { title: `${two!.figure}, cut`, name: 'two_turns_length' }),
      section(gauge, ten!, { title: `${ten!.figure}, cut`, name: 'ten_turns_length' }),
      threadDetail({ sizes: { thread: first!.thread }, spread: gauge.spread }),
    ],
    holes: rings.map(rowOf),
    notes: [
      `Figures are the play along the axis in hundredths, engraved ${noted(design.finished.depth)} deep; all rings of one outside`,
      `Mouths of the threads broken ${noted(leadIn)} past the thread, 45°`,
    ],
    material: design.material.name,
    companions: [
      screwBar(design.screw, {
        from: -BEYOND * design.screw.major.likely,
        to: first!.length + BEYOND * design.screw.major.likely,
        chordError: design.printer.chordError,
        pitch: design.printed.rings[0]!.thread.pitch,
      }),
    ],
    inUse: inARow(gauge.plan),
    cutTowards: 0,
  };
}

/** The rings beside one another, the first where its screw stands. */
function inARow({ rings, outside }: GaugePlan): NonNullable<PartViews['inUse']> {
  return Object.fromEntries(rings.map(({ name }, i) => [name, { by: [i * (outside + BETWEEN), 0, 0] as const }]));
}

function rowOf({ figure, play, turns, thread }: GaugeRing): HoleRow {
  return {
    label: figure,
    at: [0, 0],
    diameter: thread.minor,
    note: `${turns} turns, play ${noted(play, 3)}, groove ${noted(thread.grooveWidth, 3)}`,
  };
}

function section(
  { plan, shapeOf, spread }: GaugeInSight,
  ring: GaugeRing,
  { title, name, isMarked = false }: { readonly title: string; readonly name: string; readonly isMarked?: boolean },
): AskedView {
  const { thread, length } = ring;
  const radius = plan.outside / 2;
  const stretch = { bottom: 0, top: length };
  const detail = isMarked ? detailMark({ sizes: { thread } }, { threads: [stretch] }) : { strokes: [], letters: [] };
  return {
    title,
    solid: {
      bodies: [shapeOf(ring)],
      sight: { kind: 'section', planes: [0, 180] },
    },
    strokes: [
      ...threadRoots({ thread, leadIn: plan.leadIn }, stretch),
      line('centre', [beyond(radius), 0], [-length - beyond(radius), 0]),
      ...detail.strokes,
    ],
    sizes: [
      {
        name,
        value: length,
        ...spread(length, 'along'),
        from: [0, -radius],
        to: [-length, -radius],
        side: 'below',
      },
    ],
    letters: detail.letters,
  };
}
