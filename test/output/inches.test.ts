import { expect, it } from 'vitest';
import { besideInches, inchFigure } from '../../src/output/inches.js';

// 1 in = 25.4 mm; 0 °C = 32 °F, 5 K = 9 °F
it.each([
  ['0.254 ± 0.0508 mm, at least 0.127', '0.254 ± 0.0508 mm (0.01 ± 0.002 in), at least 0.127 mm (0.005 in)'],
  ['gap (2.54 mm, 5.08 to 7.62).', 'gap (2.54 mm (0.1 in), 5.08 to 7.62 mm (0.2 to 0.3 in)).'],
  ['40 °C, at most 80; cool it', '40 °C (104 °F), at most 80 °C (176 °F); cool it'],
  ['2.54 mm, at most 3 screws', '2.54 mm (0.1 in), at most 3 screws'],
  ['25.4 to 50.8 mm are left', '25.4 to 50.8 mm (1 to 2 in) are left'],
  ['a wall of 2.54 mm; 12.7 mm of it', 'a wall of 2.54 mm (0.1 in); 12.7 mm (0.5 in) of it'],
  ['−0.127 mm', '−0.127 mm (−0.005 in)'],
  ['20 mm/s, 30 mm², 40 N·mm, M3', '20 mm/s, 30 mm², 40 N·mm, M3'],
  ['25.4 mm (1 in) long', '25.4 mm (1 in) long'],
  ['softens at 95 °C, 80 °C around it', 'softens at 95 °C (203 °F), 80 °C (176 °F) around it'],
  ['cases run at 50 to 80 °C', 'cases run at 50 to 80 °C (122 to 176 °F)'],
  ['M3 and −40 °C', 'M3 and −40 °C (−40 °F)'],
  ['41.5 ± 5 °C', '41.5 ± 5 °C (106.7 ± 9 °F)'],
  ['a reserve of 15 K', 'a reserve of 15 K'],
  ['25.4 mm (on the diameter)', '25.4 mm (1 in) (on the diameter)'],
])('%s', (mm, beside) => {
  expect(besideInches(mm)).toBe(beside);
  expect(besideInches(beside)).toBe(beside);
});

it('writes inches to a tenth of a thousandth', () => {
  expect(inchFigure(13.97)).toBe('0.5500');
});
