import type { Assumptions } from '../sheet/assumptions.js';
import type { PrinterSheet } from '../sheet/sections/printer.js';
import { type Fault, InputError } from '../units/faults.js';
import { plain, rounded } from '../units/format.js';
import type { Compensator, OffsetLine, Printer } from './printer.js';
import { printerList } from './printer-list.js';
import { readPreset } from './read-preset.js';
import type { PresetTexts } from './texts.js';

/** What a printer is taken to be where the sheet does not say. Lengths in mm. */
const PRINTER_DEFAULTS = {
  nozzle: 0.4,
  layer: 0.12,
  /** line width by the nozzle */
  lineShare: 1.125,
  holeOffset: 0.15,
  /** what stays uncertain of a compensated hole, whatever the printer; a coupon gives a better figure */
  holeSpread: 0.05,
  outsideOffset: 0,
  chordError: 0.01,
  compensation: 'file',
} as const satisfies Readonly<Record<string, number | Compensator>>;

/** A layer higher than this share of the nozzle does not hold on to the one below. */
const MOST_LAYER_SHARE = 0.8;
const LINE_SHARES = [0.8, 2] as const;

/**
 * The printer of a part: a preset, a preset with some settings replaced, or settings of one's own. Every default that
 * is used is listed under its field.
 *
 * @throws InputError no preset of this name (at `printer`), a faulty preset file, a layer above 0.8 × nozzle
 *   (at `printer.layer`), a line width outside 0.8 to 2 × nozzle (at `printer.line_width`)
 */
export function resolvePrinter(
  sheet: PrinterSheet | undefined,
  presets: PresetTexts,
  assumptions: Assumptions,
): Printer {
  const own = sheet ?? {};
  const base = own.preset === undefined ? undefined : readPreset('printer', own.preset, presets, presetField(own));
  const settings = base?.data;
  const d = PRINTER_DEFAULTS;
  const nozzle = assumptions.or(own.nozzle ?? settings?.nozzle, 'printer.nozzle', d.nozzle, 'the most common nozzle');
  const finest = Math.min(d.layer, rounded(nozzle / 2));
  const layer = assumptions.or(
    own.layer ?? settings?.layer,
    'printer.layer',
    finest,
    'fine enough for a pitch of 2 mm',
  );
  const sameNozzle = nozzle === settings?.nozzle ? settings.line_width : undefined;
  const width = rounded(d.lineShare * nozzle);
  const lineWidth = assumptions.or(own.line_width ?? sameNozzle, 'printer.line_width', width, '1.125 × nozzle');
  requireSettings(nozzle, layer, lineWidth, own);
  const hole = own.hole_offset ?? settings?.hole_offset ?? offset('hole_offset', d.holeOffset, HOLE_WHY, assumptions);
  const firstLayer = own.first_layer ?? settings?.first_layer;
  return {
    name: base?.id ?? 'custom',
    nozzle,
    layer,
    lineWidth,
    holeOffset: { at_zero: hole.at_zero, per_mm: hole.per_mm },
    holeSpread: hole.spread ?? d.holeSpread,
    outsideOffset:
      own.outside_offset ??
      settings?.outside_offset ??
      offset('outside_offset', d.outsideOffset, OUTSIDE_WHY, assumptions),
    ...(firstLayer === undefined ? {} : { firstLayer }),
    ...compensationOf(own, assumptions),
    chordError: assumptions.or<number>(
      own.chord_error,
      'printer.chord_error',
      d.chordError,
      'finer than a print shows',
    ),
    bridging: own.bridging ?? 'none',
    listed: printerList(presets),
  };
}

const HOLE_WHY = 'holes come out 0.1 to 0.3 mm small on most printers; a coupon tells';
const OUTSIDE_WHY = 'outsides come out true once the printer is tuned; a coupon tells';

function presetField(sheet: PrinterSheet): string {
  const others = Object.entries(sheet).some(([key, value]) => key !== 'preset' && value !== undefined);
  return others ? 'printer.preset' : 'printer';
}

function offset(
  key: string,
  value: number,
  why: string,
  assumptions: Assumptions,
): OffsetLine & { readonly spread?: number } {
  assumptions.note(`printer.${key}`, value, why);
  return { at_zero: value, per_mm: 0 };
}

function compensationOf(
  sheet: PrinterSheet,
  assumptions: Assumptions,
): Pick<Printer, 'compensation' | 'compensationKnown'> {
  const { shrink, holes } = sheet.compensation ?? {};
  const by = PRINTER_DEFAULTS.compensation;
  const or = (given: Compensator | undefined, key: string, why: string) =>
    assumptions.or<Compensator>(given, `printer.compensation.${key}`, by, why);
  return {
    compensation: {
      shrink: or(shrink, 'shrink', 'the file is scaled; scaling in the slicer must be off'),
      holes: or(holes, 'holes', 'holes are enlarged in the file; hole compensation in the slicer must be off'),
    },
    compensationKnown: shrink !== undefined && holes !== undefined,
  };
}

function requireSettings(nozzle: number, layer: number, lineWidth: number, sheet: PrinterSheet): void {
  const faults: Fault[] = [];
  const most = rounded(MOST_LAYER_SHARE * nozzle);
  if (layer > most + 1e-9) {
    faults.push({
      path: 'printer.layer',
      value: `${plain(layer)} mm`,
      allowed: `must be at most ${plain(most)} mm, 0.8 × nozzle`,
    });
  }
  const [least, widest] = LINE_SHARES.map((share) => rounded(share * nozzle)) as [number, number];
  if (sheet.line_width !== undefined && (lineWidth < least - 1e-9 || lineWidth > widest + 1e-9)) {
    const allowed = `must be ${plain(least)} to ${plain(widest)} mm, 0.8 to 2 × nozzle`;
    faults.push({ path: 'printer.line_width', value: `${plain(lineWidth)} mm`, allowed });
  }
  if (faults.length > 0) throw new InputError(faults);
}
