import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkAxis } from '../../src/axis/check.js';
import { designAxis } from '../../src/axis/design.js';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { START_KINDS } from '../../src/sheet/start-kinds.js';
import { call, callFolder } from '../support/call.js';

/** A line that is commented out, as the sheets say: a #, a blank, a field. */
const COMMENTED = /^( *)# ([a-z_]+: .*)$/;
const FILES = ['axis', 'fleet', 'results', 'trial', 'demo-results'];
const PARTS = START_KINDS.filter((kind) => !FILES.includes(kind));

/** The start sheet of a kind with each of its commented lines put in place, one at a time. */
function uncommented(kind: string) {
  const lines = startSheet(kind).split('\n');
  return lines.flatMap((line, i) => {
    const [, indent, field] = COMMENTED.exec(line) ?? [];
    return field === undefined ? [] : [{ field, text: lines.with(i, `${indent}${field}`).join('\n') }];
  });
}

describe.each(PARTS)('the start sheet of a %s', (kind) => {
  it('can be made as it is', () => {
    const { checks } = check(design(startSheet(kind)));
    expect(checks.filter(({ verdict }) => verdict === 'fail').map(({ message }) => message)).toEqual([]);
  });

  const lines = uncommented(kind);
  it.runIf(lines.length > 0).each(lines)('takes $field', ({ text }) => {
    expect(() => check(design(text))).not.toThrow();
  });
});

describe('the start sheet of an axis', () => {
  it('can be made as it is', () => {
    const { checks } = checkAxis(designAxis(startSheet('axis')));
    expect(checks.filter(({ verdict }) => verdict === 'fail').map(({ id, message }) => `${id}: ${message}`)).toEqual(
      [],
    );
  });

  it.each(uncommented('axis'))('takes $field', ({ text }) => {
    expect(() => checkAxis(designAxis(text))).not.toThrow();
  });
});

describe('the start file of a fleet', () => {
  it.each([{ field: 'what it has', text: startSheet('fleet') }, ...uncommented('fleet')])(
    'takes $field',
    async ({ text }) => {
      const cwd = callFolder();
      writeFileSync(join(cwd, 'fleet.yaml'), text);
      const { code, stderr } = await call(cwd, ['fleet', 'fleet.yaml', '--dry-run']);
      expect(code, stderr).toBe(0);
    },
  );
});

it('has no commented lines where every line waits to be filled in', () => {
  expect(['results', 'trial'].flatMap(uncommented)).toEqual([]);
});

it('tells what a file is for where it is no sheet of a part, and names the axis among what may be meant', () => {
  expect(() => design('fleet: mine\nmachines: {}\n')).toThrow(
    /^1:8 fleet: mine; makes this the file of a fleet[^\n]*$/,
  );
  expect(() => design('part: axes\nname: a\n')).toThrow(/gauge, axis; did you mean axis\?$/);
});
