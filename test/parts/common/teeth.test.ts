import { describe, expect, it } from 'vitest';
import { teethOf, toothBears } from '../../../src/parts/common/teeth.js';
import type { Material } from '../../../src/presets/material.js';
import type { Screw } from '../../../src/sheet/resolve-screw.js';
import { exactly } from '../../../src/units/measured.js';

/** Tr8x2 in a nut opened by 0.3 mm on the diameter and 0.1 mm along. */
const THREAD = {
  minor: 6.3,
  pitchDiameter: 7.3,
  major: 8.8,
  pitch: 2,
  grooveWidth: 1.1,
  flankSlope: Math.tan((15 * Math.PI) / 180),
};
const screw = (minor: number) => ({ pitchDiameter: exactly(7), minor: exactly(minor) }) as Screw;
const of = (screwMajor: number, minor = 5.5) =>
  teethOf({ thread: THREAD, screw: screw(minor) }, { length: 15, leadIn: 0.5 }, screwMajor);

describe('the teeth of Tr8x2, by hand', () => {
  it("meet the screw from the nut's minor to the screw's major, and are rooted at the nut's major", () => {
    const teeth = of(8);
    expect(teeth.flankDepth).toBeCloseTo((8 - 6.3) / 2, 9);
    expect(teeth.arm).toBeCloseTo((8.8 - (6.3 + 8) / 2) / 2, 9);
    // a groove narrows towards the nut's major by 2·tan 15° a millimetre of radius: 0.75 mm
    expect(teeth.rootWidth).toBeCloseTo(2 - (1.1 - 2 * 0.75 * Math.tan((15 * Math.PI) / 180)), 9);
    expect(teeth).toMatchObject({ pitchDiameter: 7, pitch: 2, rootDiameter: 8.8 });
  });

  it('end where the chamfers have come in to the middle of the contact, 0.5 mm past the thread and 0.825 mm inside its major', () => {
    expect(of(8).engagedLength).toBeCloseTo(15 - 2 * (0.5 + 0.825), 9);
    const stretch = (length: number, chamfered?: 1 | 2) =>
      teethOf({ thread: THREAD, screw: screw(5.5) }, { length, leadIn: 0.3, ...(chamfered ? { chamfered } : {}) }, 8);
    expect(stretch(10, 1).engagedLength).toBeCloseTo(10 - (0.3 + 0.825), 9);
    // nothing is left of a ring shorter than its chamfers
    expect(stretch(2).engagedLength).toBe(0.01);
  });

  it('meet a worn screw less, and one whose core is thick only above it', () => {
    expect(of(7.6).flankDepth).toBeCloseTo((7.6 - 6.3) / 2, 9);
    expect(of(8, 6.8).flankDepth).toBeCloseTo((8 - 6.8) / 2, 9);
    // no further out than the groove goes
    expect(of(9).flankDepth).toBeCloseTo((8.8 - 6.3) / 2, 9);
    expect(of(6.3).flankDepth).toBe(0.01);
  });
});

it('a printed flank bears half of what the plastic does, its root all of it', () => {
  const material = {
    tensile: 36,
    tensileAcross: 18,
    shear: 20,
    heat: { glass: 103 },
    standingLimit: 75,
    shares: { hour: 0.42, thousandHours: 0.28, years: 0.2 },
  } as unknown as Material;
  const at = { duration: 'years', temperature: 23 } as const;
  // 0.2 of 36 MPa, confined 1.2 times as much; 0.2 of 20 MPa in shear
  expect(toothBears(material, { kind: 'pressure', ...at })).toBeCloseTo(0.5 * 1.2 * 36 * 0.2, 9);
  expect(toothBears(material, { kind: 'shear', ...at })).toBeCloseTo(20 * 0.2, 9);
});
