import { type Fields, isFields } from '../sheet/fields-map.js';
/**
 * The printer that a sheet is for, in words that sort its parts for a day of printing.
 * @example printerWords({ printer: { nozzle: '0.4 mm', layer: 0.12 } }) // 'nozzle 0.4 mm, layer 0.12 mm'
 */
export function printerWords(sheet: Fields): string {
  if (sheet.part !== 'axis' || !isFields(sheet.parts)) return wordsOf(sheet);
  const own = Object.values(sheet.parts).filter(
    (part) => isFields(part) && (part.printer ?? part.profile) !== undefined,
  );
  return [...new Set([sheet, ...own].map((one) => wordsOf(one as Fields)))].join('; ');
}

function wordsOf({ profile, printer }: Fields): string {
  const name = isFields(profile) ? profile.name : profile;
  if (typeof name === 'string') return `profile ${name}`;
  if (typeof printer === 'string') return printer;
  if (!isFields(printer)) return 'any';
  const said = ['preset', 'nozzle', 'layer'].flatMap((key) => {
    const value = printer[key];
    if (typeof value !== 'string' && typeof value !== 'number') return [];
    return [key === 'preset' ? String(value) : `${key} ${typeof value === 'number' ? `${value} mm` : value}`];
  });
  return said.length > 0 ? said.join(', ') : 'any';
}
