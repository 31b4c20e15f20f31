import { clipped, outlineBounds } from '../../../solid/convex.js';
import { circleOutline, type Outline, polygonArea, sidesFor } from '../../../solid/outline.js';
import type { Shape } from '../../../solid/recipe.js';
import { prismVolume } from '../../../solid/volume.js';
import { type BoreShape, boreShareIn, boreVolumeIn } from '../../common/bore-section.js';
import { type NutPocket, nutPocketOutline } from '../../common/bought-nut.js';
import { box, clampShapes, clampVolume } from '../../common/carved.js';
import { type Clamp, printedClamp } from '../../common/clamp.js';
import { type Cut, OVERSHOOT } from '../../common/cut.js';
import { type PrintSizes, printSizes, uncompensated } from '../../common/print-sizes.js';
import { commonArea, sectionVolume } from '../../common/section-volume.js';
import { alongY, roofedOutline } from '../../common/side-hole.js';
import { threadBore } from '../../common/thread-bore.js';
import { threadColumns } from '../../common/thread-shape.js';
import { lessChords } from '../../common/wall-in-file.js';
import { thinnest } from '../../common/walls.js';
import type { Expected, PlannedBody } from '../../part-kind.js';
import type { SizeChoice } from '../../part-views.js';
import type { NutDesign, NutSizes } from '../dimensions.js';
import { leastWallInFile } from '../least-wall.js';
import { markShapes } from '../mark.js';
import { bodyOutline } from '../plan.js';
import { endsOf, holeCuts, hullOf, nutBody } from '../solid.js';
import { followerWalls } from './least-wall.js';
import { pinHoles } from './pin-holes.js';
import type { Variant } from './types.js';

const FAR = 300;
/** What cutters stand out by at least, so that no two of them end on one plane, mm. */
const LEAST_OVERSHOOT = 0.01;

/** The bodies of a nut, whatever its family. */
export function nutBodies(design: NutDesign, sizes: SizeChoice = 'printed'): readonly PlannedBody[] {
  return sizes === 'printed'
    ? bodiesInFile(design)
    : bodiesInFile({ ...design, printed: design.finished, printer: uncompensated(design.printer) });
}

function bodiesInFile(design: NutDesign): readonly PlannedBody[] {
  const { family } = design;
  if (family?.kind === 'twin' || (family === undefined && design.catchPocket === undefined)) return [nutBody(design)];
  const drawing = drawingOf(design);
  if (family === undefined) return [whole(design, drawing, catchCut(design, drawing))];
  switch (family.kind) {
    case 'split':
      return halves(design, family, drawing);
    case 'clamped':
      return [clamped(design, family, drawing)];
    case 'holder':
      return [holder(design, family, drawing)];
    case 'anti-backlash':
      return antiBacklash(design, family, drawing);
  }
}

/** The nut in the file, piece by piece. */
interface Drawing {
  readonly sizes: NutSizes;
  readonly print: PrintSizes;
  readonly chordError: number;
  readonly hull: { readonly shapes: readonly Shape[]; readonly volume: number; readonly bounds: Expected['bounds'] };
  readonly body: Outline;
  readonly bottom: number;
  readonly top: number;
  readonly bore: BoreShape;
}

function drawingOf(design: NutDesign): Drawing {
  const { printed, printer, screw, material } = design;
  const ends = endsOf(printed);
  return {
    sizes: printed,
    print: printSizes(material, printer),
    chordError: printer.chordError,
    hull: hullOf(printed, printer.chordError),
    body: bodyOutline(printed.body, printer.chordError),
    ...ends,
    bore: {
      thread: printed.thread,
      starts: screw.starts,
      hand: screw.hand,
      columns: threadColumns(printed.thread, printed.lead, printer.chordError),
      leadIn: printed.leadIn,
      ...ends,
    },
  };
}

