import { DERIVED } from '../size-field.js';

/** What each series of marks comes from: X, Y and F of the scale, Z its steps, B and P the bores, T the threads. */
const OF_SERIES: Readonly<Record<string, string>> = {
  x: 'scale.span',
  y: 'scale.span',
  z: 'scale.height',
  f: DERIVED,
  b: 'bores',
  p: 'bores',
  t: 'thread.diametral',
  h: DERIVED,
  i: DERIVED,
  s: 'pockets.shaft',
  d: 'pockets.shaft',
};

/** The field of a coupon's sheet that a size shows, by the letter of its mark. */
export function sizeField(name: string): string | undefined {
  return /^[a-z]\d/.test(name) ? OF_SERIES[name[0]!] : undefined;
}
