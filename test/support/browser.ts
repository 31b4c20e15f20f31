import { mkdtempSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';

const CHROMIUM = '/usr/bin/chromium';
const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--enable-unsafe-swiftshader',
  '--use-gl=angle',
  '--use-angle=swiftshader',
];
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
/** What the software driver says of its own speed. */
const DRIVER = /GL Driver Message/;

/** A browser without a window, without a graphics card and with an empty home. */
export function openBrowser(more: readonly string[] = []): Promise<BrowserContext> {
  const home = mkdtempSync(join(tmpdir(), 'leadwright-browser-'));
  return chromium.launchPersistentContext(home, {
    executablePath: CHROMIUM,
    headless: true,
    args: [...FLAGS, ...more],
  });
}

/** A page with all that it complained of and asked for. */
export interface Watched {
  readonly page: Page;
  readonly complaints: string[];
  readonly requests: string[];
}

/** Opens a part's page, and waits until the model was drawn. */
export async function openPage(browser: BrowserContext, path: string): Promise<Watched> {
  const watched = await openWatched(browser, path);
  await watched.page.waitForSelector('#stage[data-state]', { timeout: 60_000 });
  return watched;
}

/** Opens a file, and listens to what it complains of and asks for. */
export async function openWatched(
  browser: BrowserContext,
  path: string,
  size = { width: 1100, height: 900 },
): Promise<Watched> {
  const page = await browser.newPage();
  const [complaints, requests]: [string[], string[]] = [[], []];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type()) && !DRIVER.test(message.text())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => {
    if (!/^(?:data|blob):/.test(request.url())) requests.push(request.url());
  });
  await page.setViewportSize(size);
  await page.goto(`file://${path}`);
  return { page, complaints, requests };
}

/** Serious faults of accessibility, a line each. */
export async function seriousFaults(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(): Promise<{ violations: { id: string; impact: string; nodes: { html: string }[] }[] }> };
    };
    const { violations } = await axe.run();
    return violations
      .filter(({ impact }) => impact === 'serious' || impact === 'critical')
      .map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });
}

/** Waits until the model was drawn once more than so many times. */
export async function drawn(page: Page, after = 0): Promise<number> {
  await page.waitForFunction((count) => Number(document.getElementById('stage')?.dataset.drawn ?? 0) > count, after, {
    timeout: 60_000,
  });
  return page.evaluate(() => Number(document.getElementById('stage')?.dataset.drawn ?? 0));
}