/** The hull less some cuts, as one body. */
function cutBody(design: NutDesign, { hull }: Drawing, cuts: readonly Cut[]): PlannedBody {
  const mark = markShapes(design);
  const solid: Shape = { kind: 'union', of: [...hull.shapes, ...mark.raised] };
  const total = (list: readonly Cut[]) => list.reduce((sum, { volume }) => sum + volume, 0);
  return {
    recipe: {
      name: design.name,
      material: design.material.name,
      shape: { kind: 'difference', of: [solid, ...cuts.map(({ shape }) => shape), ...mark.cut] },
    },
    expected: () => ({ volume: hull.volume - total(cuts) - mark.taken, mark: mark.leeway, bounds: hull.bounds }),
    printer: design.printer,
    leastWall: leastWallInFile(design),
  };
}

function whole(design: NutDesign, drawing: Drawing, middle: readonly Cut[]): PlannedBody {
  return cutBody(design, drawing, [...middle, ...holeCuts(design)]);
}

/** Half a nut on either side of the plane y = 0. */
function halves(design: NutDesign, family: Variant & { kind: 'split' }, drawing: Drawing): PlannedBody[] {
  const { hull, print, bore, body } = drawing;
  const thread = threadBore(bore);
  const holes = holeCuts(design);
  const clamp = family.clamp && printedClamp(family.clamp, print);
  const closing = clamp ? clampShapes(clamp, clamp.heights[0]!, FAR) : [];
  const opposite = closing.map((shape): Shape => ({ kind: 'moved', turn: 180, shape }));
  const pins = pinCuts(family, print);
  const plain: Shape = {
    kind: 'difference',
    of: [
      { kind: 'union', of: hull.shapes },
      ...[thread, ...holes, ...pins].map(({ shape }) => shape),
      ...closing,
      ...opposite,
    ],
  };
  const lying = () =>
    (clamp ? clampVolume({ outline: body, clamps: [clamp] }) : 0) + pins.reduce((sum, pin) => sum + pin.volume, 0) / 2;
  const [lowest, highest] = hull.bounds;
  return (['a', 'b'] as const).map((name): PlannedBody => {
    const upper = name === 'a';
    const half = upper ? box([-FAR, FAR], [0, FAR]) : box([-FAR, FAR], [-FAR, 0]);
    const own = holes.filter((_, i) => design.printed.holes!.centres[i]![1] > 0 === upper);
    const cut = () =>
      thread.volume * boreShareIn(bore, half) + own.reduce((sum, { volume }) => sum + volume, 0) + lying();
    return {
      recipe: {
        name,
        material: design.material.name,
        shape: { kind: 'intersection', of: [plain, { kind: 'prism', outlines: [half], from: -FAR, to: FAR }] },
      },
      expected: () => ({
        volume: hull.volume / 2 - cut(),
        mark: 0,
        bounds: upper ? [[lowest[0], 0, lowest[2]], highest] : [lowest, [highest[0], 0, highest[2]]],
      }),
      printer: design.printer,
      leastWall: leastWallInFile(design),
    };
  });
}

/** What is bored for the pins. */
function pinCuts({ pins }: Variant & { kind: 'split' }, print: PrintSizes): Cut[] {
  const { radius, offset, height, reach } = pinHoles(pins, print);
  const outline = roofedOutline(radius);
  return [1, -1].map(
    (side): Cut => ({
      shape: {
        kind: 'feature',
        name: 'pin',
        shape: alongY(outline, [side * offset, height], -reach, reach),
      },
      volume: polygonArea(outline) * 2 * reach,
    }),
  );
}

