import { expect, it } from 'vitest';
import { BELTED, LOADED, MOUNTED } from '../../support/motor-plate-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

type Tree = Readonly<Record<string, unknown>>;
const places = (base: Tree, changes: Tree = {}) => findingOf(changed(base, changes), 'locating-bearings');
const ALONE = { thrust_bearing: 'no', bearing_on: undefined };

it.each<[string, Tree, Tree, number]>([
  ['a thrust bearing', MOUNTED, {}, 1],
  ['a screw that hangs in a coupling that gives', MOUNTED, { ...ALONE, mounting: 'motor-above' }, 0],
  ['a screw that stands in one', MOUNTED, { ...ALONE, mounting: 'motor-below' }, 0],
  ['a screw that lies in one', MOUNTED, { ...ALONE, mounting: 'horizontal' }, 0],
  ['a holder at its far end', MOUNTED, { ...ALONE, locating_holder: 'yes' }, 1],
  ['holder and thrust bearing', MOUNTED, { locating_holder: 'yes' }, 2],
  ['a rigid sleeve', MOUNTED, { ...ALONE, coupling: 'rigid', mounting: 'motor-above' }, 1],
  ['a disc that it stands on', LOADED, {}, 1],
  ['a disc that it hangs below', LOADED, { mounting: 'motor-above' }, 0],
])('%s carries the screw along its axis: %s', (_, base, changes, count) => {
  expect(places(base, changes)).toMatchObject({ value: count, verdict: count === 1 ? 'pass' : 'fail' });
});

it('says that two places fight each other when the screw warms', () => {
  expect(places(MOUNTED, { locating_holder: 'yes' })!.message).toContain('they fight each other');
});

it('asks for the coupling where nothing else carries, and nothing of a belt', () => {
  expect(places(MOUNTED, { ...ALONE, coupling: undefined })!.missing).toEqual(['coupling']);
  expect(places(MOUNTED, { coupling: undefined })!.verdict).toBe('pass');
  expect(places(MOUNTED, { ...ALONE, locating_holder: 'yes', coupling: undefined })!.verdict).toBe('pass');
  // where the motor is matters to a disc alone, and to that only where nothing else carries
  expect(places(MOUNTED, { ...ALONE, mounting: undefined })!.verdict).toBe('fail');
  expect(places(LOADED, { thrust_bearing: 'yes', mounting: undefined })!.verdict).toBe('pass');
  expect(places(BELTED)).toBeUndefined();
});
