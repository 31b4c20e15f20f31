import { describe, expect, it } from 'vitest';
import { namingOptions, paired, typedFields } from '../../src/cli/typed.js';
import { replaced } from '../../src/sheet/merge.js';
import { InputError } from '../../src/units/faults.js';

describe('a pair', () => {
  const read = paired('count', 'length', '10=20');
  it('is a map of two', () => {
    expect(read('10=1 in', '--crests')).toEqual({ count: 10, length: '1 in' });
  });
  it.each(['10', '=10', '10=', ''])('refuses %j', (text) => {
    expect(() => read(text, '--crests')).toThrow(/^--crests: .*must be two values such as 10=20$/);
  });
});

it('typed options stand where their fields belong; others are left out', () => {
  const fields = {
    steps: { path: 'duty.motor.steps' },
    load: { path: 'duty.load' },
    gear: { path: 'duty.motor.gear' },
  };
  expect(typedFields({ steps: '400', load: '5 N', json: true }, fields)).toEqual({
    duty: { motor: { steps: 400 }, load: '5 N' },
  });
});

it('maps are laid over each other, values and lists are replaced', () => {
  const base = { duty: { load: 1, motor: { steps: 200 } }, heights: [1, 2] };
  expect(replaced(base, { duty: { motor: { gear: 2 } }, heights: [3] })).toEqual({
    duty: { load: 1, motor: { steps: 200, gear: 2 } },
    heights: [3],
  });
  expect(base).toEqual({ duty: { load: 1, motor: { steps: 200 } }, heights: [1, 2] });
});

it('names an option only for a fault of what was typed', () => {
  const fields = { load: { path: 'duty.load' }, heights: { path: 'duty.layer_heights' } };
  const faults = ['duty.load', 'duty.load_case', 'duty.layer_heights[1]', 'duty.span'].map((path) => ({
    path,
    value: 'x',
    allowed: 'is wrong',
    at: { line: 1, column: 1 },
  }));
  const thrown = () =>
    namingOptions({ load: '1', heights: '1' }, fields, () => {
      throw new InputError(faults);
    });
  try {
    thrown();
    expect.unreachable();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    expect((error as InputError).faults.map(({ path }) => path)).toEqual([
      '--load',
      'duty.load_case',
      '--heights',
      'duty.span',
    ]);
  }
});