/** A body with a slit on +X that one screw closes. */
function clamped(design: NutDesign, family: Variant & { kind: 'clamped' }, drawing: Drawing): PlannedBody {
  const { body, print, top, bottom, bore } = drawing;
  const clamp: Clamp = printedClamp(family.clamp, print);
  const width = print.inside(family.slit.width);
  const from = design.finished.flange ? print.along(family.slit.from) : bottom;
  const strip = box([0, FAR], [-width / 2, width / 2]);
  const slit: Cut = {
    shape: {
      kind: 'prism',
      outlines: [strip],
      from: from <= bottom ? bottom - OVERSHOOT : from,
      to: top + OVERSHOOT,
    },
    get volume() {
      return bodyVolumeIn(drawing, strip, from) - boreVolumeIn(bore, strip, from, top);
    },
  };
  const closing: Cut = {
    shape: { kind: 'union', of: clampShapes(clamp, clamp.heights[0]!, FAR) },
    get volume() {
      return clampVolume({ outline: body, clamps: [clamp], slit: { width, from, to: top } });
    },
  };
  const made = whole(design, drawing, [threadBore(bore), slit, closing]);
  if (design.finished.flange) return made;
  // the slit takes the corner on +X away
  const { max } = outlineBounds(clipped(body, [0, -1, -width / 2]));
  const [lowest, highest] = drawing.hull.bounds;
  return {
    ...made,
    expected: () => ({ ...made.expected(), bounds: [lowest, [max[0], highest[1], highest[2]]] }),
  };
}

/** Volume of the body in a strip, from a height up to its end, chamfers included. */
function bodyVolumeIn({ body, sizes, top, bottom }: Drawing, strip: Outline, from: number): number {
  const { relief } = sizes;
  const across = sizes.body.across / 2;
  const areaAt = (z: number) => {
    const inset = Math.max(0, z - (top - relief), sizes.flange ? 0 : bottom + relief - z);
    const share = (across - inset) / across;
    return commonArea(
      body.map(([x, y]) => [x * share, y * share] as const),
      strip,
    );
  };
  const breaks = [from, top - relief, top, ...(sizes.flange ? [] : [bottom + relief])].filter((z) => z >= from);
  return sectionVolume(areaAt, breaks);
}

/** A body around a bought nut: a plain bore, and the pocket. */
function holder(design: NutDesign, family: Variant & { kind: 'holder' }, drawing: Drawing): PlannedBody {
  const { print, chordError, bottom, top } = drawing;
  const radius = print.inside(family.bore) / 2;
  const outline = circleOutline({ radius, sides: sidesFor(radius, chordError), circumscribed: true });
  const bore: Cut = {
    shape: { kind: 'prism', outlines: [outline], from: bottom - OVERSHOOT, to: top + OVERSHOOT },
    volume: prismVolume({ outlines: [outline], from: bottom, to: top }),
  };
  const pocket = pocketCut(family.pocket, family.opens, drawing);
  const both = polygonArea(outline) * print.along(family.pocket.depth);
  const body = whole(design, drawing, [bore, { ...pocket, volume: pocket.volume - both }]);
  return { ...body, turnOver: family.opens === 'face' };
}

function pocketCut(pocket: NutPocket, opens: 'face' | 'end', { print, bottom, top }: Drawing): Cut {
  const outline = nutPocketOutline(pocket, print.inside(pocket.acrossFlats));
  const depth = print.along(pocket.depth);
  const span =
    opens === 'end' ? { from: top - depth, to: top + OVERSHOOT } : { from: bottom - OVERSHOOT, to: bottom + depth };
  return {
    shape: { kind: 'feature', name: 'pocket', shape: { kind: 'prism', outlines: [outline], ...span } },
    volume: polygonArea(outline) * depth,
  };
}

/** So far the cone of a lead-in ends inside the pocket above it, corners of its polygon counted [mm]. */
const CLEAR = 0.15;

/** The working thread below, and the pocket of a nut that stands by above it. */
function catchCut({ catchPocket }: NutDesign, drawing: Drawing): Cut[] {
  const { bore, print, top } = drawing;
  const floor = top - print.along(catchPocket!.depth);
  // cutters that stood out farther would go into the walls of the pocket
  const room = print.inside(catchPocket!.acrossFlats) / 2 - bore.thread.major / 2 - bore.leadIn - CLEAR;
  const over = Math.min(OVERSHOOT, Math.max(LEAST_OVERSHOOT, room));
  return [threadBore({ ...bore, top: floor, over }), pocketCut(catchPocket!, 'end', drawing)];
}

