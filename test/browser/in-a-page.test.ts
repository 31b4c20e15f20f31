import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import type { BrowserContext } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makePart } from '../../src/pipeline/make.js';
import { openBrowser, openWatched, seriousFaults } from '../support/browser.js';

const ROOT = join(import.meta.dirname, '../..');
const EXAMPLE = join(ROOT, 'docs/in-a-page');
const folder = mkdtempSync(join(tmpdir(), 'leadwright-in-a-page-'));

let browser: BrowserContext;
beforeAll(async () => {
  cpSync(EXAMPLE, folder, { recursive: true });
  execFileSync(process.execPath, ['scripts/bundle-for-pages.mjs', join(folder, 'library')], { cwd: ROOT });
  await build({
    absWorkingDir: ROOT,
    entryPoints: [join(EXAMPLE, 'nut.js')],
    outfile: join(folder, 'nut.bundle.js'),
    alias: { leadwright: join(folder, 'library/index.js') },
    bundle: true,
    format: 'iife',
    loader: { '.wasm': 'binary' },
    logLevel: 'silent',
  });
  browser = await openBrowser();
}, 120_000);
afterAll(() => browser.close());

describe('the library in a page', () => {
  it('makes the bytes that the library makes outside, from the disk, and asks for nothing', async () => {
    const { page, complaints, requests } = await openWatched(browser, join(folder, 'index.html'));
    const sheet = await page.locator('#sheet').inputValue();
    await page.locator('#make').click();
    const link = page.locator('#files a', { hasText: '.stl' });
    await link.waitFor();
    const [download] = await Promise.all([page.waitForEvent('download'), link.click()]);
    const { report, files } = await makePart(sheet);
    expect(await page.locator('#answer').textContent()).toBe(report.sentence);
    const stl = files.find(({ name }) => name === download.suggestedFilename())!;
    expect(readFileSync(await download.path()).equals(Buffer.from(stl.bytes))).toBe(true);
    expect(complaints).toEqual([]);
    expect(requests.filter((url) => !/^(file|blob):/.test(url))).toEqual([]);
    expect(await seriousFaults(page)).toEqual([]);
    await page.close();
  });

  it('tells a mistake of the sheet in one line, and makes nothing', async () => {
    const { page, complaints } = await openWatched(browser, join(folder, 'index.html'));
    await page.locator('#sheet').fill('part: nut\nname: a\nscrew: Tr8x2\nbody: {diameter: wide, length: 14}\n');
    await page.locator('#make').click();
    await expect.poll(() => page.locator('#answer').textContent()).toMatch(/body\.diameter: wide/);
    expect(await page.locator('#files a').count()).toBe(0);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it('bundles where a bundler is told nothing but that it is for a browser: the package says the rest', () => {
    const { exports } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
    expect(Object.keys(exports['.'])).toEqual(['types', 'browser', 'default']);
  });
});
