import { describe, expect, it } from 'vitest';
import type { SleeveDesign } from '../../../src/parts/sleeve/dimensions.js';
import { heldIn } from '../../../src/parts/sleeve/held-in.js';
import { design } from '../../../src/pipeline/design.js';
import { changed } from '../../support/nut-sheets.js';
import { BUSH, CLAMP } from '../../support/sleeve-sheets.js';

const made = (sheet: object) => design(sheet) as SleeveDesign;

describe('what a sleeve holds', () => {
  it('is nothing where it is a bush', () => {
    expect(heldIn(made(BUSH))).toBeUndefined();
  });

  it('is two ends, whose screws stand as far from their own mouths, and each closes half of the web', () => {
    const sleeve = made(changed(CLAMP, { motor_end: { clamp: { count: 2 } }, screw_end: { clamp: { count: 2 } } }));
    const [motorEnd, screwEnd] = heldIn(sleeve)!.held;
    expect(motorEnd!.name).toBe('motor end');
    const { clamps, bores, length } = sleeve.finished;
    const [near, far] = motorEnd!.clamp!.heights;
    expect(near).toBeLessThan(far!);
    expect(screwEnd!.clamp!.heights).toEqual([near, far].map((height) => expect.closeTo(height!, 9)));
    expect(clamps.map(({ heights }) => heights)).toEqual([
      [near, far],
      [near, far].map((height) => expect.closeTo(length - height!, 9)),
    ]);
    const depths = bores.map((bore) => bore!.depth);
    const half = (length - depths[0]! - depths[1]!) / 2;
    expect(half).toBeGreaterThan(0);
    expect([motorEnd, screwEnd].map((end) => end!.slit)).toEqual(
      depths.map((depth) => ({ width: sleeve.finished.slit, length: expect.closeTo(depth + half, 9), web: false })),
    );
  });
});
