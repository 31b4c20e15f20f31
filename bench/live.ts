import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { startSheet } from '../src/pipeline/start-sheets.js';
import { median } from './measure.js';
import type { Row } from './nut.js';

const CHROMIUM = '/usr/bin/chromium';
const OPENINGS = 3;
const KEYS = 25;
/** A phone of the cheaper sort against this machine. */
const SLOWED = 4;

/** How soon the live page answers, in a browser without a graphics card; nothing where there is no browser. */
export async function liveRows(): Promise<Row[]> {
  if (!existsSync(CHROMIUM)) return [];
  const folder = mkdtempSync(join(tmpdir(), 'leadwright-live-'));
  const path = join(folder, 'live.html');
  execFileSync(process.execPath, ['scripts/bundle-live.mjs', path]);
  const size = statSync(path).size / 1e6;
  const onSheet = readFileSync(path, 'utf8').replace(
    'id="sheet">""</script>',
    () => `id="sheet">${JSON.stringify(startSheet('nut')).replaceAll('<', '\\u003c')}</script>`,
  );
  writeFileSync(path, onSheet);
  const browser = await chromium.launchPersistentContext(join(folder, 'browser'), {
    executablePath: CHROMIUM,
    headless: true,
    args: ['--no-sandbox', '--disable-gpu'],
  });
  const plain = await openings(browser, path, 1);
  const slowed = await openings(browser, path, SLOWED);
  const keys = await typing(browser, path);
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
  return [
    { what: 'live page, size (goal 1.6)', value: size, unit: 'MB' },
    { what: 'live page, first field usable (goal 1000)', value: plain, unit: 'ms' },
    { what: 'live page, first field usable, processor slowed 4 times (goal 3000)', value: slowed, unit: 'ms' },
    { what: 'live page, key to questions, median (goal 16)', value: median(keys.questions), unit: 'ms' },
    { what: 'live page, key to questions, worst (goal 50)', value: Math.max(...keys.questions), unit: 'ms' },
    { what: 'live page, key to drawing, median (goal 50)', value: median(keys.drawing), unit: 'ms' },
    { what: 'live page, first asked for to STL proved', value: keys.first.stl, unit: 'ms' },
    { what: 'live page, first asked for to all files', value: keys.first.files, unit: 'ms' },
    { what: 'live page, asked for again to STL proved (goal 400)', value: median(keys.again), unit: 'ms' },
  ];
}

/** From the start of the load until a field of the part takes a reading. */
async function openings(browser: BrowserContext, path: string, slowed: number): Promise<number> {
  const times: number[] = [];
  for (let round = 0; round < OPENINGS; round++) {
    const page = await browser.newPage();
    const session = await browser.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
    await page.goto(`file://${path}`);
    await page.waitForSelector('.told input');
    times.push(await page.evaluate(() => performance.now()));
    await page.close();
  }
  return median(times);
}

/** Types a body's diameter again and again, and waits each time for what changes. */
async function typing(browser: BrowserContext, path: string) {
  const page = await browser.newPage();
  await page.goto(`file://${path}`);
  await page.waitForSelector('.board svg');
  await page.waitForSelector('.questions .row');
  const questions: number[] = [];
  const drawing: number[] = [];
  for (let key = 0; key < KEYS; key++) {
    const diameter = (13.6 + 0.02 * key).toFixed(2);
    const times = await typed(page, diameter);
    questions.push(times.questions);
    drawing.push(times.drawing);
  }
  const first = await made(page);
  const again: number[] = [];
  for (let round = 0; round < OPENINGS; round++) {
    await typed(page, (13.5 + 0.05 * round).toFixed(2));
    again.push((await made(page)).stl);
  }
  await page.close();
  return { questions, drawing, first, again };
}

/** From the button until the solid is proved, and until all files are there, by the page's own clock [ms]. */
async function made(page: Page) {
  const asked = await page.evaluate(() => performance.now());
  await page.getByText('Make and prove the files').click();
  await page.waitForSelector('a[download$=".stl"]', { timeout: 60_000 });
  const stl = (await page.evaluate(() => performance.now())) - asked;
  await page.waitForSelector('a[download="drawing.svg"]', { timeout: 60_000 });
  return { stl, files: (await page.evaluate(() => performance.now())) - asked };
}

/** One change, by the page's own clock [ms]. */
function typed(page: Page, diameter: string): Promise<{ questions: number; drawing: number }> {
  return page.evaluate(async (value) => {
    const input = document.querySelector<HTMLInputElement>('input[aria-label="body diameter"]')!;
    const until = (selector: string) =>
      new Promise<number>((resolve) => {
        const seen = new MutationObserver(() => {
          seen.disconnect();
          resolve(performance.now());
        });
        seen.observe(document.querySelector(selector)!, {
          subtree: true,
          childList: true,
          characterData: true,
          attributes: true,
        });
      });
    const start = performance.now();
    const both = Promise.all([until('.questions'), until('.board svg')]);
    input.value = value;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    const [questions, drawing] = await both;
    return { questions: questions - start, drawing: drawing - start };
  }, diameter);
}
