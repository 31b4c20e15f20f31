import { outlineBounds } from '../../solid/convex.js';
import { type LoftLevel, loftVolume, movedSides } from '../../solid/convex-loft.js';
import { circleOutline, type Outline, polygonArea, sidesFor } from '../../solid/outline.js';
import type { Shape } from '../../solid/recipe.js';
import { latheVolume, prismVolume } from '../../solid/volume.js';
import { nutPocketOutline } from '../common/bought-nut.js';
import { type Cut, holeCut, OVERSHOOT } from '../common/cut.js';
import { turned } from '../common/hole-pattern.js';
import { boreOf } from '../common/joints.js';
import { type PrintSizes, printSizes, uncompensated } from '../common/print-sizes.js';
import { commonArea } from '../common/section-volume.js';
import { wallInFile } from '../common/wall-in-file.js';
import type { Expected, PlannedBody } from '../part-kind.js';
import type { SizeChoice } from '../part-views.js';
import { cornersLeft } from './cutouts.js';
import type { AdapterDesign } from './dimensions.js';
import { thinnestByArithmetic } from './least-wall.js';
import {
  cutoutOutline,
  isConvex,
  isSolidRim,
  type Key,
  keyOutline,
  type PatternHoles,
  type PlateSizes,
  type Point,
  plateOutline,
} from './plan.js';
import { bedFace, opensOnBed } from './print-advice.js';

/** Sizes of the file, and how finely arcs are drawn. */
interface Drawing {
  readonly print: PrintSizes;
  readonly chordError: number;
  /** height of a layer, where pockets are roofed as they are printed; they stand open otherwise  [mm] */
  readonly layer?: number;
}

/** The plate as a recipe, and what it must measure. */
export function adapterBody(design: AdapterDesign, sizes: SizeChoice = 'printed'): PlannedBody {
  const { name, material, layout } = design;
  const printer = sizes === 'printed' ? design.printer : uncompensated(design.printer);
  const drawing = { print: printSizes(material, printer), chordError: printer.chordError, layer: printer.layer };
  const { shape, volume, bounds } = plateSolid(layout.plate, drawing);
  const turnOver = bedFace(layout.plate) === 'outside';
  return {
    recipe: { name, material: material.name, shape },
    expected: () => ({ volume, mark: 0, bounds }),
    turnOver,
    printer,
    leastWall: wallInFile(thinnestByArithmetic(design), drawing.print, drawing.chordError),
  };
}

/** Shape, volume and bounds of a plate. */
export function plateSolid(
  plate: PlateSizes,
  drawing: Drawing,
): { readonly shape: Shape; readonly volume: number; readonly bounds: Expected['bounds'] } {
  const { print, chordError } = drawing;
  const outline = plateOutline(plate, print, chordError);
  const levels = levelsOf(plate, outline, print);
  const slab: Shape = isConvex(outline)
    ? { kind: 'loft', outline, levels, broken: relieved(levels) }
    : { kind: 'prism', outlines: [outline], from: 0, to: print.along(plate.thickness) };
  const volume = isConvex(outline) ? loftVolume(outline, levels) : polygonArea(outline) * print.along(plate.thickness);
  const added = [...rimOf(plate, drawing), ...plate.keys.map((key) => keyOf(key, plate, print))];
  const cuts = [
    ...middleCuts(plate, drawing),
    ...[plate.nutHoles, plate.carriageHoles].flatMap((holes) =>
      holes ? patternCuts(holes, bedFace(plate), drawing) : [],
    ),
    ...plate.cutouts.map((cutout) =>
      cutoutCut(cutoutOutline(cutout, print, chordError), { outline, levels, thickness: print.along(plate.thickness) }),
    ),
  ];
  const total = (list: readonly Cut[]) => list.reduce((sum, one) => sum + one.volume, 0);
  return {
    shape: {
      kind: 'difference',
      of: [{ kind: 'union', of: [slab, ...added.map(({ shape }) => shape)] }, ...cuts.map(({ shape }) => shape)],
    },
    volume: volume + total(added) - total(cuts),
    bounds: boundsOf(plate, outline, drawing),
  };
}

