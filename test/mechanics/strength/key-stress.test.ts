import { describe, expect, it } from 'vitest';
import { keyStress } from '../../../src/mechanics/strength/key-stress.js';

describe('a key at its foot', () => {
  // 40·6 = 240 N·mm on 10·6²/6 = 60 mm³, twice for the sharp corner
  it('bends as a bar, twice at its corner', () => {
    expect(keyStress({ force: 40, arm: 6, length: 10, width: 6 })).toBeCloseTo(8, 9);
  });

  it('bends a quarter as much where it is twice as wide, half where it is twice as long', () => {
    expect(keyStress({ force: 40, arm: 6, length: 10, width: 12 })).toBeCloseTo(2, 9);
    expect(keyStress({ force: 40, arm: 6, length: 20, width: 6 })).toBeCloseTo(4, 9);
  });

  it('refuses what is no key', () => {
    const key = { force: 40, arm: 6, length: 10, width: 6 };
    for (const field of ['length', 'width'] as const)
      expect(() => keyStress({ ...key, [field]: 0 }), field).toThrow(field);
    for (const field of ['force', 'arm'] as const) {
      expect(keyStress({ ...key, [field]: 0 }), field).toBe(0);
      expect(() => keyStress({ ...key, [field]: -1 }), field).toThrow(field);
    }
  });
});
