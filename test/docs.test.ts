import { existsSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { startSheet } from '../src/pipeline/start-sheets.js';
import { call, callFolder } from './support/call.js';

// README and guides work as typed: what a shell block says is called, what a console block shows comes out, sheets are read,
// links lead somewhere, options exist.

const ROOT = join(import.meta.dirname, '..');
const GUIDES = readdirSync(join(ROOT, 'docs'))
  .filter((file) => file.endsWith('.md'))
  .map((file) => `docs/${file}`);
const PAGES = ['README.md', ...GUIDES, 'docs/fleet/README.md', 'docs/in-a-page/README.md'];
const textOf = (page: string) => readFileSync(join(ROOT, page), 'utf8');

/** The blocks of a page in a language. */
function blocks(text: string, language: string): string[] {
  return [...text.matchAll(new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\`$`, 'gm'))].map(([, inner]) => inner!);
}

/** A folder as the guides have it: presets at hand, sheets of one's own under the names that they use. */
function workshop(): string {
  const cwd = callFolder();
  symlinkSync(join(ROOT, 'presets'), join(cwd, 'presets'));
  return cwd;
}

/** Sheets that a guide takes as written before, where it does not write them itself. */
function lendSheets(cwd: string, words: readonly string[]): void {
  for (const word of words) {
    const kind = { 'my-nut.yaml': 'nut', 'my-adapter.yaml': 'adapter', 'my-fleet.yaml': 'fleet' }[word];
    if (!kind || existsSync(join(cwd, word))) continue;
    const text = startSheet(kind);
    writeFileSync(join(cwd, word), existsSync(join(cwd, 'profiles')) ? withProfile(text) : text);
  }
}

/** The same sheet by the profile of the invented coupon. */
function withProfile(sheet: string): string {
  return sheet.replace(/^printer: .*\n/m, '').replace(/^material: .*$/m, 'profile: pa12-workshop');
}

/** The words of a command line; a remark behind it is none. */
function wordsOf(line: string): string[] {
  return [...line.replace(/\s+#.*$/, '').matchAll(/'([^']*)'|"([^"]*)"|(\S+)/g)].map(([, a, b, c]) => a ?? b ?? c!);
}

describe.each(PAGES)('%s', (page) => {
  const text = textOf(page);

  it('links to what is there', () => {
    const links = [...text.matchAll(/\]\(([^)\s]+)\)/g)].map(([, to]) => to!).filter((to) => !/^https?:/.test(to));
    const missing = links.filter((link) => {
      const [to = '', anchor] = link.split('#');
      const file = to === '' ? page : join(dirname(page), to);
      if (!existsSync(join(ROOT, file))) return true;
      return anchor !== undefined && !anchorsOf(textOf(file)).includes(anchor);
    });
    expect(missing).toEqual([]);
  });

  it('shows what its commands print', async () => {
    const cwd = workshop();
    for (const block of blocks(text, 'console')) {
      let printed = '';
      for (const line of block.split('\n').filter((one) => one.startsWith('$ '))) {
        const { stdout, stderr } = await call(cwd, wordsOf(line).slice(2));
        printed += `${line}\n${stdout}${stderr}`;
      }
      expect(printed.trim()).toBe(block.trim());
    }
  });

  it('has sheets that are read', async () => {
    const cwd = workshop();
    for (const [i, block] of blocks(text, 'yaml').entries()) {
      if (!/^(?:part|major): /m.test(block)) continue;
      writeFileSync(join(cwd, `${i}.yaml`), block);
      const { code, stderr } = await call(cwd, [block.startsWith('part') ? 'check' : 'identify', `${i}.yaml`]);
      expect(code, stderr).toBeLessThan(2);
    }
  });

  it('has commands that work as typed, one after the other', async () => {
    const cwd = workshop();
    const lines = blocks(text, 'sh').flatMap((block) => block.split('\n'));
    for (const line of lines.filter((one) => one.startsWith('leadwright '))) {
      const words = wordsOf(line).slice(1);
      if (words[0] === 'compare') continue; // of two folders that only the reader has
      lendSheets(
        cwd,
        words.filter((_, i) => words[i - 1] !== '--to'),
      );
      // forms are filled in by hand
      const filled = words[0] === 'calibrate' && !words[1]!.startsWith('presets/') ? FORMS[words[1]!] : undefined;
      if (filled) writeFileSync(join(cwd, words[1]!), filled(readFileSync(join(cwd, words[1]!), 'utf8')));
      const quick = words[0] === 'fleet' && !words.includes('--dry-run') ? ['--dry-run'] : [];
      const { code, stderr } = await call(cwd, [...words, ...quick]);
      expect(code, `${line}\n${stderr}`).toBe(0);
    }
  });
});

/** What a person fills into the forms of the guides. */
const FORMS: Readonly<Record<string, (form: string) => string>> = {
  'read.yaml': () => startSheet('demo-results').replace(/^profile: \S+/m, 'profile: my-coupon'),
  'trial.yaml': (form) => form.replace(/^goes: *#/m, 'goes: by-hand #').replace(/^play: *#/m, 'play: 0.2 mm #'),
};

describe('README and guides', () => {
  it('keep the README within what is read', () => {
    expect(textOf('README.md').split('\n').length).toBeLessThanOrEqual(220);
  });

  it('name only commands and options that are there', async () => {
    const cwd = callFolder();
    const commands = [...(await call(cwd, ['--help'])).stdout.matchAll(/^ {2}leadwright (\w+)/gm)].map(
      ([, one]) => one!,
    );
    const helps = await Promise.all(commands.map((one) => call(cwd, ['help', one])));
    const options = new Set(helps.flatMap(({ stdout }) => stdout.match(/--[a-z][a-z-]+/g) ?? []));
    const wrong = PAGES.flatMap((page) => {
      const text = textOf(page).replace(/^npx .*$/gm, ''); // other people's commands
      const named = [...text.matchAll(/`leadwright ([a-z]+)/g)].map(([, one]) => one!);
      const asked = (text.match(/(?<=[\s`])--[a-z][a-z-]+/g) ?? []).filter((one) => !options.has(one));
      return [...named.filter((one) => !commands.includes(one)), ...asked].map((one) => `${page}: ${one}`);
    });
    expect(wrong).toEqual([]);
  });
});

/** The anchors that headings give, as Markdown hosts name them. */
function anchorsOf(text: string): string[] {
  return [...text.matchAll(/^#+ (.*)$/gm)].map(([, title]) =>
    title!
      .toLowerCase()
      .replace(/[^\p{L}\p{N} _-]/gu, '')
      .replaceAll(' ', '-'),
  );
}
