import { describe, expect, it } from 'vitest';
import { check, design } from '../../../src/index.js';
import { driveDuty } from '../../../src/parts/common/drive-view.js';
import { nutSheet } from '../../support/nut-sheets.js';

describe('a sheet’s duty as the drive takes it', () => {
  it('takes the share in motion as told, else from on-time and cycle', () => {
    expect(driveDuty({ moving: 0.2 }).moving).toBe(0.2);
    expect(driveDuty({ on_time: 9, cycle: 60 }).moving).toBeCloseTo(0.15, 12);
    expect(driveDuty({ on_time: 9 }).moving).toBeUndefined();
  });

  it('a nut’s feed is held back by what its plastic slides at, and its whirl by the thinnest root', () => {
    const drive = (changes: Record<string, unknown>) => check(design(nutSheet(changes))).drive!;
    const perTravel = Math.hypot(1, (Math.PI * 9) / 2);
    expect(drive({ material: 'pla' }).feed_limits.sliding).toBeCloseTo(100 / perTravel, 5);
    expect(drive({}).feed_limits.sliding).toBeCloseTo(400 / perTravel, 5);
    expect(drive({ material: { preset: 'pom', speed_limit: '900 mm/s' } }).feed_limits.sliding).toBeCloseTo(
      500 / perTravel,
      5,
    );
    expect(drive({}).whirl_rpm).toBeCloseTo((1.209e8 * 0.36 * 7.1915) / 260 ** 2, 0);
  });
});

describe('on-time and cycle', () => {
  const refused = (duty: object) => () => design(nutSheet({ duty }));
  it('must fit each other and the share in motion', () => {
    expect(refused({ on_time: 61, cycle: 60, moving: undefined })).toThrow(/duty\.on_time.*at most the cycle, 60 s/);
    expect(refused({ on_time: 9, cycle: 60, moving: '50 %' })).toThrow(/duty\.moving.*15 %/);
    expect(refused({ on_time: '1 min', cycle: '0.5 h', moving: undefined })).not.toThrow();
  });
});
