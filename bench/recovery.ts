// How well calibration finds what was put into random printers, and whether its errors are honest.
import { type Coverage, coverage } from '../test/calibrate/recovery.js';

const PRINTERS = 200;

const CASES: readonly (readonly [string, () => Coverage])[] = [
  ['three readings of each feature', () => coverage(PRINTERS)],
  ['one reading of each feature', () => coverage(PRINTERS, {}, 1)],
  ['prints twice as rough as taken', () => coverage(PRINTERS, { form: 0.03 })],
  ['prints without any roughness', () => coverage(PRINTERS, { form: 0 })],
];

for (const [what, run] of CASES) {
  const { within, half, all, falseAlarms } = run();
  console.log(`\n${PRINTERS} random printers, one usual coupon each, ${what}`);
  console.log('  figure          within 2 standard errors   2 standard errors, mean');
  for (const [name, share] of Object.entries(within)) {
    console.log(`  ${name.padEnd(16)}${percent(share).padStart(24)}   ${size(name, half[name] ?? 0).padStart(23)}`);
  }
  console.log(`  ${'all'.padEnd(16)}${percent(all).padStart(24)}   sound features called outliers: ${falseAlarms}`);
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}

function size(name: string, value: number): string {
  return /plane|skew|axial/.test(name) ? `${(100 * value).toFixed(3)} %` : `${value.toFixed(4)} mm`;
}
