import { mkdtempSync } from 'node:fs';
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
/** What the software driver says of its own speed. */
const DRIVER = /GL Driver Message/;

/** A browser without a window, without a graphics card and with an empty profile. */
export function openBrowser(more: readonly string[] = []): Promise<BrowserContext> {
  const profile = mkdtempSync(join(tmpdir(), 'leadwright-browser-'));
  return chromium.launchPersistentContext(profile, {
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

/** Opens a file, and waits until the model was drawn. */
export async function openPage(
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
    if (!request.url().startsWith('data:')) requests.push(request.url());
  });
  await page.setViewportSize(size);
  await page.goto(`file://${path}`);
  await page.waitForSelector('#stage[data-state]', { timeout: 60_000 });
  return { page, complaints, requests };
}

/** Waits until the model was drawn once more than so many times. */
export async function drawn(page: Page, after = 0): Promise<number> {
  await page.waitForFunction((count) => Number(document.getElementById('stage')?.dataset.drawn ?? 0) > count, after, {
    timeout: 60_000,
  });
  return page.evaluate(() => Number(document.getElementById('stage')?.dataset.drawn ?? 0));
}
