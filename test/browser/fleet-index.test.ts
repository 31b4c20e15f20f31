import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawn, openBrowser, openWatched, seriousFaults } from '../support/browser.js';
import { call, callFolder } from '../support/call.js';
import type { ReadManifest } from '../support/fleet-folder.js';

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
      .locator('section[data-machine]:visible')
      .evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset.machine));
  const all = () => manifest.machines.map(({ machine }) => machine.toLowerCase());

  it('shows every machine and part, and complains of nothing', async () => {
    expect(await machines()).toEqual(all());
    const pictures = await page.locator('tbody img').evaluateAll(async (images) => {
      for (const image of images as HTMLImageElement[]) image.loading = 'eager';
      await Promise.all((images as HTMLImageElement[]).map((image) => image.decode()));
      return (images as HTMLImageElement[]).map(({ naturalWidth }) => naturalWidth);
    });
    expect(pictures.length).toBeGreaterThan(manifest.machines.length);
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
      .locator('tbody tr:visible')
      .evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset.material));
    expect(new Set(shown)).toEqual(new Set([material]));
    await page.getByRole('button', { name: 'Show all' }).click();
    expect(complaints).toEqual([]);
  });

  it('leads to the page of each part, which draws it', async () => {
    const link = page.locator('tbody th a[href$="report.html"]').first();
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
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  });
});
