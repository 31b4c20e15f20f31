import { execFileSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { REASONS } from '../../page/live/state/state.js';
import { makePart } from '../../src/pipeline/make.js';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { type Firefox, openFirefox } from '../support/firefox.js';

const ROOT = join(import.meta.dirname, '../..');
const PAGE = join(mkdtempSync(join(tmpdir(), 'leadwright-live-')), 'live.html');

let firefox: Firefox;
beforeAll(async () => {
  execFileSync(process.execPath, ['scripts/bundle-live.mjs', PAGE], { cwd: ROOT });
  firefox = await openFirefox();
}, 180_000);
afterAll(() => firefox?.browser.close());

interface Opened {
  readonly page: Page;
  readonly complaints: string[];
  readonly requests: string[];
}

async function open(): Promise<Opened> {
  const page = await firefox.browser.newPage();
  const [complaints, requests]: [string[], string[]] = [[], []];
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
  page.on('request', (request) => requests.push(request.url()));
  await page.goto(pathToFileURL(PAGE).href);
  return { page, complaints, requests };
}

function expectQuiet({ complaints, requests }: Opened): void {
  expect(complaints).toEqual([]);
  // the browser's own letters come as data
  expect(requests.filter((url) => !/^(?:file|blob|data):/.test(url))).toEqual([]);
}

/** Presses Tab until what has the focus says this. */
async function tabTo(page: Page, what: string): Promise<void> {
  for (let i = 0; i < 60; i++) {
    await page.keyboard.press('Tab');
    const here = await page.evaluate(() => {
      const one = document.activeElement;
      return `${one?.id ?? ''}|${one?.textContent ?? ''}`;
    });
    if (here.includes(what)) return;
  }
  throw new Error(`no way to ${what} by Tab`);
}

/** Waits for the last of the files: until then the list grows, and what stands below it moves from under a click. */
async function allMade(page: Page): Promise<void> {
  await page.waitForSelector('a[download="report.json"]', { timeout: 90_000 });
}

const says = (words: string) => `::-p-text(${words})`;

describe('the live page in a browser of another engine', () => {
  it('leads from an unknown screw to the files of a nut by keyboard alone; their bytes are the command’s', async () => {
    const opened = await open();
    const { page } = opened;
    await page.waitForSelector(says('The nut is worn'));
    await tabTo(page, 'The nut is worn');
    await page.keyboard.press('Enter');
    await page.waitForSelector('#r-major');
    await tabTo(page, 'r-major');
    await page.keyboard.type('7,93');
    await tabTo(page, 'r-crests');
    await page.keyboard.type('20.02');
    await page.waitForSelector(says('Next: the threads that begin'));
    await tabTo(page, 'r-starts');
    await page.keyboard.type('1');
    await page.waitForSelector(says('It is Tr8x2: the part'));
    await tabTo(page, 'It is Tr8x2: the part');
    await page.keyboard.press('Enter');
    await page.waitForSelector(says('Make and prove the files'));
    await tabTo(page, 'Make and prove');
    await page.keyboard.press('Enter');
    await allMade(page);
    for (const name of ['my-nut.stl', 'my-nut.yaml']) {
      await page.click(`a[download="${name}"]`);
    }
    const sheet = (await firefox.taken('my-nut.yaml')).toString('utf8');
    const { files } = await makePart(sheet, { formats: ['stl'] });
    const own = files.find(({ name }) => name === 'my-nut.stl')!;
    expect((await firefox.taken('my-nut.stl')).equals(Buffer.from(own.bytes))).toBe(true);
    expectQuiet(opened);
    await page.close();
  });

  it.each(REASONS.filter(({ kind }) => kind !== 'nut' && kind !== 'axis'))(
    '$words: makes what the command makes',
    async (reason) => {
      const opened = await open();
      const { page } = opened;
      await (await page.waitForSelector(says(reason.words)))!.click();
      if (reason.screwFirst) await (await page.waitForSelector(says('I know the screw')))!.click();
      await (await page.waitForSelector(says('Make and prove the files'), { timeout: 60_000 }))!.click();
      const { files } = await makePart(startSheet(reason.kind), { formats: ['stl', '3mf', 'drawing', 'page'] });
      await allMade(page);
      for (const { name, bytes } of files) {
        await (await page.waitForSelector(`a[download="${name}"]`, { timeout: 90_000 }))!.click();
        expect((await firefox.taken(name)).equals(Buffer.from(bytes)), name).toBe(true);
      }
      expectQuiet(opened);
      await page.close();
    },
  );
});
