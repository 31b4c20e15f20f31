import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeLivePage } from '../../src/work/live-page.js';

const PAGE =
  '<!doctype html><title>Leadwright</title><script type="application/json" id="sheet">""</script><script>1</script>';
const folder = () => mkdtempSync(join(tmpdir(), 'live-'));

describe('writeLivePage', () => {
  it('writes the page as it was built, and replaces an earlier one', async () => {
    const cwd = folder();
    await writeLivePage('a.html', undefined, cwd, PAGE);
    expect(readFileSync(join(cwd, 'a.html'), 'utf8')).toBe(PAGE);
    await writeLivePage('a.html', 'name: b', cwd, PAGE);
    expect(readFileSync(join(cwd, 'a.html'), 'utf8')).toContain('id="sheet">"name: b"</script>');
  });

  it.each(['</script><script>alert(1)</script>', '<!--', '$&', '"quoted"\nα'])(
    'holds a sheet of any letters as letters: %j',
    async (sheet) => {
      const cwd = folder();
      await writeLivePage('a.html', sheet, cwd, PAGE);
      const text = readFileSync(join(cwd, 'a.html'), 'utf8');
      expect(text.match(/<\/script>/g)).toHaveLength(2);
      expect(JSON.parse(/id="sheet">(.*?)<\/script>/s.exec(text)![1]!)).toBe(sheet);
    },
  );

  it('leaves any other file alone, in one line', async () => {
    const cwd = folder();
    writeFileSync(join(cwd, 'a.html'), 'mine');
    await expect(writeLivePage('a.html', undefined, cwd, PAGE)).rejects.toThrow(
      '--to: a.html; is another file, and is not overwritten',
    );
    expect(readFileSync(join(cwd, 'a.html'), 'utf8')).toBe('mine');
    expect(existsSync(join(cwd, 'b.html'))).toBe(false);
  });
});
