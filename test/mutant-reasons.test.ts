import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { FOLDERS } from '../scripts/mutants/groups.mjs';
import { listed, places, withoutReason } from '../scripts/mutants/reasons.mjs';

const LISTS = join(import.meta.dirname, 'mutants-left');

it('reads the places of a list: files, lines beside them, code left alone', () => {
  const bullets = [
    '`hold.ts` 12, 15 `< 7.5` → `<=`, `seat.ts:40`, `:63`: meets 1.25 to the last bit.',
    '9 `>=`: equal.',
  ];
  expect([...places('parts/one/own.ts', bullets)].sort()).toEqual([
    'hold.ts:12',
    'hold.ts:15',
    'own.ts:9',
    'seat.ts:40',
    'seat.ts:63',
  ]);
});

it('tells which mutants live without a reason', () => {
  const at = (file: string, line: number) => ({ file: `src/judge/${file}`, location: { start: { line } } });
  const listedOne = at('accept.ts', Number(/`accept\.ts:(\d+)`/.exec(listed('judge', LISTS).join())?.[1]));
  const bare = [at('accept.ts', 99999), at('unknown.ts', 1)];
  expect(withoutReason('judge', [listedOne, ...bare], LISTS)).toEqual(bare);
});

it('lists under the names of groups only', () => {
  const titles = readdirSync(LISTS).flatMap((file) =>
    [...readFileSync(join(LISTS, file), 'utf8').matchAll(/^## (.*)$/gm)].map((found) => found[1]),
  );
  expect(titles.filter((title) => FOLDERS[title as keyof typeof FOLDERS] === undefined)).toEqual([]);
  expect(new Set(titles).size).toBe(titles.length);
});
