import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import { resolveMaterial } from '../../presets/resolve-material.js';
import { resolvePrinter } from '../../presets/resolve-printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import type { Assumptions } from '../../sheet/assumptions.js';
import type { MaterialSheet } from '../../sheet/sections/material.js';
import type { PrinterSheet } from '../../sheet/sections/printer.js';
import { CALIPERS } from '../../units/measured.js';

/** What a part is measured with, made of and printed on. */
export interface Workshop {
  /** half-width of a reading [mm] */
  readonly calipers: number;
  readonly material: Material;
  readonly printer: Printer;
}

/**
 * Calipers, material and printer of a sheet; what it leaves out is listed.
 * @param ofMaterial where what is taken of the material is listed, if not with the rest
 * @throws InputError no such material or printer, or a figure of one that cannot be
 */
export function workshopOf(
  sheet: {
    readonly calipers?: number | undefined;
    readonly material?: MaterialSheet | undefined;
    readonly printer?: PrinterSheet | undefined;
  },
  presets: PresetTexts,
  assumptions: Assumptions,
  ofMaterial = assumptions,
): Workshop {
  const why = 'half-width of a reading by ordinary calipers';
  return {
    calipers: assumptions.or<number>(sheet.calipers, 'calipers', CALIPERS, why),
    material: resolveMaterial(sheet.material, presets, ofMaterial),
    printer: resolvePrinter(sheet.printer, presets, assumptions),
  };
}