/** The main nut with its two tongues, and the follower in its place above it, its thread going on where the other ends. */
function antiBacklash(design: NutDesign, family: Variant & { kind: 'anti-backlash' }, drawing: Drawing): PlannedBody[] {
  const { print, bore, top, hull } = drawing;
  const { tongue, spring, follower } = family;
  const height = print.along(tongue.height);
  const bar = box(
    [print.across(tongue.inner), print.across(tongue.outer)],
    [-print.outside(tongue.width) / 2, print.outside(tongue.width) / 2],
  );
  const bars = [bar, bar.map(([x, y]) => [-x, -y] as const)].map(
    (outline): Cut => ({
      shape: { kind: 'prism', outlines: [outline], from: top - OVERSHOOT, to: top + height },
      volume: polygonArea(outline) * height,
    }),
  );
  const plainMain = whole(design, drawing, [threadBore(bore)]);
  const main = {
    printer: design.printer,
    leastWall: leastWallInFile(design),
    recipe: {
      ...plainMain.recipe,
      shape: { kind: 'union', of: [plainMain.recipe.shape, ...bars.map(({ shape }) => shape)] } satisfies Shape,
    },
  };
  const raised = bars.reduce((sum, one) => sum + one.volume, 0);
  const bottom = top + print.along(spring.working);
  const end = bottom + print.along(follower);
  const second: BoreShape = { ...bore, bottom, top: end };
  const slots = slotCuts(family, { ...drawing, bore: second, bottom });
  const thread = threadBore(second);
  const plain = hullOf({ ...plainSizes(drawing.sizes), length: end - bottom }, drawing.chordError);
  return [
    {
      ...main,
      recipe: { ...main.recipe, name: 'main' },
      expected: () => {
        const plainly = plainMain.expected();
        const [lowest, [right, back]] = hull.bounds;
        return { ...plainly, volume: plainly.volume + raised, bounds: [lowest, [right, back, top + height]] };
      },
    },
    {
      recipe: {
        name: 'follower',
        material: design.material.name,
        shape: {
          kind: 'difference',
          of: [
            { kind: 'moved', by: [0, 0, bottom], shape: { kind: 'union', of: plain.shapes } },
            thread.shape,
            ...slots.map(({ shape }) => shape),
          ],
        },
      },
      expected: () => ({
        volume: plain.volume - thread.volume - slots.reduce((sum, { volume }) => sum + volume, 0),
        mark: 0,
        bounds: [
          [plain.bounds[0][0], plain.bounds[0][1], bottom],
          [plain.bounds[1][0], plain.bounds[1][1], end],
        ],
      }),
      turnOver: true,
      printer: design.printer,
      leastWall: lessChords(thinnest(followerWalls(family, drawing.sizes, print)), drawing.chordError),
    },
  ];
}

/** A nut's sizes without flange and holes. */
function plainSizes({ thread, lead, body, length, leadIn, relief }: NutSizes): NutSizes {
  return { thread, lead, body, length, leadIn, relief, fillet: 0 };
}

/** Slots at ±X, open to the bore, in which the tongues slide. */
function slotCuts({ tongue }: Variant & { kind: 'anti-backlash' }, { print, bore, bottom }: Drawing): Cut[] {
  const half = print.inside(tongue.width + tongue.air) / 2;
  const depth = print.along(tongue.slotDepth);
  const reach = print.across(tongue.outer + tongue.air);
  const outlines = [box([0, reach], [-half, half]), box([-reach, 0], [-half, half])];
  return outlines.map(
    (outline): Cut => ({
      shape: { kind: 'prism', outlines: [outline], from: bottom - OVERSHOOT, to: bottom + depth },
      get volume() {
        return polygonArea(outline) * depth - boreVolumeIn(bore, outline, bottom, bottom + depth);
      },
    }),
  );
}
