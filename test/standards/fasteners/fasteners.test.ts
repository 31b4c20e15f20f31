import { describe, expect, it } from 'vitest';
import { socketCapScrew } from '../../../src/standards/fasteners/cap-screw.js';
import { clearanceHole } from '../../../src/standards/fasteners/clearance-hole.js';
import { hexNut } from '../../../src/standards/fasteners/nuts.js';
import { heatSetBore } from '../../../src/standards/fasteners/plastic-holes.js';
import { setScrewHolding } from '../../../src/standards/fasteners/set-screw-holding.js';
import { shoulderScrew } from '../../../src/standards/fasteners/shoulder-screw.js';
import { FASTENER_SIZES, fastenerThread } from '../../../src/standards/fasteners/sizes.js';
import { seatingTorque } from '../../../src/standards/fasteners/tightening.js';
import { washer } from '../../../src/standards/fasteners/washer.js';

describe('fastener tables', () => {
  // ISO 4762 / 4032 / 4035 / 7089 / 273, CONFIRMED; washers M2, M2.5 from memory
  it.each([
    ['M2', 0.4, 3.8, 3.98, 2, 1.5, 4, 4.32, 1.6, 2.2, 5, 0.3, 2.2, 2.4, 2.6],
    ['M2.5', 0.45, 4.5, 4.68, 2.5, 2, 5, 5.45, 2, 2.7, 6, 0.5, 2.7, 2.9, 3.1],
    ['M3', 0.5, 5.5, 5.68, 3, 2.5, 5.5, 6.01, 2.4, 3.2, 7, 0.5, 3.2, 3.4, 3.6],
    ['M4', 0.7, 7, 7.22, 4, 3, 7, 7.66, 3.2, 4.3, 9, 0.8, 4.3, 4.5, 4.8],
    ['M5', 0.8, 8.5, 8.72, 5, 4, 8, 8.79, 4.7, 5.3, 10, 1, 5.3, 5.5, 5.8],
    ['M6', 1, 10, 10.22, 6, 5, 10, 11.05, 5.2, 6.4, 12, 1.6, 6.4, 6.6, 7],
    ['M8', 1.25, 13, 13.27, 8, 6, 13, 14.38, 6.8, 8.4, 16, 1.6, 8.4, 9, 10],
  ] as const)('%s', (size, pitch, dk, dkn, k, s, ns, ne, nm, w1, w2, wh, f, m, c) => {
    const cap = socketCapScrew(size);
    expect(fastenerThread(size).pitch).toBe(pitch);
    expect([cap.headDiameter, cap.headDiameterKnurled, cap.headHeight, cap.key]).toEqual([dk, dkn, k, s]);
    expect(hexNut(size)).toEqual({ acrossFlats: ns, acrossCorners: ne, height: nm });
    expect(washer(size)).toEqual({ inside: w1, outside: w2, thickness: wh });
    expect([clearanceHole(size, 'fine'), clearanceHole(size), clearanceHole(size, 'coarse')]).toEqual([f, m, c]);
  });

  it('grows with size', () => {
    const cols = FASTENER_SIZES.map((size) => [
      heatSetBore(size).bore,
      seatingTorque(size, 'clamp'),
      clearanceHole(size),
    ]);
    for (let i = 1; i < cols.length; i += 1)
      cols[i]!.forEach((v, j) => void expect(v).toBeGreaterThan(cols[i - 1]![j]!));
    expect(socketCapScrew('M3').lengths).toEqual([5, 6, 8, 10, 12, 16, 20, 25, 30]);
  });
});

describe('setScrewHolding', () => {
  // textbook table 7-4: #10: 36 lbf in, 540 lbf (holding power from memory); 540 lbf = 2402 N
  it('reads the row of the size not above', () => {
    const row = setScrewHolding({ diameter: 5 });
    expect(row.size).toBe('#10');
    expect(row.force).toBeCloseTo(2402, 0);
    expect(row.seatingTorque).toBeCloseTo(4067.5, 0);
    expect(setScrewHolding({ diameter: 3 }).size).toBe('#4');
    expect(() => setScrewHolding({ diameter: 1 })).toThrow(/1.5 to 26/);
  });

  // 1/4 in are 6.35 mm, 1 in 25.4: 7000 lbf are 31.14 kN; the table ends at 26 mm
  it('reads a size itself, up to the end of the table', () => {
    expect(setScrewHolding({ diameter: 6.35 })).toMatchObject({ size: '1/4', diameter: 6.35 });
    expect(setScrewHolding({ diameter: 6.34 }).size).toBe('#10');
    expect(setScrewHolding({ diameter: 26 })).toMatchObject({ size: '1', force: expect.closeTo(31_137.6, 0) });
    expect(() => setScrewHolding({ diameter: 26.1 })).toThrow(/1.5 to 26/);
  });
});

describe('seatingTorque', () => {
  // the tightening chart: M3 2.1 N·m as a clamp screw, 0.92 as a set screw; M8 39 and 17
  it('is that of clamp or set screw', () => {
    expect([seatingTorque('M3', 'clamp'), seatingTorque('M3', 'set')]).toEqual([2100, 920]);
    expect([seatingTorque('M8', 'clamp'), seatingTorque('M8', 'set')]).toEqual([39_000, 17_000]);
  });
});

describe('shoulder screws', () => {
  // ISO 7379: shoulder with its limits, head
  it.each([
    ['M5', 6, 5.96, 5.99, 10.2, 4.5],
    ['M6', 8, 7.951, 7.987, 13.3, 5.5],
    ['M8', 10, 9.951, 9.987, 16.3, 7],
  ] as const)('of thread %s', (size, shoulder, least, most, headDiameter, headHeight) => {
    expect(shoulderScrew(size)).toEqual({ shoulder, least, most, headDiameter, headHeight });
  });

  // ISO 286-2, f9: −10 to −40 µm up to 6 mm, −13 to −49 µm up to 10 mm
  it.each([
    ['M5', 6, 10, 40],
    ['M6', 8, 13, 49],
    ['M8', 10, 13, 49],
  ] as const)('of thread %s fit f9', (size, nominal, over, under) => {
    const { least, most } = shoulderScrew(size);
    expect(most).toBeCloseTo(nominal - over / 1000, 9);
    expect(least).toBeCloseTo(nominal - under / 1000, 9);
  });

  it('have no thread of M3', () => {
    expect(() => shoulderScrew('M3')).toThrow('M5, M6, M8');
  });
});