/** Levels of the slab: the edge on the bed is chamfered where the outline has no inward corner. */
function levelsOf(plate: PlateSizes, outline: Outline, print: PrintSizes): LoftLevel[] {
  const top = print.along(plate.thickness);
  const relief = isConvex(outline) ? plate.relief : 0;
  if (relief === 0)
    return [
      [0, 0],
      [top, 0],
    ];
  return bedFace(plate) === 'carriage'
    ? [
        [0, -relief],
        [relief, 0],
        [top, 0],
      ]
    : [
        [0, 0],
        [top - relief, 0],
        [top, -relief],
      ];
}

/** The step of the chamfer. */
function relieved(levels: readonly LoftLevel[]): number[] {
  return levels.slice(1).flatMap(([, offset], i) => (offset === levels[i]![1] ? [] : [i]));
}

function boundsOf(plate: PlateSizes, outline: Outline, { print, chordError }: Drawing): Expected['bounds'] {
  const cutouts = plate.cutouts.map((cutout) => cutoutOutline(cutout, print, chordError));
  const { min, max } = outlineBounds(cornersLeft(outline, cutouts));
  const keys = Math.max(0, ...plate.keys.map(({ height }) => print.along(height)));
  return [
    [min[0], min[1], -(plate.rim ? print.along(plate.rim.height) : 0)],
    [max[0], max[1], print.along(plate.thickness) + keys],
  ];
}

function circle(diameter: number, center: Point, chordError: number, circumscribed: boolean): Outline {
  const radius = diameter / 2;
  return circleOutline({ radius, sides: sidesFor(radius, chordError), circumscribed, center });
}

function placed([x, y]: Point, print: PrintSizes): Point {
  return [print.across(x), print.across(y)];
}

/** The ring below the carriage's face; a solid one is drawn full, as the bore goes through it. */
function rimOf({ rim, bore, thickness }: PlateSizes, { print, chordError }: Drawing): Cut[] {
  if (!rim) return [];
  const center = placed(rim.center, print);
  const outer = circle(print.outside(rim.outer), center, chordError, false);
  const height = print.along(rim.height);
  const solid = isSolidRim(rim, bore);
  const hole = solid ? [] : [circle(print.inside(rim.inner), center, chordError, true)];
  const outlines = [outer, ...hole] as const;
  const bottom = prismVolume({ outlines: [outer, ...hole], from: 0, to: height });
  return [
    {
      shape: { kind: 'prism', outlines: [outlines[0], ...hole], from: -height, to: print.along(thickness) / 2 },
      volume: bottom,
    },
  ];
}

function keyOf(key: Key, plate: PlateSizes, print: PrintSizes): Cut {
  const top = print.along(plate.thickness);
  const height = print.along(key.height);
  const outline = keyOutline(key, print);
  return {
    shape: { kind: 'prism', outlines: [outline], from: top / 2, to: top + height },
    volume: polygonArea(outline) * height,
  };
}

/** Bore, steps, and the pocket of a catch nut. */
function middleCuts(plate: PlateSizes, { print, chordError }: Drawing): Cut[] {
  const { outerStep, innerStep, catchPocket, rim } = plate;
  const top = print.along(plate.thickness);
  const solidRim = rim && isSolidRim(rim, plate.bore) ? rim : undefined;
  const bottom = solidRim ? -print.along(solidRim.height) : 0;
  const bore = circle(print.inside(plate.bore), [0, 0], chordError, true);
  const area = polygonArea(bore);
  const inRim = solidRim
    ? commonArea(circle(print.outside(solidRim.outer), placed(solidRim.center, print), chordError, false), bore)
    : 0;
  const steps = [
    ...(outerStep
      ? [
          {
            outline: circle(print.inside(outerStep.diameter), placed(outerStep.center, print), chordError, true),
            depth: outerStep.depth,
            high: true,
          },
        ]
      : []),
    ...(innerStep
      ? [
          {
            outline: circle(print.inside(innerStep.diameter), placed(innerStep.center, print), chordError, true),
            depth: innerStep.depth,
            high: false,
          },
        ]
      : []),
    ...(catchPocket ? [{ outline: catchOutline(catchPocket, print), depth: catchPocket.depth, high: true }] : []),
  ];
  const sunk = steps.map(({ outline, depth, high }): Cut => {
    const deep = print.along(depth);
    const span = high
      ? { from: top - deep, to: top + OVERSHOOT }
      : { from: -OVERSHOOT - (rim ? print.along(rim.height) : 0), to: deep };
    return {
      shape: { kind: 'prism', outlines: [outline], ...span },
      volume: (polygonArea(outline) - commonArea(bore, outline)) * deep,
    };
  });
  const through: Cut = {
    shape: { kind: 'prism', outlines: [bore], from: bottom - OVERSHOOT, to: top + OVERSHOOT },
    volume: area * top - inRim * bottom,
  };
  return [through, ...sunk, ...boreRelief(plate, { print, chordError })];
}

