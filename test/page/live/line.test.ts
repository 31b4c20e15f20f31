import { describe, expect, it } from 'vitest';
import { LIMIT_AT, onLine } from '../../../page/live/state/line.js';
import type { Finding } from '../../../src/judge/check.js';

const found = (row: Partial<Finding>) => onLine({ value: null, limit: null, fail_limit: null, ...row } as Finding);

describe('onLine', () => {
  it('has no place where nothing was measured or nothing is asked', () => {
    expect(found({ limit: { min: 1 } })).toBeUndefined();
    expect(found({ value: 3 })).toBeUndefined();
    expect(found({ value: 3, limit: {} })).toBeUndefined();
  });

  it('puts the limit in one place, whichever way it bounds', () => {
    expect(found({ value: 2, limit: { min: 2 } })!.mark).toBeCloseTo(LIMIT_AT, 12);
    expect(found({ value: 2, limit: { max: 2 } })!.mark).toBeCloseTo(LIMIT_AT, 12);
    expect(found({ value: 0, limit: { max: 0 } })!.mark).toBeCloseTo(LIMIT_AT, 12);
  });

  it('has room to the right and want to the left', () => {
    for (const limit of [{ min: 2 }, { max: 2 }]) {
      const [low, high] = [found({ value: 1, limit })!.mark, found({ value: 3, limit })!.mark];
      const [room, want] = limit.min === undefined ? [low, high] : [high, low];
      expect(room).toBeGreaterThan(LIMIT_AT);
      expect(want).toBeLessThan(LIMIT_AT);
    }
  });

  it('takes the nearer of two bounds', () => {
    const limit = { min: 0.1, max: 0.25 };
    expect(found({ value: 0.24, limit })!.mark).toBeCloseTo(found({ value: 0.24, limit: { max: 0.25 } })!.mark, 12);
    expect(found({ value: 0.11, limit })!.mark).toBeCloseTo(found({ value: 0.11, limit: { min: 0.1 } })!.mark, 12);
  });

  it('blurs from the worse to the better end, and stays on the line', () => {
    const place = found({ value: 3, least: -1e9, most: 1e9, limit: { max: 2 }, fail_limit: { max: 2.5 } })!;
    expect(place.blur[0]).toBeLessThan(place.mark);
    expect(place.blur[1]).toBeGreaterThan(place.mark);
    for (const share of [...place.blur, place.mark, place.wall!]) {
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThanOrEqual(1);
    }
    expect(place.wall).toBeLessThan(LIMIT_AT);
  });
});
