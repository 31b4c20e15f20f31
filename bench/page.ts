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

/** A phone's processor against this one. */
const SLOWED = 4;
/** A nut as long as they get [mm]. */
const LONG = 150;

/** How heavy and how soon pages are, in a browser without a graphics card; nothing where there is no browser. */
export async function pageRows(): Promise<Row[]> {
  if (!existsSync(CHROMIUM)) return [];
  const long = benchNut({ length: LONG, axial: 0.5 });
  return [...(await rowsOf('page', benchNut())), ...(await rowsOf(`page of a nut of ${LONG} mm`, long))];
}

async function rowsOf(what: string, sheet: ReturnType<typeof benchNut>): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'leadwright-page-'));
  const { files } = await makePart(sheet, { formats: ['page'] });
  const page = files.find(({ name }) => name === 'report.html')!;
  const path = join(folder, page.name);
  writeFileSync(path, page.bytes);
  const browser = await chromium.launchPersistentContext(join(folder, 'browser'), {
    executablePath: CHROMIUM,
    headless: true,
    args: ['--no-sandbox', '--disable-gpu', '--enable-unsafe-swiftshader', '--use-gl=angle', '--use-angle=swiftshader'],
  });
  const [times, slowed]: [Times[], Times[]] = [[], []];
  for (let round = 0; round < ROUNDS; round++) {
    times.push(await open(await browser.newPage(), path));
    slowed.push(await open(await browser.newPage(), path, SLOWED));
  }
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
  const middle = (of: readonly Times[], pick: (one: Times) => number) => median(of.map(pick));
  return [
    { what: `${what}, size`, value: page.bytes.length / 1e6, unit: 'MB' },
    { what: `${what}, picture of the part painted`, value: middle(times, ({ painted }) => painted), unit: 'ms' },
    { what: `${what}, model drawn`, value: middle(times, ({ drawn }) => drawn), unit: 'ms' },
    {
      what: `${what}, picture painted, processor ${SLOWED} times slowed`,
      value: middle(slowed, ({ painted }) => painted),
      unit: 'ms',
    },
    {
      what: `${what}, longest task, processor ${SLOWED} times slowed`,
      value: middle(slowed, ({ longest }) => longest),
      unit: 'ms',
    },
  ];
}

interface Times {
  readonly painted: number;
  readonly drawn: number;
  readonly longest: number;
}

/** Times from the start of the load, by the page's own clock. [ms] */
async function open(page: Page, path: string, slowed = 1): Promise<Times> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  await page.addInitScript(() => {
    const seen = window as unknown as { painted: number; drawn: number; longest: number };
    seen.longest = 0;
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) seen.longest = Math.max(seen.longest, duration);
    }).observe({ type: 'longtask', buffered: true });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) seen.painted = entry.startTime;
    }).observe({ type: 'largest-contentful-paint', buffered: true });
    new MutationObserver(() => {
      if (document.getElementById('stage')?.dataset.drawn) seen.drawn ??= performance.now();
    }).observe(document, { subtree: true, attributes: true, attributeFilter: ['data-drawn'] });
  });
  await page.goto(`file://${path}`);
  await page.waitForFunction(() => (window as unknown as { drawn?: number }).drawn !== undefined);
  // entries of what came last are told a little later
  await page.waitForTimeout(500);
  const times = await page.evaluate(() => {
    const { painted, drawn, longest } = window as unknown as { painted: number; drawn: number; longest: number };
    return { painted, drawn, longest };
  });
  await page.close();
  return times;
}
