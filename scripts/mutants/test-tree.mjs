// The part of vitest's interface that the tests use, kept as a list of tests that can be run again one by one.
import { format } from 'node:util';

export { expect, vi } from 'vitest';

/** Every test that was declared so far: its file, its name, its work, the suites around it from the outermost in. */
export const TESTS = [];

let suites = [];
let file = '';

/** Declares the tests of a file. */
export async function collect(path, load) {
  file = path;
  suites = [{ before: [], after: [] }];
  await load();
}

export function describe(name, body) {
  const outer = suites;
  suites = [...outer, { name, before: [], after: [] }];
  body();
  suites = outer;
}
describe.each = (rows) => (name, body) => {
  for (const row of rows) describe(titled(name, row), () => body(...spread(row)));
};

export function it(name, ...rest) {
  const path = [...suites.flatMap((suite) => suite.name ?? []), name].join(' ');
  const run = rest.find((one) => typeof one === 'function');
  TESTS.push({ id: `${file}#${TESTS.length} ${path}`, file, name: path, suites, run });
}
it.each =
  (rows) =>
  (name, ...rest) => {
    for (const row of rows)
      it(titled(name, row), ...rest.map((one) => (typeof one === 'function' ? () => one(...spread(row)) : one)));
  };
it.runIf = (holds) => (holds ? it : () => {});
export const test = it;

export const beforeAll = (work) => suites.at(-1).before.push(work);
export const afterAll = (work) => suites.at(-1).after.push(work);

function spread(row) {
  return Array.isArray(row) ? row : [row];
}

/** `%s` takes the next value of the row, `$key` a field of it. */
function titled(name, row) {
  const values = spread(row).slice(0, (name.match(/%[a-z]/g) ?? []).length);
  return format(name, ...values).replace(/\$(\w+)/g, (whole, key) => row?.[key] ?? whole);
}
