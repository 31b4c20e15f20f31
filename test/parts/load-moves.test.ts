import { expect, it } from 'vitest';
import { DEMOS, OWN, STARTS } from '../support/untold/bases.js';
import { findingsOf } from '../support/untold/compare.js';
import { type Sheet, told } from '../support/untold/sheet.js';

/** Checks that the load moves through what they name: a spring that is chosen by it, a stall that it outweighs. */
const THROUGH = ['spring-travel', 'key-bending', 'thread-stall'];

const CARRIED = [...STARTS, ...DEMOS, ...OWN].filter(([, { part }]) => part === 'nut' || part === 'adapter');

/** Of a sheet, checks that find another figure under three times the load, and do not name it. */
function silent(sheet: Sheet, load: number): string[] {
  const [less, more] = [load, 3 * load].map((one) => findingsOf(told(sheet, 'duty.load', one)) ?? []);
  return less!
    .filter((row) => (more!.find(({ id }) => id === row.id)?.value ?? row.value) !== row.value)
    .filter(({ id, moves }) => !/\bduty\.(load|pull)\b/.test(moves) && !THROUGH.includes(id))
    .map(({ id }) => id);
}

// what the work lifts with is judged by the checks that name the load: one that kept silent of it would be left out
it.each(CARRIED)('names the load in every check of %s that it moves', (_, sheet) => {
  expect([1, 10, 80, 300].flatMap((load) => silent(sheet, load))).toEqual([]);
});
