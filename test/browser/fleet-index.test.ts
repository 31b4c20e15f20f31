import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawn, openBrowser, openWatched, seriousFaults } from '../support/browser.js';
import { call, callFolder } from '../support/call.js';
import type { ReadManifest } from '../support/fleet-folder.js';
import { nutSheet } from '../support/nut-sheets.js';

const FLEET = join(import.meta.dirname, '../../presets/fleets/demo-fleet.yaml');

describe('the index of the shipped fleet', () => {
  let browser: BrowserContext;
  let page: Page;
  let complaints: string[] = [];
  let requests: string[] = [];
  let manifest: ReadManifest;
  const out = join(callFolder(), 'out');

  beforeAll(async () => {
    browser = await openBrowser();
    const { code, stderr } = await call(callFolder(), ['fleet', FLEET, '--out', out, '--formats', 'stl,page']);
    expect([code, stderr]).toEqual([0, expect.anything()]);
    manifest = JSON.parse(readFileSync(join(out, 'manifest.json'), 'utf8')) as ReadManifest;
    ({ page, complaints, requests } = await openWatched(browser, join(out, 'index.html')));
  }, 300_000);
  afterAll(() => browser.close());

  const machines = () =>
    page
      .locator('details[data-machine]:visible')
      .evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset.machine));
  const all = () => manifest.machines.map(({ machine }) => machine.toLowerCase());

  it('shows every machine and part, and complains of nothing', async () => {
    expect(await machines()).toEqual(all());
    const pictures = await page.locator('article img').evaluateAll(async (images) => {
      for (const image of images as HTMLImageElement[]) image.loading = 'eager';
      await Promise.all((images as HTMLImageElement[]).map((image) => image.decode()));
      return (images as HTMLImageElement[]).map(({ naturalWidth }) => naturalWidth);
    });
    const distinct = new Set(manifest.parts.map(({ address }) => address));
    const axes = new Set(manifest.parts.filter(({ part }) => part === 'axis').map(({ address }) => address));
    expect(await page.locator('article').count()).toBe(distinct.size);
    // an axis is pictured on its own page, part by part
    expect(pictures).toHaveLength(distinct.size - axes.size);
    expect(Math.min(...pictures)).toBeGreaterThan(100);
    expect(complaints).toEqual([]);
    expect(requests.filter((url) => !url.startsWith(`file://${out}/`))).toEqual([]);
  });

  it('filters by machine, kind, verdict and material, and shows all again', async () => {
    const first = manifest.machines[0]!;
    await page.locator('#machine').fill(first.machine.toUpperCase());
    expect(await machines()).toContain(first.machine.toLowerCase());
    expect((await machines()).length).toBeLessThan(all().length);
    await page.locator('#machine').press('Enter');
    await page.getByRole('button', { name: 'Show all' }).click();
    expect(await machines()).toEqual(all());

    await page.selectOption('#kind', first.kind!);
    const same = manifest.machines.filter(({ kind }) => kind === first.kind);
    expect(await machines()).toEqual(same.map(({ machine }) => machine.toLowerCase()));
    await page.selectOption('#kind', '');

    const material = manifest.parts.map((row) => row.material).find((name) => name !== null)!;
    await page.selectOption('#material', material);
    const shown = await page
      .locator('li[data-part]:visible')
      .evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset.material!.split('|')));
    expect(shown.length).toBeGreaterThan(0);
    for (const materials of shown) expect(materials).toContain(material);
    await page.getByRole('button', { name: 'Show all' }).click();
    expect(complaints).toEqual([]);
  });

  it('leads to the page of each part, which draws it', async () => {
    const link = page.locator('li[data-part] a[href$="report.html"]').first();
    const path = await link.evaluate((one) => new URL((one as HTMLAnchorElement).href).pathname);
    const part = await openWatched(browser, decodeURIComponent(path));
    await drawn(part.page);
    expect(part.complaints).toEqual([]);
    await part.page.close();
  });

  it('has no serious fault of accessibility, by day and by night, and fits into 360 pixels', async () => {
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await seriousFaults(page), colorScheme).toEqual([]);
    }
    await page.setViewportSize({ width: 360, height: 740 });
    for (const way of ['by part', 'by machine']) {
      await page.getByLabel(way).check();
      expect(await page.evaluate(() => document.documentElement.scrollWidth), way).toBeLessThanOrEqual(360);
      expect(await seriousFaults(page), way).toEqual([]);
    }
  });
});

