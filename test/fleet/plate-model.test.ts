import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { plateModel } from '../../src/fleet/plate-model.js';
import { layOut, PLATE_GAP, type PlateItem } from '../../src/fleet/plates.js';
import { printedWayUp } from '../../src/output/on-bed.js';

/** A closed tetrahedron by hand that stands beside the origin; its highest corner is the last. */
const POSITIONS = [12, 0, 2, 30, 0, 2, 12, 10, 2, 14, 3, 7];
const mesh = {
  positions: Float64Array.from(POSITIONS),
  triangles: Uint32Array.from([0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3]),
};
const bounds = [
  [12, 0, 2],
  [30, 10, 7],
] as const;

/** By the core specification a corner is a row, multiplied from the left: (x y z 1) · T. */
function moved(transform: readonly number[], corner: readonly number[]): number[] {
  return [0, 1, 2].map(
    (axis) => transform[9 + axis]! + corner.reduce((sum, c, i) => sum + c * transform[3 * i + axis]!, 0),
  );
}

function itemsIn(file: Uint8Array): { label: string; transform: number[] }[] {
  const model = strFromU8(unzipSync(file)['3D/3dmodel.model']!);
  return [...model.matchAll(/<item objectid="2" transform="([^"]*)" partnumber="([^"]*)"/g)].map(([, text, label]) => ({
    label: label!,
    transform: text!.split(' ').map(Number),
  }));
}

describe('plateModel', () => {
  const item = (turnOver: boolean): PlateItem => ({
    body: 'parts/a/a.stl',
    label: turnOver ? 'over' : 'as drawn',
    material: 'pla',
    turnOver,
    bounds: printedWayUp({ bounds, turn_over: turnOver }),
    count: 5,
  });
  // so narrow that some pieces are turned by a quarter
  const { plates } = layOut([item(false), item(true)], { width: 65, depth: 75 });
  const items = plates.flatMap((plate) => itemsIn(plateModel(plate, 'a', new Map([['parts/a/a.stl', mesh]]))));

  it('has every piece, some turned by a quarter', () => {
    expect(items).toHaveLength(10);
    expect(new Set(items.map(({ transform }) => Math.abs(transform[1]!)))).toEqual(new Set([0, 1]));
  });

  it('stands every piece on the bed and inside it, the highest corner down where it is turned over', () => {
    for (const { label, transform } of items) {
      const corners = [0, 3, 6, 9].map((at) => moved(transform, POSITIONS.slice(at, at + 3)));
      expect(Math.min(...corners.map((corner) => corner[2]!))).toBe(0);
      expect(corners[3]![2]).toBe(label === 'over' ? 0 : 5);
      for (const [axis, size] of [65, 75].entries()) {
        expect(Math.min(...corners.map((corner) => corner[axis]!))).toBeGreaterThanOrEqual(PLATE_GAP);
        expect(Math.max(...corners.map((corner) => corner[axis]!))).toBeLessThanOrEqual(size - PLATE_GAP);
      }
    }
  });

  it('turns and never mirrors', () => {
    for (const { transform: m } of items) {
      const [a, b, c, d, e, f, g, h, i] = m as [number, ...number[]] & number[];
      expect(a! * (e! * i! - f! * h!) - b! * (d! * i! - f! * g!) + c! * (d! * h! - e! * g!)).toBe(1);
    }
  });
});
