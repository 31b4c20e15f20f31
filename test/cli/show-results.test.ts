import { describe, expect, it } from 'vitest';
import { showResults } from '../../src/cli/show-results.js';
import { fault } from '../../src/units/faults.js';
import type { SheetResult } from '../../src/work/make-sheets.js';

function shown(results: readonly SheetResult[], env: Record<string, string> = {}) {
  const texts = { stdout: '', stderr: '' };
  const stream = (name: keyof typeof texts) => ({
    write: (text: string) => {
      texts[name] += text;
    },
  });
  async function* stdin() {}
  const io = { stdout: stream('stdout'), stderr: stream('stderr'), stdin, cwd: '/', env, isTty: false };
  const code = showResults(results, io, { json: true, writes: true, all: false });
  return { code, stderr: texts.stderr, answer: JSON.parse(texts.stdout) };
}

const broken: SheetResult = { file: 'a.yaml', error: new Error('no density\nsecond line') };
const wrong: SheetResult = { file: 'b.yaml', error: fault('size', -1, 'must be above 0') };

describe('showResults', () => {
  it('shows a fault of ours in one line, asks to report it, and exits 3 above all', () => {
    const { code, stderr, answer } = shown([broken, wrong]);
    expect(code).toBe(3);
    expect(stderr).toBe('a.yaml: internal error, please report: no density\nb.yaml: size: -1; must be above 0\n');
    expect(answer).toEqual([
      { name: 'a.yaml', internal: 'no density\nsecond line' },
      { name: 'b.yaml', error: [{ path: 'size', line: null, column: null, value: '-1', allowed: 'must be above 0' }] },
    ]);
  });

  it('shows the stack only to those who ask', () => {
    expect(shown([broken], { LEADWRIGHT_DEBUG: '1' }).stderr).toContain('show-results.test.ts');
  });

  it('gives one object for one sheet', () => {
    expect(shown([wrong]).answer).toMatchObject({ name: 'b.yaml' });
  });
});
