import { expect, it } from 'vitest';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';

const sheet = (revision: unknown) => ({ part: 'nut', name: 'n', screw: 'Tr8x2', flange: 'round-22-on-16', revision });

it.each(['A', 2, '1.3'])('a revision of %j stands in the report', (revision) => {
  expect(check(design(sheet(revision))).revision).toBe(String(revision));
});

it('changes nothing else', () => {
  const { revision: _, ...rest } = design(sheet('B'));
  expect(JSON.stringify(rest)).toBe(JSON.stringify(design(sheet(undefined))));
});

it.each(['a line of words', '', 'A/B', null])('refuses %j', (revision) => {
  expect(() => design(sheet(revision))).toThrow(/^revision/);
});
