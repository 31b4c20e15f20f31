import { describe, expect, it } from 'vitest';
import { type Check, hard, notJudged, valued } from '../../../src/judge/check.js';
import { runChecks } from '../../../src/judge/run-checks.js';
import { askingPlastic } from '../../../src/parts/common/plastic-told.js';
import { exactly } from '../../../src/units/measured.js';
import { couplingSheet } from '../../support/coupling-sheets.js';
import { MOUNTED } from '../../support/motor-plate-sheets.js';
import { changed, nutSheet } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';
import { CLAMP } from '../../support/sleeve-sheets.js';

interface Design {
  readonly reserve?: number | 'open';
  readonly material: { readonly unnamed?: true };
}
const reserve: Check<Design> = {
  id: 'heat',
  group: 'g',
  question: 'q',
  title: 'Reserve',
  unit: 'K',
  source: 's',
  moves: 'm',
  limits: hard({ min: 20 }),
  run: ({ reserve: left }) =>
    left === undefined ? undefined : left === 'open' ? notJudged('room') : valued(exactly(left), ''),
};
const found = (design: Design) => runChecks([askingPlastic(reserve)], design, {})[0];

describe('a plastic that nobody names', () => {
  const material = { unnamed: true } as const;

  it('is asked for where the figures of another pass', () => {
    expect(found({ reserve: 20, material })).toMatchObject({ word: 'not-told', missing: ['material.preset'] });
    expect(found({ reserve: 20, material: {} })).toMatchObject({ word: 'yes', value: 20 });
  });

  it('fails where even they do, and leaves open what is open', () => {
    expect(found({ reserve: 19, material })).toMatchObject({ word: 'no', value: 19 });
    expect(found({ reserve: 'open', material })).toMatchObject({ missing: ['room'] });
    expect(found({ material })).toBeUndefined();
  });

  it.each([
    ['nut', nutSheet()],
    ['coupling', couplingSheet()],
    ['sleeve', changed(CLAMP, {})],
    ['motor plate', changed(MOUNTED, {})],
  ])('is asked for of a %s', (_, sheet) => {
    const of = (own: object) => findingOf({ ...sheet, material: own }, 'heat')!;
    const shrink = { plane: '0.5 %', axial: '0.3 %' };
    expect(of({ shrink })).toMatchObject({ word: 'not-told', missing: ['material.preset'] });
    expect(of({ shrink, preset: 'pc' }).word).toBe('yes');
    // glass at 147 °C, as the strengths of PC go
    const whole = { shrink, softening: '130 C', tensile: '55 MPa', heat: { glass: '147 C' } };
    expect(of(whole).word).toBe('yes');
    for (const key of ['softening', 'tensile', 'heat'] as const)
      expect(of({ ...whole, [key]: undefined }).missing, key).toEqual(['material.preset']);
  });
});
