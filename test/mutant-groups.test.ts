import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { FOLDERS, globbed, sourcesOf } from '../scripts/mutants/groups.mjs';

const ROOT = join(import.meta.dirname, '..');
const filesOf = (folder: string) =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .map((file) => join(folder, file))
    .filter((file) => file.endsWith('.ts'));
const sources = filesOf('src');

/** Laws, what judges, and checks. */
const JUDGES = [
  'src/mechanics/**/*.ts',
  'src/judge/*.ts',
  'src/fit/**/*.ts',
  'src/**/checks/**/*.ts',
  'src/**/{checks,twin-checks,grip-checks,held-checks,profile-checks}.ts',
].map(globbed);

/** What is measured on solids is not reached without a kernel. */
const MEASURES = ['src/pipeline/*.ts', 'src/parts/**/{mate,thread-mate,virtual-mate}.ts'].map(globbed);

/** What comes to an outcome of a check, wherever it stands. */
function findsOutcome(file: string): boolean {
  return /\b(valued|notJudged)\(/.test(readFileSync(join(ROOT, file), 'utf8'));
}

/** What works out a force, a moment or a stress, wherever it stands. */
function worksOutForce(file: string): boolean {
  return /^ \* @returns .*\[(N|N·mm|MPa)\]/m.test(readFileSync(join(ROOT, file), 'utf8'));
}

/** Laws that the reference tells, each with its file. */
const TOLD = [...readFileSync(join(ROOT, 'docs/reference/laws.md'), 'utf8').matchAll(/^`(src\/[^`]+)`$/gm)].map(
  ([, file]) => file!,
);

it('every law and every check is in a group of mutants', () => {
  const groups = Object.keys(FOLDERS).map((group) => globbed(sourcesOf(group)));
  const isJudge = (file: string) =>
    JUDGES.some((one) => one.test(file)) ||
    TOLD.includes(file) ||
    worksOutForce(file) ||
    (findsOutcome(file) && !MEASURES.some((one) => one.test(file)));
  const judges = sources.filter(isJudge);
  expect(judges.length).toBeGreaterThan(100);
  expect(TOLD.length).toBeGreaterThan(50);
  expect(judges.filter((file) => !groups.some((group) => group.test(file)))).toEqual([]);
  expect(sources.filter((file) => /-?checks\.ts$/.test(file) && !judges.includes(file))).toEqual([]);
});

it('a group has sources, and each of its globs names tests that are there', () => {
  const tests = filesOf('test').filter((file) => file.endsWith('.test.ts'));
  const matches = (files: readonly string[], glob: string) => files.some((file) => globbed(glob).test(file));
  const alternatives = (glob: string) => {
    const [, before, words, after] = /^([^{]*)\{([^}]*)\}(.*)$/.exec(glob) ?? [];
    return words === undefined ? [glob] : words.split(',').map((word) => `${before}${word}${after}`);
  };
  const each = (glob: string) => alternatives(glob).flatMap(alternatives);
  for (const [group, globs] of Object.entries(FOLDERS)) {
    expect(
      each(sourcesOf(group)).filter((one) => !matches(sources, one)),
      group,
    ).toEqual([]);
    expect(
      globs.flatMap(each).filter((one) => !matches(tests, one)),
      group,
    ).toEqual([]);
  }
});
