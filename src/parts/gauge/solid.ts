import { outlineBounds } from '../../solid/convex.js';
import type { LoftLevel } from '../../solid/convex-loft.js';
import { loftVolume } from '../../solid/convex-loft.js';
import { circleOutline, polygonArea, sidesFor } from '../../solid/outline.js';
import type { Shape } from '../../solid/recipe.js';
import { roundLoft } from '../common/carved.js';
import { OVERSHOOT } from '../common/cut.js';
import { threadBore } from '../common/thread-bore.js';
import { threadColumns } from '../common/thread-shape.js';
import { lessChords } from '../common/wall-in-file.js';
import { thinnest } from '../common/walls.js';
import type { PlannedBody } from '../part-kind.js';
import type { SizeChoice } from '../part-views.js';
import type { GaugeDesign, GaugeRing } from './dimensions.js';
import { figureOutlines } from './figure.js';

/** Every ring, each on the axis. */
export function gaugeBodies(design: GaugeDesign, sizes: SizeChoice = 'printed'): PlannedBody[] {
  return design[sizes].rings.map((ring) => ringBody(design, ring, sizes));
}

/** One ring with its axis on the origin's. */
export function ringShape(design: GaugeDesign, ring: GaugeRing, sizes: SizeChoice): Shape {
  return ringOnAxis(design, ring, sizes).shape;
}

function ringBody(design: GaugeDesign, ring: GaugeRing, sizes: SizeChoice): PlannedBody {
  const { material, printer } = design;
  const { outside } = design[sizes];
  const one = ringOnAxis(design, ring, sizes);
  const { min, max } = outlineBounds(one.outline);
  return {
    recipe: { name: ring.name, material: material.name, shape: one.shape },
    expected: () => ({
      volume: one.volume(),
      mark: one.engraved,
      bounds: [
        [min[0], min[1], 0],
        [max[0], max[1], ring.length],
      ],
    }),
    printer,
    leastWall: lessChords(
      thinnest([
        { where: 'thread to outside', size: (outside - ring.thread.major) / 2 },
        { where: 'length', size: ring.length },
      ]),
      printer.chordError,
    ),
  };
}

function ringOnAxis({ screw, printer, ...design }: GaugeDesign, ring: GaugeRing, sizes: SizeChoice) {
  const { outside, chamfer, leadIn, depth, lead } = design[sizes];
  const { thread, length, figure } = ring;
  const outline = circleOutline({ radius: outside / 2, sides: sidesFor(outside / 2, printer.chordError) });
  const levels: LoftLevel[] = [
    [0, -chamfer],
    [chamfer, 0],
    [length - chamfer, 0],
    [length, -chamfer],
  ];
  const columns = threadColumns(thread, lead, printer.chordError);
  const bore = threadBore({ thread, starts: screw.starts, hand: screw.hand, columns, leadIn, bottom: 0, top: length });
  // all figures stand at one radius, whatever the play of their ring
  const mouth = Math.max(...design[sizes].rings.map((one) => one.thread.major)) / 2 + leadIn;
  const strokes = figureOutlines(figure, mouth, printer.lineWidth);
  const engraved = strokes.reduce((sum, stroke) => sum + polygonArea(stroke), 0) * depth;
  const mark: Shape = {
    kind: 'feature',
    name: 'mark',
    shape: { kind: 'strokes', outlines: strokes, from: length - depth, to: length + OVERSHOOT },
  };
  return {
    outline,
    shape: { kind: 'difference', of: [roundLoft(outline, levels, [0, 2]), bore.shape, mark] } satisfies Shape,
    // strokes that cross take less
    volume: () => loftVolume(outline, levels) - bore.volume - engraved,
    engraved,
  };
}
