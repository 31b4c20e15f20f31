import { expect, it } from 'vitest';
import { meantBy, meantWords } from '../../../src/standards/threads/trade-words.js';

it.each([
  ['Tr8x8', ['Tr8x8(P2)']],
  ['8x8', ['Tr8x8(P2)']],
  ['8x2', ['Tr8x2']],
  ['8 × 1.25', ['M8']],
  ['Tr8*2', ['Tr8x2']],
  ['hello', []],
  ['8', []],
])('%s means %j', (text, names) => {
  expect(meantBy(text)).toEqual(names);
});

it('a diameter alone stands for all screws of it, never for a V thread of the same figure', () => {
  expect(meantBy('T8')).toEqual(expect.arrayContaining(['Tr8x2', 'Tr8x4(P2)', 'Tr8x8(P2)']));
  expect(meantBy('T8').every((name) => name.startsWith('Tr8'))).toBe(true);
  expect(meantWords('T8')).toMatch(/The travel of one turn tells them apart$/);
});