function catchOutline(pocket: NonNullable<PlateSizes['catchPocket']>, print: PrintSizes): Outline {
  return nutPocketOutline(pocket, print.inside(pocket.acrossFlats)).map((corner) => turned(corner, pocket.turn));
}

/** A chamfer on the bore where it opens on the bed. */
function boreRelief(plate: PlateSizes, { print, chordError }: Drawing): Cut[] {
  const { relief, outerStep, innerStep, catchPocket, rim } = plate;
  const outside = bedFace(plate) === 'outside';
  const stepped = outside
    ? outerStep !== undefined || catchPocket !== undefined
    : innerStep !== undefined || rim !== undefined;
  if (stepped || relief === 0) return [];
  const radius = print.inside(plate.bore) / 2;
  const sides = sidesFor(radius, chordError);
  const top = print.along(plate.thickness);
  const lathe = { kind: 'lathe', sides, circumscribed: true } as const;
  const narrow = radius - 0.2;
  const contour: [number, number][] = outside
    ? [
        [narrow, top - relief - 0.2],
        [radius + relief + OVERSHOOT, top + OVERSHOOT],
      ]
    : [
        [radius + relief + OVERSHOOT, -OVERSHOOT],
        [narrow, relief + 0.2],
      ];
  const cone = latheVolume({
    ...lathe,
    contour: [
      [radius + relief, 0],
      [radius, relief],
    ],
  });
  const drilled = latheVolume({
    ...lathe,
    contour: [
      [radius, 0],
      [radius, relief],
    ],
  });
  return [{ shape: { ...lathe, contour, broken: [0] }, volume: cone - drilled }];
}

function patternCuts(
  holes: PatternHoles,
  bed: ReturnType<typeof bedFace>,
  { print, chordError, layer }: Drawing,
): Cut[] {
  const { centres, hole, opens, from, to, pocket, blind } = holes;
  const roof = holes.roof && layer !== undefined && opensOnBed(holes, bed) ? { roof: { kind: holes.roof, layer } } : {};
  return centres.map((centre) =>
    holeCut(
      {
        center: placed(centre, print),
        from: print.along(from),
        to: print.along(to),
        bore: boreOf(hole),
        ...(blind === undefined ? {} : { blind: { side: opens, depth: print.along(blind) } }),
        ...(pocket ? { pocket: { pocket, side: opens, depth: print.along(pocket.depth), ...roof } } : {}),
      },
      print.inside,
      chordError,
    ),
  );
}

/** A cut-out takes its area less what lies outside the plate; where the edge is chamfered, level by level. */
function cutoutCut(
  cutout: Outline,
  { outline, levels, thickness }: { outline: Outline; levels: readonly LoftLevel[]; thickness: number },
): Cut {
  let volume = 0;
  for (let i = 1; i < levels.length; i++) {
    const [[below, low], [above, high]] = [levels[i - 1]!, levels[i]!];
    const areaAt = (offset: number) => commonArea(offset === 0 ? outline : movedSides(outline, offset), cutout);
    const mean = low === high ? areaAt(low) : (areaAt(low) + 4 * areaAt((low + high) / 2) + areaAt(high)) / 6;
    volume += mean * (above - below);
  }
  return { shape: { kind: 'prism', outlines: [cutout], from: -OVERSHOOT, to: thickness + OVERSHOOT }, volume };
}
