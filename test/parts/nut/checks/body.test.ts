import { expect, it } from 'vitest';
import { nutSheet } from '../../../support/nut-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

const wall = (changes: Record<string, unknown>) => findingOf(nutSheet(changes), 'wall')!;

it('a wall is told in lines: (17 − 10.8)/2 = 3.1 mm of Tr10x2, 6.2 lines of 0.5 mm', () => {
  expect(wall({ printer: { line_width: 0.5 } }).message).toBe('3.1 mm, 6.2 lines');
});

it('the wall is as uncertain as half of the reading over the crests', () => {
  // read 9.9 ± 0.2: thread 9.9 + 0.5 + 0.3 = 10.7; (13 − 10.7)/2 = 1.15 ± 0.1, and the slimmest body 10.7 + 2 · (1.6 + 0.1)
  const row = wall({ screw: { designation: 'Tr10x2', major: '9.9 ± 0.2 mm' }, body: { diameter: 13 } });
  expect([row.least, row.value, row.most]).toEqual([1.05, 1.15, 1.25].map((one) => expect.closeTo(one, 6)));
  expect(row.message).toContain('a body of 14.1 mm is the slimmest');
});

it('is wanted 1.6 mm thick, and four nozzles where these are wider', () => {
  expect(wall({})).toMatchObject({ limit: { min: 1.6 }, fail_limit: { min: 1.6 } });
  expect(wall({ printer: { nozzle: 0.6, layer: 0.2 } })).toMatchObject({
    limit: { min: 2.4 },
    fail_limit: { min: 1.6 },
  });
});
