import type { Loop } from '../meant-outline.js';
import type { MeantExtrusion, MeantLeaf } from '../meant-shape.js';
import { isFilleted, reachesAt, upTo } from './contour.js';
import { loopCrossings } from './crossings.js';
import { loftMarks, loftReach } from './loft-reach.js';
import { circleMark, extent, loopMarks, type Mark } from './marks.js';
import { type Matrix, placedLoop, placedMark } from './placed.js';
import type { Probe } from './probe.js';
import { NONE, type Spans } from './spans.js';
import { threadSpans } from './thread-spans.js';

/**
 * A leaf whose own axis is the line's, upwards or downwards.
 *
 * @param planes heights at which its body has flat faces, where what lines meet may change  [mm]
 * @throws TypeError it leans
 */
export function standingLeaf(leaf: MeantLeaf, at: Matrix, planes: readonly number[]): Probe {
  if (Math.abs(Math.abs(at[10]!) - 1) > 1e-9) throw new TypeError(`a lying ${leaf.kind} cannot be measured by lines`);
  return leaf.kind === 'extrusion' ? standingPrism(leaf, at) : standingRound(leaf, at, planes);
}

/** Stretches of a leaf's own axis where it stands. */
function placedSpans(spans: Spans, at: Matrix): Spans {
  const z0 = at[11]!;
  if (at[10]! < 0) return spans.map((z) => z0 - z).reverse();
  return z0 === 0 ? spans : spans.map((z) => z + z0);
}

/** The same stretch wherever a line is inside. */
function standingPrism({ regions, from, to }: MeantExtrusion, at: Matrix): Probe {
  const both = placedSpans([from, to], at);
  const loops = regions.flatMap(({ outer, holes }): Loop[] => [outer, ...holes]).map((loop) => placedLoop(loop, at));
  return {
    marks: loops.flatMap(loopMarks),
    row: (y) => {
      const ends = loops.flatMap((loop) => loopCrossings(loop, { from: [0, y], along: [1, 0] })).sort((a, b) => a - b);
      if (ends.length === 0) return undefined;
      const isInside = (x: number) => {
        let after = ends.length;
        while (after > 0 && ends[after - 1]! > x) after -= 1;
        return (ends.length - after) % 2 === 1;
      };
      return { from: ends[0]!, to: ends.at(-1)!, at: (x) => (isInside(x) ? both : NONE) };
    },
  };
}

type RoundLeaf = Exclude<MeantLeaf, MeantExtrusion>;

function standingRound(leaf: RoundLeaf, at: Matrix, planes: readonly number[]): Probe {
  const [up, z0] = [Math.sign(at[10]!), at[11]!];
  const own = ownProbe(
    leaf,
    planes.map((z) => up * (z - z0)),
  );
  const [xx, xy, x0, yx, yy, y0] = [at[0]!, at[1]!, at[3]!, at[4]!, at[5]!, at[7]!];
  const marks = own.marks.map((mark) => placedMark(mark, at));
  const [across, along] = [extent(marks, 0), extent(marks, 1)];
  return {
    marks,
    row: (y) => {
      if (y < along.least || y > along.most) return undefined;
      const dy = y - y0;
      const spans = (x: number) => placedSpans(own.at(xx * (x - x0) + yx * dy, xy * (x - x0) + yy * dy), at);
      return { from: across.least, to: across.most, at: spans };
    },
  };
}

/** A leaf about its own axis, place by place. */
interface OwnProbe {
  readonly at: (x: number, y: number) => Spans;
  readonly marks: readonly Mark[];
}

function ownProbe(leaf: RoundLeaf, heights: readonly number[]): OwnProbe {
  switch (leaf.kind) {
    case 'revolution': {
      const { contour } = leaf;
      const isRoot = isFilleted(contour);
      return {
        marks: reachesAt(contour, heights).map((radius) => ({ ...circleMark(radius), isRoot })),
        at: (x, y) => upTo(contour, Math.hypot(x, y)),
      };
    }
    case 'loft': {
      const reach = loftReach(leaf);
      const isRoot = isFilleted(leaf.contour);
      const marks = loftMarks(leaf, reachesAt(leaf.contour, heights)).map((mark) => ({ ...mark, isRoot }));
      return { marks, at: (x, y) => upTo(leaf.contour, reach(x, y)) };
    }
    case 'thread':
      return {
        marks: leaf.thread.ridge.map(([, radius]) => circleMark(radius)),
        at: (x, y) => threadSpans(leaf.thread, x, y),
      };
  }
}
