import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { makePart } from '../src/pipeline/make.js';
import { median } from './measure.js';
import type { Row } from './nut.js';
import { benchNut } from './sheets.js';

const CHROMIUM = '/usr/bin/chromium';
const ROUNDS = 5;

/** How soon the page of a nut shows the part, in a browser without a graphics card; nothing where there is no browser. */
export async function pageRows(): Promise<Row[]> {
  if (!existsSync(CHROMIUM)) return [];
  const folder = mkdtempSync(join(tmpdir(), 'leadwright-page-'));
  const { files } = await makePart(benchNut(), { formats: ['page'] });
  const page = files.find(({ name }) => name === 'report.html')!;
  const path = join(folder, page.name);
  writeFileSync(path, page.bytes);
  const browser = await chromium.launchPersistentContext(join(folder, 'profile'), {
    executablePath: CHROMIUM,
    headless: true,
    args: ['--no-sandbox', '--disable-gpu', '--enable-unsafe-swiftshader', '--use-gl=angle', '--use-angle=swiftshader'],
  });
  const times: { painted: number; drawn: number }[] = [];
  for (let round = 0; round < ROUNDS; round++) times.push(await open(await browser.newPage(), path));
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
  return [
    { what: 'page, size', value: page.bytes.length / 1e6, unit: 'MB' },
    { what: 'page, picture of the part painted', value: median(times.map(({ painted }) => painted)), unit: 'ms' },
    { what: 'page, model drawn', value: median(times.map(({ drawn }) => drawn)), unit: 'ms' },
  ];
}

/** Times from the start of the load, by the page's own clock. [ms] */
async function open(page: Page, path: string): Promise<{ painted: number; drawn: number }> {
  await page.addInitScript(() => {
    const seen = window as unknown as { painted: number; drawn: number };
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) seen.painted = entry.startTime;
    }).observe({ type: 'largest-contentful-paint', buffered: true });
    new MutationObserver(() => {
      if (document.getElementById('stage')?.dataset.drawn) seen.drawn ??= performance.now();
    }).observe(document, { subtree: true, attributes: true, attributeFilter: ['data-drawn'] });
  });
  await page.goto(`file://${path}`);
  await page.waitForFunction(() => (window as unknown as { drawn?: number }).drawn !== undefined);
  const times = await page.evaluate(() => {
    const { painted, drawn } = window as unknown as { painted: number; drawn: number };
    return { painted, drawn };
  });
  await page.close();
  return times;
}
