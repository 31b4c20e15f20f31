import { describe, expect, it } from 'vitest';
import type { Check } from '../../../src/judge/check.js';
import { runChecks } from '../../../src/judge/run-checks.js';
import { printLayers, printThreadDepth, type ThreadInPrint } from '../../../src/parts/common/thread-in-print.js';
import { exactly, plusMinus } from '../../../src/units/measured.js';

const listed = [
  { nozzle: 0.4, layer: 0.2 },
  { nozzle: 0.4, layer: 0.15 },
  { nozzle: 0.35, layer: 0.2 },
  { nozzle: 0.25, layer: 0.1 },
];
const TRAPEZOID = { form: 'trapezoidal', pitch: exactly(2), major: exactly(8), minor: exactly(5.5) } as const;
const V = { form: 'metric-v', pitch: exactly(2), major: exactly(12), minor: exactly(9) } as const;

type Changes = Partial<ThreadInPrint['screw']> & Partial<ThreadInPrint['printer']>;

function found(check: Check<ThreadInPrint>, { form, pitch, major, minor, ...printer }: Changes = {}, base = TRAPEZOID) {
  const screw = Object.fromEntries(
    Object.entries({ form, pitch, major, minor }).filter(([, one]) => one !== undefined),
  );
  return runChecks([check], {
    screw: { ...base, ...screw },
    printer: { nozzle: 0.4, layer: 0.2, lineWidth: 0.4, listed, ...printer },
  })[0]!;
}

describe('layers in a pitch', () => {
  it.each([
    [2, 0.2, 10, 'yes'],
    [2, 0.21, 2 / 0.21, 'but'],
    [1.2, 0.2, 6, 'but'],
    [1.19, 0.2, 5.95, 'no'],
  ])('%f mm in layers of %f mm are %f: %s', (pitch, layer, layers, word) => {
    const row = found(printLayers(), { pitch: exactly(pitch), layer });
    expect(row.value).toBeCloseTo(layers, 6);
    expect(row.word).toBe(word);
  });

  it('are cured by a finer layer, by what else makes the thread, or by either', () => {
    const fine = { pitch: exactly(1.2) }; // ten layers: 0.12 mm, so 0.1 mm of another nozzle
    const cure = 'use printer.nozzle: 0.25 mm, printer.layer: 0.1 mm';
    expect(found(printLayers(), fine).message.endsWith(`1.2 mm; ${cure}`)).toBe(true);
    expect(found(printLayers('tap it'), fine).message.endsWith(`1.2 mm; ${cure}, or tap it`)).toBe(true);
    const finest = { pitch: exactly(0.5), layer: 0.1, nozzle: 0.25 };
    expect(found(printLayers(), finest).message).toMatch(/; no layer on the list of presets is so fine$/);
    expect(found(printLayers('tap it'), finest).message).toMatch(/0\.5 mm; tap it$/);
    expect(found(printLayers('tap it')).message).toMatch(/pitch of 2 mm$/);
  });
});

describe('depth of a thread in lines', () => {
  // flanks of a trapezoid meet over half a pitch, 1 mm, where the screw is 1.25 mm deep
  it.each([
    [0.5, 2, 'yes'],
    [0.51, 1 / 0.51, 'but'],
    [1, 1, 'but'],
    [1.01, 1 / 1.01, 'no'],
  ])('of a Tr8x2 in lines of %f mm is %f: %s', (lineWidth, lines, word) => {
    const row = found(printThreadDepth(), { lineWidth });
    expect(row.value).toBeCloseTo(lines, 6);
    expect(row.word).toBe(word);
  });

  it('is no more than the screw has: (8 − 6.8)/2 = 0.6 mm are 1.5 lines', () => {
    expect(found(printThreadDepth(), { minor: exactly(6.8) }).value).toBeCloseTo(1.5, 9);
  });

  it('of a V is 5/8 of its height, √3/2 of the pitch: 1.0825 mm of 2 mm, at the likely readings', () => {
    expect(found(printThreadDepth(), V).value).toBeCloseTo((5 / 8) * (Math.sqrt(3) / 2) * (2 / 0.4), 5);
    const read = { ...V, minor: plusMinus(10.4, 0.2), major: plusMinus(12, 0.1) };
    expect(found(printThreadDepth(), read).value).toBeCloseTo(0.8 / 0.4, 9);
  });

  it('is cured by a nozzle whose lines are half as deep, by what else makes the thread, or by either', () => {
    // 0.4 mm nozzle with lines of 0.6 mm; half of 1 mm wants a nozzle of 0.4/0.6 · 0.5 = 0.33 mm
    const wide = { lineWidth: 0.6 };
    const cure = 'use printer.nozzle: 0.25 mm, printer.layer: 0.1 mm';
    expect(found(printThreadDepth(), wide).message.endsWith(`mm; ${cure}`)).toBe(true);
    expect(found(printThreadDepth('tap it'), wide).message.endsWith(`mm; ${cure}, or tap it`)).toBe(true);
    const finest = { lineWidth: 0.6, nozzle: 0.25 };
    expect(found(printThreadDepth(), finest).message).toMatch(/; no nozzle on the list of presets is so fine$/);
    expect(found(printThreadDepth('tap it'), finest).message).toMatch(/0\.6 mm; tap it$/);
    expect(found(printThreadDepth('tap it')).message).toMatch(/lines of 0\.4 mm$/);
  });
});
