import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOut, PLATE_GAP, type PlateItem, parseBed } from '../../src/fleet/plates.js';

const sides = fc.tuple(fc.integer({ min: 5, max: 250 }), fc.integer({ min: 5, max: 250 }));
const item = fc.record({
  body: fc.constantFrom('a', 'b', 'c', 'd'),
  label: fc.string(),
  material: fc.constantFrom('pa12', 'petg'),
  size: sides,
  low: fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 }), fc.integer({ min: -5, max: 5 })),
  turnOver: fc.boolean(),
  count: fc.integer({ min: 0, max: 6 }),
});

describe('layOut', () => {
  it('places every piece once, inside its bed, clear of all others, by material', () => {
    fc.assert(
      fc.property(fc.array(item, { maxLength: 12 }), (given) => {
        const items = given.map(({ size, low, ...rest }, i): PlateItem => {
          const [x, y, z] = low;
          return {
            ...rest,
            body: `${rest.body}${i}`,
            bounds: [
              [x, y, z],
              [x + size[0], y + size[1], z + 10],
            ],
          };
        });
        const bed = { width: 220, depth: 180 };
        const { plates, tooLarge } = layOut(items, bed);
        const wanted = items.filter((one) => !tooLarge.includes(one));
        for (const one of wanted) {
          const placed = plates.flatMap(({ material, pieces }) =>
            pieces.filter(({ body }) => body === one.body).map(() => material),
          );
          expect(placed).toEqual(Array(one.count).fill(one.material));
        }
        for (const { pieces } of plates) {
          const boxes = pieces.map(({ body, turned, move }) => {
            const [low, high] = items.find((one) => one.body === body)!.bounds;
            const corners = [low, high].map(([x, y, z]) =>
              turned ? [-y! + move[0], x! + move[1], z! + move[2]] : [x! + move[0], y! + move[1], z! + move[2]],
            );
            return [0, 1, 2].map((axis) => corners.map((corner) => corner[axis]!).sort((a, b) => a - b));
          });
          for (const [i, [x, y, z]] of boxes.entries()) {
            expect(x![0]).toBeGreaterThanOrEqual(PLATE_GAP);
            expect(y![0]).toBeGreaterThanOrEqual(PLATE_GAP);
            expect(x![1]).toBeLessThanOrEqual(bed.width - PLATE_GAP);
            expect(y![1]).toBeLessThanOrEqual(bed.depth - PLATE_GAP);
            expect(z![0]).toBe(0);
            for (const [u, v] of boxes.slice(i + 1)) {
              const apart = Math.max(u![0]! - x![1]!, x![0]! - u![1]!, v![0]! - y![1]!, y![0]! - v![1]!);
              expect(apart).toBeGreaterThanOrEqual(PLATE_GAP);
            }
          }
        }
        expect(layOut(items, bed)).toEqual({ plates, tooLarge });
      }),
      { numRuns: 60 },
    );
  });

  it('says what is larger than the bed', () => {
    const large: PlateItem = {
      body: 'x',
      label: 'x',
      material: 'pla',
      turnOver: false,
      bounds: [
        [0, 0, 0],
        [215, 20, 5],
      ],
      count: 1,
    };
    expect(layOut([large], { width: 220, depth: 220 }).tooLarge).toEqual([large]);
    expect(layOut([large], { width: 100, depth: 225 }).plates).toHaveLength(1);
  });
});

describe('parseBed', () => {
  it.each([
    ['220x180', { width: 220, depth: 180 }],
    ['256 × 256 mm', { width: 256, depth: 256 }],
  ])('reads %s', (text, bed) => {
    expect(parseBed(text)).toEqual(bed);
  });

  it.each(['', '220', '220x', '0x220', '-1x5', '1e9x5', '10x10'])('refuses %j', (text) => {
    expect(() => parseBed(text)).toThrow('--plates');
  });
});
