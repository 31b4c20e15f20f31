import { parse } from 'yaml';
import type { Trial } from '../../src/calibrate/trial.js';
import { newTrial } from '../../src/pipeline/new-trial.js';
import { readTrial, type TriedNuts, tryNuts } from '../../src/pipeline/trials.js';
import { changed } from '../support/nut-sheets.js';
import { chance } from '../support/simulated-printer.js';

/** What is wrong with a printer that nobody knows of; lengths mm, shrink as a fraction. */
export interface Faults {
  readonly shrinkZ: number;
  /** flank gap that comes out less (−) or more than drawn, over-extrusion and the screw's own size together */
  readonly gap: number;
  /** how much smaller bores come out than the sheet believes */
  readonly bore: number;
}

/** A random printer with the faults that people meet. */
export function randomFaults(seed: number, believed: number): Faults {
  const { between, uniform } = chance(seed);
  for (let i = 0; i < 10; i++) uniform();
  return {
    shrinkZ: believed + between(-0.006, 0.006),
    gap: between(-0.15, 0.15),
    bore: between(-0.15, 0.25),
  };
}

const SHEET = {
  part: 'nut',
  name: 'tried',
  screw: 'Tr10x2',
  body: { diameter: 17, length: 24 },
  flange: 'none' as unknown,
  material: 'pa12',
  printer: { nozzle: 0.4, layer: 0.12, hole_offset: 0.15, compensation: 'file' },
  effects: { moisture: 'off', temperature: 'off' },
};

/** Prints the nut of a sheet on that printer, and reads it with dial and calipers: what stands in the filled form. */
function seen(form: string, faults: Faults, seed: number): Trial {
  const { normal } = chance(seed);
  const head = readTrial(form.replace('goes:  ', 'goes: by-hand  '));
  const { applied, wanted, pitch, edges } = head;
  const error = (applied.axial - faults.shrinkZ) / (1 - applied.axial);
  const clear = wanted.play + faults.gap - edges;
  const left = clear - Math.abs(error) * wanted.length;
  const goes = clear < 0 ? 'no' : left > 0.03 ? 'by-hand' : left > 0 ? 'tight' : 'jams';
  const round = (value: number) => Math.round(100 * value) / 100;
  const fields = {
    ...parse(form),
    goes,
    ...(goes === 'jams' ? { jams_after: Math.round((2 * clear) / (Math.abs(error) * pitch)) / 2 } : {}),
    ...(goes === 'by-hand' || goes === 'tight'
      ? { play: `${round(Math.max(0, left + 0.01 * normal()))} ± 0.02 mm` }
      : {}),
    length: `${round(wanted.length * (1 + error) + 0.012 * normal())} mm`,
    bore: `${round(wanted.bore - faults.bore + (applied.hole_offset - 0.15) + 0.02 * normal())} mm`,
  };
  return readTrial(JSON.stringify(fields));
}

/** What a printer was found to be, after at most three nuts with one number changed after each. */
export function recovered(faults: Faults, seed: number) {
  let sheet: Record<string, unknown> = { ...SHEET };
  delete sheet.flange;
  const trials: Trial[] = [];
  let tried: TriedNuts | undefined;
  for (let n = 0; n < 3; n += 1) {
    trials.push(seen(newTrial(sheet), faults, seed + 101 * n));
    tried = tryNuts(trials);
    const change = tried.findings.find((one) => one.change !== undefined)?.change;
    if (!change) break;
    sheet = changedBy(sheet, change.field, change.to);
  }
  const { estimate } = tried!;
  const last = trials.at(-1)!;
  return {
    trials: trials.length,
    shrink: estimate.axial.value - faults.shrinkZ,
    /** of the play that is told of the last nut, run in */
    play: last.wanted.play + estimate.gap.value - (last.wanted.play + faults.gap),
    findings: tried!.findings,
  };
}

function changedBy(sheet: Record<string, unknown>, field: string, to: number): Record<string, unknown> {
  if (field === 'material.shrink.axial')
    return changed(sheet, { material: { preset: 'pa12', shrink: { axial: `${100 * to} ± 0.5 %` } } });
  if (field === 'fit.axial') return changed(sheet, { fit: { class: 'running', axial: to } });
  if (field === 'printer.hole_offset') return changed(sheet, { printer: { hole_offset: to } });
  return sheet;
}
