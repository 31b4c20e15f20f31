/**
 * Number or text: what is typed alone takes a bare number for what a sheet's bare number would be.
 * @example plainValue('7.92') // 7.92
 */
export function plainValue(text: string): number | string {
  return /^\s*[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?\s*$/i.test(text) ? Number(text) : text;
}

/** `A,B,…` */
export function listed(text: string): unknown[] {
  return text.split(',').map(plainValue);
}
