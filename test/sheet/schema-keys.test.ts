import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { map, orShort, quantity } from '../../src/sheet/fields.js';
import { knownKeys } from '../../src/sheet/schema-keys.js';

const leaf = map({ a: quantity('length'), b: z.string() });
const schema = map({
  plain: leaf.optional(),
  short: orShort(leaf, (a) => ({ a }), 'quantity').optional(),
  list: z.array(leaf),
  record: z.record(z.string(), leaf),
  either: z.union([leaf, map({ b: z.string(), c: z.string() })]).optional(),
});

describe('knownKeys', () => {
  it.each([
    [[], ['plain', 'short', 'list', 'record', 'either']],
    [['plain'], ['a', 'b']],
    [['short'], ['a', 'b']],
    [
      ['list', 3],
      ['a', 'b'],
    ],
    [
      ['record', 'any'],
      ['a', 'b'],
    ],
    [['either'], ['a', 'b', 'c']],
    [['plain', 'a'], []],
    [['nothing'], []],
    [['__proto__'], []],
    [['constructor', 'prototype'], []],
  ])('at %j', (path, keys) => {
    expect(knownKeys(schema, path)).toEqual(keys);
  });
});
