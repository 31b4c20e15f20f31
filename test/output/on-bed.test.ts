import { describe, expect, it } from 'vitest';
import { onBed, printedWayUp } from '../../src/output/on-bed.js';
import { place } from '../../src/solid/mesh.js';

/** An arrow by hand: its point on +Z, a notch towards +X, so that no way of turning it looks like another. */
const ARROW = [0, 0, 9, 4, 0, 1, -1, 2, 1, -1, -3, 1, 5, 1, 4];
const BOUNDS = [
  [-1, -3, 1],
  [5, 2, 9],
] as const;
const row = (turn_over: boolean) => ({ bounds: BOUNDS, turn_over });
const arrow = { positions: Float64Array.from(ARROW), triangles: new Uint32Array() };

function corners(positions: Float64Array): number[][] {
  return Array.from({ length: positions.length / 3 }, (_, i) => [...positions.slice(3 * i, 3 * i + 3)]);
}

function boundsOf(positions: Float64Array): number[][] {
  return [Math.min, Math.max].map((pick) => [0, 1, 2].map((axis) => pick(...corners(positions).map((p) => p[axis]!))));
}

describe('onBed', () => {
  it('stands each body on the bed, the point down where it is turned over', () => {
    const [up, down] = onBed([row(false), row(true)]).map((placement) => place(arrow, placement).positions);
    expect(corners(up!)[0]![2]).toBe(8);
    expect(corners(down!)[0]![2]).toBe(0);
    expect(boundsOf(up!)[0]![2]).toBe(0);
    expect(boundsOf(down!)[0]![2]).toBe(0);
  });

  it('lets no body stand in another, however they are turned', () => {
    const ways = [false, true, true, false, true];
    const boxes = onBed(ways.map(row)).map((placement) => boundsOf(place(arrow, placement).positions));
    for (let i = 1; i < boxes.length; i++) expect(boxes[i]![0]![0]! - boxes[i - 1]![1]![0]!).toBeGreaterThan(1);
  });
});

describe('printedWayUp', () => {
  it.each([false, true])('has the bounds of the turned corners: %s', (turned) => {
    const lying = place(arrow, turned ? { tilt: 180 } : {}).positions;
    expect(printedWayUp(row(turned))).toEqual(boundsOf(lying));
  });
});
