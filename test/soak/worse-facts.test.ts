import { describe, expect, it } from 'vitest';
import { AXES, DEMOS, OWN, STARTS } from '../support/untold/bases.js';
import { betterThough } from '../support/worse/compare.js';

describe('what is harder on a part makes no check better', () => {
  it.each([...STARTS, ...DEMOS, ...OWN, ...AXES])('of %s', (_, sheet) => {
    expect(betterThough(sheet)).toEqual([]);
  });
});
