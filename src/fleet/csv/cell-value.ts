import { readYaml } from '../../sheet/read-yaml.js';
import { InputError } from '../../units/faults.js';

/** What a cell holds, or what is wrong with it. */
export type CellValue = { readonly value: unknown } | { readonly allowed: string };

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
/** A quantity with decimal commas: `7,95`, `-0,5 mm`, `7,95 ± 0,02 mm`. */
const COMMA_QUANTITY =
  /^[+-]?\d+,\d+(?:\s*(?:±|\+\/-)\s*\d+(?:,\d+)?)?(?:\s*[^\d\s,][^,]*)?$|^[+-]?\d+\s*(?:±|\+\/-)\s*\d+,\d+(?:\s*[^\d\s,][^,]*)?$/;
/** Whether a cell is a quantity with a decimal comma. */
export function hasDecimalComma(cell: string): boolean {
  return COMMA_QUANTITY.test(cell);
}

/** Digits in threes, set apart by commas. */
const THREES = /^[+-]?\d{1,3}(?:,\d{3})+$/;
/** Digits in threes, set apart by points; none begins with a nought. */
const THREES_BY_POINT = /^[+-]?[1-9]\d{0,2}(?:\.\d{3})+(?!\d)/;
const BOTH_SIGNS = /^[+-]?\d+(?:[.,]\d{3})*[.,]\d+/;

/**
 * What a cell of a spreadsheet means as a field of a sheet: a number, a list or map in brackets, or text. Decimal
 * commas are read as points.
 *
 * @param cell the trimmed text, not empty
 * @param decimalComma whether another sign than a comma parts the cells, so that `1,250` is one and a quarter
 * @param hasCommas    whether other cells have decimal commas, so that `1.200` may be twelve hundred
 * @example cellValue('7,95 mm', true) // { value: '7.95 mm' }
 */
export function cellValue(cell: string, decimalComma: boolean, hasCommas = false): CellValue {
  if (hasCommas && THREES_BY_POINT.test(cell)) {
    const [comma, none] = [cell.replace('.', ','), cell.replaceAll('.', '')];
    return { allowed: `may mean ${comma} or ${none}, since other cells have decimal commas; write it so` };
  }
  if (NUMBER.test(cell)) return finite(cell);
  if (/^[=@\t\r]|^[+-][^\d.]/.test(cell))
    return { allowed: 'begins like a formula; a spreadsheet must save its value' };
  if (/^[[{]/.test(cell)) return bracketed(cell);
  if (BOTH_SIGNS.test(cell) && cell.includes(',') && cell.includes('.')) {
    return { allowed: 'is read with one decimal sign and none between thousands' };
  }
  if (!COMMA_QUANTITY.test(cell)) return { value: cell };
  if (!decimalComma && THREES.test(cell)) {
    return { allowed: `may mean ${cell.replace(',', '.')} or ${cell.replaceAll(',', '')}; write it with a point` };
  }
  const text = cell.replaceAll(',', '.');
  return NUMBER.test(text) ? finite(text) : { value: text };
}

function finite(cell: string): CellValue {
  const value = Number(cell);
  return Number.isFinite(value) ? { value } : { allowed: 'must be a finite number' };
}

function bracketed(cell: string): CellValue {
  try {
    return { value: readYaml(cell).value };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;

    return { allowed: 'is not a list such as [0.1 mm, 0.2 mm] nor a map such as {plane: 1 %}' };
  }
}
