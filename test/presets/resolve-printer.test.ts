import { describe, expect, it } from 'vitest';
import { resolvePrinter } from '../../src/presets/resolve-printer.js';
import { SHIPPED } from '../../src/presets/shipped.js';
import { Assumptions } from '../../src/sheet/assumptions.js';
import { printerSection } from '../../src/sheet/sections/printer.js';

function resolve(typed: unknown) {
  const assumptions = new Assumptions();
  const printer = resolvePrinter(typed === undefined ? undefined : printerSection.parse(typed), SHIPPED, assumptions);
  return { printer, listed: assumptions.list.map(({ field }) => field), assumptions };
}

describe('resolvePrinter', () => {
  it('lists every default it uses, each with a reason', () => {
    const { printer, listed, assumptions } = resolve(undefined);
    expect(printer).toEqual({
      name: 'custom',
      nozzle: 0.4,
      layer: 0.12,
      lineWidth: 0.45,
      holeOffset: { at_zero: 0.15, per_mm: 0 },
      holeSpread: 0.05,
      outsideOffset: { at_zero: 0, per_mm: 0 },
      compensation: { shrink: 'file', holes: 'file' },
      compensationKnown: false,
      chordError: 0.01,
      bridging: 'none',
      listed: expect.arrayContaining([
        { nozzle: 0.4, layer: 0.12 },
        { nozzle: 0.25, layer: 0.06 },
      ]),
    });
    expect(listed).toEqual([
      'printer.nozzle',
      'printer.layer',
      'printer.line_width',
      'printer.hole_offset',
      'printer.outside_offset',
      'printer.compensation.shrink',
      'printer.compensation.holes',
      'printer.chord_error',
    ]);
    for (const { why } of assumptions.list) expect(why.length).toBeGreaterThan(5);
  });

  it('takes a preset', () => {
    const { printer, listed } = resolve('nozzle-0.6-layer-0.2');
    expect(printer).toMatchObject({ name: 'nozzle-0.6-layer-0.2', nozzle: 0.6, layer: 0.2, lineWidth: 0.675 });
    expect(listed).toEqual(['printer.compensation.shrink', 'printer.compensation.holes', 'printer.chord_error']);
  });

  it('takes a line width from the nozzle where the preset’s nozzle is replaced', () => {
    const { printer, listed } = resolve({ preset: 'nozzle-0.4-layer-0.2', nozzle: '0.6 mm' });
    expect(printer).toMatchObject({ nozzle: 0.6, layer: 0.2, lineWidth: 0.675 });
    expect(listed).toContain('printer.line_width');
  });

  it('knows who compensates only when both are said', () => {
    expect(resolve({ compensation: 'slicer' }).printer).toMatchObject({
      compensation: { shrink: 'slicer', holes: 'slicer' },
      compensationKnown: true,
    });
    const half = resolve({ compensation: { shrink: 'none' } });
    expect(half.printer).toMatchObject({ compensation: { shrink: 'none', holes: 'file' }, compensationKnown: false });
    expect(half.listed).toContain('printer.compensation.holes');
  });

  it('takes offsets as numbers and as lines over the diameter', () => {
    expect(resolve({ hole_offset: '0.2 mm' }).printer.holeOffset).toEqual({ at_zero: 0.2, per_mm: 0 });
    const line = { at_zero: '0.1 mm', per_mm: 0.004 };
    expect(resolve({ hole_offset: line }).printer.holeOffset).toEqual({ at_zero: 0.1, per_mm: 0.004 });
    expect(resolve({ outside_offset: 0 }).listed).not.toContain('printer.outside_offset');
  });

  // 0.8 × 0.4 = 0.32: at the limit, and one step above
  it('refuses a layer above 0.8 × nozzle', () => {
    expect(resolve({ layer: '0.32 mm' }).printer.layer).toBe(0.32);
    expect(() => resolve({ layer: '0.33 mm' })).toThrow(
      'printer.layer: 0.33 mm; must be at most 0.32 mm, 0.8 × nozzle',
    );
    expect(resolve({ nozzle: '0.1 mm' }).printer.layer).toBeLessThanOrEqual(0.08);
  });

  it('refuses a line width outside 0.8 to 2 × nozzle, together with the layer', () => {
    expect(resolve({ line_width: '0.32 mm' }).printer.lineWidth).toBe(0.32);
    expect(resolve({ line_width: '0.8 mm' }).printer.lineWidth).toBe(0.8);
    expect(() => resolve({ line_width: '0.31 mm', layer: '0.5 mm' })).toThrow(/printer\.layer.*\nprinter\.line_width/);
    expect(() => resolve({ line_width: '0.81 mm' })).toThrow(/printer.line_width: 0.81 mm; must be 0.32 to 0.8 mm/);
  });

  it('names the nearest preset', () => {
    expect(() => resolve('nozzle-0.4-layer-0.25')).toThrow(/^printer: .*did you mean nozzle-0.4-layer-0.2\?/);
    expect(() => resolve({ preset: 'fast', layer: '0.2 mm' })).toThrow(/^printer.preset: fast; no printer preset/);
  });
});
