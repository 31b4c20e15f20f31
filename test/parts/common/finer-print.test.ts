import { describe, expect, it } from 'vitest';
import { finerLayer, finerNozzle, oneOf } from '../../../src/parts/common/finer-print.js';

const listed = [
  { nozzle: 0.25, layer: 0.06 },
  { nozzle: 0.4, layer: 0.08 },
  { nozzle: 0.4, layer: 0.2 },
  { nozzle: 0.6, layer: 0.2 },
  { nozzle: 0.6, layer: 0.3 },
];
const printer = { nozzle: 0.6, layer: 0.3, lineWidth: 0.675, listed };

describe('layers and nozzles that exist', () => {
  it('are of the nozzle in use where it has such layers', () => {
    expect(finerLayer(printer, 0.25)).toBe('use printer.layer: 0.2 mm');
    expect(finerLayer(printer, 0.2)).toBe('use printer.layer: 0.2 mm');
  });

  it('are of the widest other nozzle where it has none', () => {
    expect(finerLayer(printer, 0.19)).toBe('use printer.nozzle: 0.4 mm, printer.layer: 0.08 mm');
    expect(finerLayer(printer, 0.07)).toBe('use printer.nozzle: 0.25 mm, printer.layer: 0.06 mm');
    expect(finerLayer(printer, 0.05)).toBeUndefined();
  });

  it('are of the nozzle in use even where a wider one has such layers, and as coarse as will do', () => {
    expect(finerLayer({ ...printer, nozzle: 0.4 }, 0.25)).toBe('use printer.layer: 0.2 mm');
  });

  it('never name what is in use', () => {
    expect(finerNozzle(printer, 1)).toBe('use printer.nozzle: 0.4 mm, printer.layer: 0.2 mm');
    expect(finerLayer({ ...printer, nozzle: 0.4, layer: 0.2 }, 0.25)).toBe('use printer.layer: 0.08 mm');
  });

  it('draw lines as wide as wanted, with the layer nearest to the one in use', () => {
    // 0.675/0.6 · 0.4 = 0.45
    expect(finerNozzle(printer, 0.45)).toBe('use printer.nozzle: 0.4 mm, printer.layer: 0.2 mm');
    expect(finerNozzle(printer, 0.44)).toBe('use printer.nozzle: 0.25 mm, printer.layer: 0.06 mm');
    expect(finerNozzle({ ...printer, layer: 0.2 }, 0.5, 'insert.printer')).toBe('use insert.printer.nozzle: 0.4 mm');
    expect(finerNozzle(printer, 0.2)).toBeUndefined();
  });

  it('stand at the end of a message', () => {
    expect(oneOf('a', undefined, 'b')).toBe('; a, or b');
    expect(oneOf(undefined, '')).toBe('');
  });
});
