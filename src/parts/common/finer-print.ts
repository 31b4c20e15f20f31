import type { NozzleAndLayer, Printer } from '../../presets/printer.js';
import { plain } from '../../units/format.js';

type Prints = Pick<Printer, 'nozzle' | 'layer' | 'lineWidth' | 'listed'>;

const LEAST_APART = 1e-9;

/**
 * The layer on the list of presets that is not above this: of the nozzle in use, else of the widest one that has such layers.
 * @returns what to write into the sheet; undefined where none is so fine
 */
export function finerLayer({ nozzle, layer, listed }: Prints, most: number): string | undefined {
  const fine = listed.filter((one) => one.layer <= most + LEAST_APART && one.layer < layer - LEAST_APART);
  const own = fine.filter((one) => isSame(one.nozzle, nozzle));
  const [best] = [...(own.length > 0 ? own : fine)].sort((a, b) => b.nozzle - a.nozzle || b.layer - a.layer);
  return best && settingWords(best, nozzle);
}

/**
 * The nozzle on the list of presets whose lines are not wider than this, with the layer nearest to the one in use.
 * @param section of the sheet that holds nozzle and layer
 * @returns what to write into the sheet; undefined where none is so fine
 */
export function finerNozzle(
  { nozzle, layer, lineWidth, listed }: Prints,
  widest: number,
  section = 'printer',
): string | undefined {
  const most = (nozzle * widest) / lineWidth;
  const fine = listed.filter((one) => one.nozzle <= most + LEAST_APART && one.nozzle < nozzle - LEAST_APART);
  const off = (one: NozzleAndLayer) => Math.abs(one.layer - layer);
  const [best] = [...fine].sort((a, b) => b.nozzle - a.nozzle || off(a) - off(b));
  if (!best) return undefined;
  return off(best) < LEAST_APART
    ? `use ${section}.nozzle: ${plain(best.nozzle)} mm`
    : settingWords(best, nozzle, section);
}

function settingWords({ nozzle, layer }: NozzleAndLayer, now: number, section = 'printer'): string {
  const layers = `${section}.layer: ${plain(layer)} mm`;
  return isSame(nozzle, now) ? `use ${layers}` : `use ${section}.nozzle: ${plain(nozzle)} mm, ${layers}`;
}

function isSame(a: number, b: number): boolean {
  return Math.abs(a - b) < LEAST_APART;
}

/** The end of a message: what to write into the sheet, or else what else makes it. */
export function oneOf(...ways: readonly (string | undefined)[]): string {
  const told = ways.filter((way) => way !== undefined && way !== '');
  return told.length === 0 ? '' : `; ${told.join(', or ')}`;
}
