import { describe, expect, it } from 'vitest';
import type { CouponDesign } from '../../src/parts/coupon/dimensions.js';
import type { GaugeDesign } from '../../src/parts/gauge/dimensions.js';
import { design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { outlineBounds } from '../../src/solid/convex.js';
import type { Shape } from '../../src/solid/recipe.js';

const GAUGE = { part: 'gauge', name: 'rings', screw: 'Tr8x2', material: 'pa12' };
const COUPON = { part: 'coupon', name: 'plates', screw: 'Tr8x2', material: 'pa12' };

/** Corners of all strokes in a recipe. */
function strokesIn(shape: Shape): (readonly [number, number])[] {
  if (shape.kind === 'strokes') return shape.outlines.flatMap((outline) => [...outline]);
  if ('of' in shape) return shape.of.flatMap(strokesIn);
  return 'shape' in shape ? strokesIn(shape.shape) : [];
}

function bodiesOf(sheet: object) {
  const made = design(sheet);
  return kindOfDesign(KINDS, made).bodies(made);
}

const LINES = [0.4, 0.6, 0.8];

describe('engraved figures of gauge rings', () => {
  it.each(LINES)('stand between the mouth of the thread and the edge, lines of %s mm', (line_width) => {
    const printer = { compensation: 'none', line_width };
    const { rings, outside, leadIn } = (design({ ...GAUGE, printer }) as GaugeDesign).printed;
    for (const { recipe } of bodiesOf({ ...GAUGE, printer })) {
      const reaches = strokesIn(recipe.shape).map(([x, y]) => Math.hypot(x, y));
      const { thread } = rings.find(({ name }) => name === recipe.name)!;
      expect(reaches.length, recipe.name).toBeGreaterThan(0);
      expect(Math.min(...reaches), recipe.name).toBeGreaterThan(thread.major / 2 + leadIn);
      expect(Math.max(...reaches), recipe.name).toBeLessThan(outside / 2);
    }
  });

  it('are refused in a ring that is too narrow for them, with the figure that is enough', () => {
    const narrow = () => design({ ...GAUGE, outside_diameter: 14 });
    expect(narrow).toThrow(/outside_diameter: 14 mm; must be at least [\d.]+ mm for the engraved figures/);
    const least = Number(/at least ([\d.]+) mm/.exec(message(narrow))![1]);
    expect(() => design({ ...GAUGE, outside_diameter: least })).not.toThrow();
    expect(() => design({ ...GAUGE, outside_diameter: least - 0.1 })).toThrow(/engraved figures/);
  });
});

describe('raised marks of a coupon', () => {
  it.each(LINES)('stand on their plates, lines of %s mm', (line_width) => {
    const printer = { compensation: 'none', line_width };
    const bodies = bodiesOf({ ...COUPON, printer });
    expect(bodies.filter(({ recipe }) => strokesIn(recipe.shape).length > 0).length).toBeGreaterThan(2);
    for (const { recipe, expected } of bodies) {
      const [low, high] = expected().bounds;
      const { min, max } = outlineBounds([...strokesIn(recipe.shape), [low[0], low[1]]]);
      expect(min[0], recipe.name).toBeGreaterThanOrEqual(low[0]);
      expect(min[1], recipe.name).toBeGreaterThanOrEqual(low[1]);
      expect(max[0], recipe.name).toBeLessThanOrEqual(high[0]);
      expect(max[1], recipe.name).toBeLessThanOrEqual(high[1]);
    }
  });

  it('are refused on a scale that is too short for them, with the figure that is enough', () => {
    const short = () => design({ ...COUPON, scale: { span: 30 } });
    expect(short).toThrow(/scale\.span: 30 mm; must be at least \d+ mm, so that the marks find room/);
    const least = Number(/at least (\d+) mm/.exec(message(short))![1]);
    const made = design({ ...COUPON, scale: { span: least } }) as CouponDesign;
    expect(made.part).toBe('coupon');
    expect(() => design({ ...COUPON, scale: { span: least - 1 } })).toThrow(/marks find room/);
  });
});

function message(refused: () => unknown): string {
  try {
    refused();
  } catch (error) {
    return String(error);
  }
  return '';
}