const MACHINES = 1000;
const VARIANTS = 10;

describe('the index of a thousand machines', () => {
  let browser: BrowserContext;
  let page: Page;
  let stdout = '';
  const cwd = callFolder();
  const index = join(cwd, 'out/hall/index.html');

  beforeAll(async () => {
    const nut = (name: string) =>
      nutSheet({ name, body: { length: 12 }, flange: { thickness: 5 }, screw: 'Tr10x3', material: 'petg' });
    writeFileSync(join(cwd, 'left.yaml'), JSON.stringify(nut('left')));
    writeFileSync(join(cwd, 'right.yaml'), JSON.stringify(nut('right')));
    const rows = Array.from({ length: MACHINES }, (_, i) =>
      ['left', 'right'].map(
        (role) => `m${String(i).padStart(4, '0')},${role},${role}.yaml,${12 + (i % VARIANTS) / 10}`,
      ),
    );
    writeFileSync(join(cwd, 'hall.csv'), `machine,role,sheet,body.length\n${rows.flat().join('\n')}\n`);
    ({ stdout } = await call(cwd, ['fleet', 'hall.csv', '--formats', 'stl']));
    browser = await openBrowser();
    ({ page } = await openWatched(browser, index, { width: 1440, height: 900 }));
  }, 300_000);
  afterAll(() => browser.close());

  const height = (of: Page) => of.evaluate(() => document.documentElement.scrollHeight);
  const told = () => page.locator('#count').textContent();

  it('is light and short', async () => {
    expect(await page.locator('*').count()).toBeLessThan(16_000);
    expect(await height(page)).toBeLessThan(20_000);
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await height(page)).toBeLessThan(60_000);
    await page.setViewportSize({ width: 1440, height: 900 });
  });

  it('tells the counts of the terminal and of the files', async () => {
    const files = readdirSync(join(cwd, 'out/hall/machines'), { recursive: true, encoding: 'utf8' });
    expect(files.filter((file) => file.endsWith('.stl'))).toHaveLength(2 * MACHINES);
    expect(stdout).toContain('1000 of 1000 machines complete');
    expect(stdout).toContain('2000 pieces to print, 2000 files for printers');
    expect(await page.locator('.figures').textContent()).toMatch(/1000 of 1000 machines complete.*2000 of 2000 parts/);
    expect(await told()).toBe('1000 of 1000 machines, 2000 parts, 2000 files');
    await page.getByLabel('by part').check();
    expect(await told()).toBe('20 of 20 distinct parts, 2000 pieces');
    expect(await page.locator('article:visible').count()).toBe(2 * VARIANTS);
    await page.getByLabel('by machine').check();
  });

  it('finds one of them, and opens it', async () => {
    await page.locator('#machine').fill('M0417');
    const found = page.locator('details[data-machine]:visible');
    expect(await found.count()).toBe(1);
    expect(await found.locator('a[download]:visible').count()).toBe(2);
    expect(await told()).toBe('1 of 1000 machines, 2 parts, 2 files');
    expect(await height(page)).toBeLessThan(2000);
    await page.getByRole('button', { name: 'Show all' }).click();
    expect(await told()).toBe('1000 of 1000 machines, 2000 parts, 2000 files');
  });

  it('opens, tells every machine and both ways to look without its script', async () => {
    const plain = await browser.browser()!.newContext({ javaScriptEnabled: false });
    const still = await plain.newPage();
    await still.goto(`file://${index}`);
    expect(await still.locator('.filters').isVisible()).toBe(false);
    await still.getByText('m0003', { exact: false }).first().click();
    expect(await still.locator('details[open] a[download]:visible').count()).toBe(2);
    await still.getByLabel('by part').check();
    expect(await still.locator('article:visible').count()).toBe(2 * VARIANTS);
    await plain.close();
  });
});
