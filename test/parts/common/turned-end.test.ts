import { expect, it } from 'vitest';
import { design } from '../../../src/pipeline/design.js';
import { couplingSheet } from '../../support/coupling-sheets.js';
import { LOCATED } from '../../support/end-holder-sheets.js';
import { changed } from '../../support/nut-sheets.js';

const refusal = (sheet: object) => {
  try {
    design(sheet);
    return '';
  } catch (error) {
    return String(error);
  }
};

it('refuses an end wider than the screw that it is turned from', () => {
  const turned = (diameter: string) => couplingSheet({ turned_end: { diameter, length: 20 } });
  expect(refusal(turned('9.98 ± 0.03 mm'))).toMatch(/turned_end\.diameter: 9\.98 mm; must be at most 8\.1[58] mm/);
  expect(refusal(turned('8.1 ± 0.03 mm'))).toBe('');
  expect(refusal(changed(LOCATED, { turned_end: 60 }))).toMatch(/turned_end: 60 mm; must be at most/);
});
