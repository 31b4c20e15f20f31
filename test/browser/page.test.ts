import { mkdtempSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { designAxis } from '../../src/axis/design.js';
import { makeAxis } from '../../src/axis/make.js';
import type { Acceptance } from '../../src/judge/accept.js';
import { sharedPageScript } from '../../src/output/page/page-shell.js';
import { makePart } from '../../src/pipeline/make.js';
import { drawn, openBrowser, openPage, seriousFaults } from '../support/browser.js';

const SHEETS = join(import.meta.dirname, '../../presets/sheets');
const folder = mkdtempSync(join(tmpdir(), 'leadwright-pages-'));

/** A sheet that ships for each part kind, made whatever its own checks say of its figures. */
const KINDS = readdirSync(SHEETS)
  .filter((name) => /^demo-.*\.yaml$/.test(name))
  // an axis is several parts, each with a page of its own kind
  .filter((name) => name !== 'demo-axis.yaml')
  .sort()
  .map((name) => name.slice('demo-'.length, -'.yaml'.length));

async function pageOf(
  kind: string,
  edit = (sheet: string) => sheet,
  accept: readonly Acceptance[] = [],
): Promise<string | undefined> {
  const sheet = edit(readFileSync(join(SHEETS, `demo-${kind}.yaml`), 'utf8'));
  const { files } = await makePart(sheet, { formats: ['page'], accept });
  const page = files.find(({ name }) => name === 'report.html');
  if (!page) return undefined;
  const path = join(folder, `${kind}-${Math.abs(hash(sheet))}.html`);
  writeFileSync(path, page.bytes);
  return path;
}

function hash(text: string): number {
  let sum = 0;
  for (const character of text) sum = (31 * sum + character.charCodeAt(0)) | 0;
  return sum;
}

async function shot(page: Page): Promise<string> {
  return (await page.locator('#stage').screenshot()).toString('base64');
}

/** Share of pixels of the stage that differ from its corner, by the browser's own decoder. */
function painted(page: Page, picture: string): Promise<number> {
  return page.evaluate(async (base64) => {
    const image = new Image();
    image.src = `data:image/png;base64,${base64}`;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.width;
    canvas.height = image.height;
    const context = canvas.getContext('2d');
    if (!context) return 0;
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
    const at = 4 * (12 * canvas.width + 12);
    let other = 0;
    for (let i = 0; i < data.length; i += 4) {
      const away = [0, 1, 2].reduce((sum, k) => sum + Math.abs(Number(data[i + k]) - Number(data[at + k])), 0);
      if (away > 30) other++;
    }
    return other / (data.length / 4);
  }, picture);
}

let browser: BrowserContext;
beforeAll(async () => {
  browser = await openBrowser();
}, 120_000);
afterAll(() => browser.close());

describe.each(KINDS)('the page of the shipped %s', (kind) => {
  let page: Page;
  let complaints: string[] = [];
  let requests: string[] = [];
  let path: string | undefined;

  beforeAll(async () => {
    path = await pageOf(kind);
    if (!path) return;
    ({ page, complaints, requests } = await openPage(browser, path));
    await drawn(page);
  }, 180_000);
  afterAll(() => page?.close());

  it('opens without complaint, asks for nothing else, and draws the part', async (context) => {
    if (!path) return context.skip(`the shipped ${kind} does not pass its checks`);
    expect(await painted(page, await shot(page))).toBeGreaterThan(0.05);
    expect(complaints).toEqual([]);
    expect(requests).toEqual([`file://${path}`]);
  });

  it('has no serious fault of accessibility', async (context) => {
    if (!path) return context.skip();
    for (const colorScheme of ['light', 'dark'] as const) {
      for (const width of [390, 1000]) {
        await page.setViewportSize({ width, height: 844 });
        await page.emulateMedia({ colorScheme });
        expect(await seriousFaults(page), `${colorScheme}, ${width} px`).toEqual([]);
      }
    }
    await page.setViewportSize({ width: 1100, height: 900 });
  });

  it('can be cut and pulled apart', async (context) => {
    if (!path) return context.skip();
    const whole = await shot(page);
    let count = await drawn(page);
    await page.selectOption('#cut', 'along');
    count = await drawn(page, count);
    expect(await shot(page)).not.toBe(whole);
    await page.selectOption('#cut', 'none');
    count = await drawn(page, count);
    if ((await page.locator('#pull').count()) === 0) return;
    const before = await shot(page);
    await page.locator('#pull').fill('100');
    await drawn(page, count);
    if (kind === 'coupling') expect(await shot(page)).not.toBe(before);
  });

  it('shows name, questions and the part on the first screen of a phone', async (context) => {
    if (!path) return context.skip();
    await page.setViewportSize({ width: 390, height: 844 });
    await page.evaluate(() => window.scrollTo(0, 0));
    expect(await lowest(page)).toBeLessThan(844);
    await page.setViewportSize({ width: 1100, height: 900 });
  });
});

/** Pages of the shipped sheets by what they are: each kind's, and that of an axis, which draws no model. */
async function everyPage(): Promise<{ readonly what: string; readonly path: string; readonly hasStage: boolean }[]> {
  const kinds = await Promise.all(
    KINDS.map(async (kind) => ({ what: kind, path: await pageOf(kind), hasStage: true })),
  );
  const sheet = readFileSync(join(SHEETS, 'demo-axis.yaml'), 'utf8');
  const { files } = await makeAxis(designAxis(sheet), { formats: ['page'] });
  const path = join(folder, 'axis.html');
  writeFileSync(path, files.find(({ name }) => name === 'report.html')!.bytes);
  return [
    ...kinds.flatMap((one) => (one.path ? [{ ...one, path: one.path }] : [])),
    { what: 'axis', path, hasStage: false },
  ];
}

describe('the pages of all kinds, one after the other', () => {
  let pages: Awaited<ReturnType<typeof everyPage>> = [];
  beforeAll(async () => {
    pages = await everyPage();
  }, 240_000);

  it('tell all but the model without their script, the still picture in its place', async () => {
    const plain = await browser.browser()!.newContext({ javaScriptEnabled: false });
    const still = await plain.newPage();
    for (const { what, path } of pages) {
      await still.goto(`file://${path}`);
      expect(await still.locator('.questions dt').count(), what).toBeGreaterThan(1);
      expect(await still.locator('#part img').first().isVisible(), what).toBe(true);
      expect(await still.locator('#card li').count(), what).toBeGreaterThan(2);
      expect(await still.locator('#checks tbody tr').last().isVisible(), what).toBe(true);
    }
    await plain.close();
  }, 120_000);

  it('keep the drawn picture where there is no 3D', async () => {
    const plain = await openBrowser(['--disable-3d-apis']);
    const page = await plain.newPage();
    for (const { what, path } of pages.filter(({ hasStage }) => hasStage)) {
      await page.goto(`file://${path}`);
      await page.waitForSelector('#stage[data-state=still]', { timeout: 60_000 });
      expect(await page.locator('#stage img').isVisible(), what).toBe(true);
    }
    await plain.close();
  }, 180_000);

  it('print on paper: the still picture, every check, headings with their content', async () => {
    const page = await browser.newPage();
    for (const { what, path } of pages) {
      await page.goto(`file://${path}`);
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('#part img').first().isVisible(), what).toBe(true);
      const hidden = await page
        .locator('#checks tbody tr')
        .evaluateAll((rows) => rows.filter((row) => getComputedStyle(row).display === 'none').length);
      expect(hidden, what).toBe(0);
      const after = await page.locator('h2').evaluateAll((all) => all.map((one) => getComputedStyle(one).breakAfter));
      expect(new Set(after), what).toEqual(new Set(['avoid']));
      await page.emulateMedia({ media: null });
    }
    await page.close();
  }, 180_000);

  it('let the keyboard reach every control, and fit into 360 pixels', async () => {
    const page = await browser.newPage();
    for (const { what, path } of pages) {
      await page.goto(`file://${path}`);
      await page.setViewportSize({ width: 360, height: 740 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth), what).toBeLessThanOrEqual(360);
      await page.setViewportSize({ width: 1100, height: 900 });
      const stuck = await page.evaluate(() => {
        const all = [...document.querySelectorAll<HTMLElement>('button, select, input, a[href], canvas')];
        const seen = all.filter((one) => one.offsetParent !== null && !(one as HTMLInputElement).disabled);
        return seen.filter((one) => one.tabIndex < 0).map((one) => one.outerHTML.slice(0, 80));
      });
      expect(stuck, what).toEqual([]);
      // from the first to the tenth stop a key leads on, and what has it is seen to have it
      const marked = new Set<string>();
      for (let i = 0; i < 10; i++) {
        await page.keyboard.press('Tab');
        marked.add(
          await page.evaluate(() => {
            const one = document.activeElement!;
            return `${one.outerHTML.slice(0, 120)} ${getComputedStyle(one).outlineStyle !== 'none'}`;
          }),
        );
      }
      expect(marked.size, what).toBeGreaterThan(7);
      expect(
        [...marked].filter((one) => one.endsWith('false')),
        what,
      ).toEqual([]);
    }
    await page.close();
  }, 180_000);

  it('show the parts of an axis on the first screen of a phone, without fault of accessibility', async () => {
    const { path } = pages.find(({ what }) => what === 'axis')!;
    const page = await browser.newPage();
    await page.goto(`file://${path}`);
    for (const width of [1000, 390]) {
      await page.setViewportSize({ width, height: 844 });
      expect(await seriousFaults(page), `${width} px`).toEqual([]);
    }
    for (const picture of await page.locator('.parts img').all()) {
      const box = (await picture.boundingBox())!;
      expect(box.y + box.height).toBeLessThan(844);
    }
    await page.close();
  }, 60_000);
});

const ODD: readonly {
  readonly what: string;
  readonly edit: (sheet: string) => string;
  readonly accept: readonly Acceptance[];
  readonly words: RegExp;
}[] = [
  {
    what: 'an accepted fail',
    edit: (sheet) => sheet.replace(/load: \d+ N/, 'load: 150 N'),
    accept: ['barrel-pull'].map((check) => ({ check, reason: 'bench trial, no load on it' })),
    words: /accepted/,
  },
  {
    what: 'an unanswered sheet',
    edit: (sheet) => sheet.replace(/^ *(load|temperature):.*\n/gm, ''),
    accept: [],
    words: /not told/,
  },
];

describe.each(ODD)('the page of $what', ({ edit, accept, words }) => {
  it('says so above the questions, on the first screen of a phone, without fault of accessibility', async () => {
    const { page, complaints } = await openPage(browser, (await pageOf('nut', edit, accept))!);
    await drawn(page);
    for (const width of [1000, 390]) {
      await page.setViewportSize({ width, height: 844 });
      expect(await seriousFaults(page), `${width} px`).toEqual([]);
    }
    await page.evaluate(() => window.scrollTo(0, 0));
    expect(await page.locator('body').textContent()).toMatch(words);
    expect(await lowest(page, '.questions')).toBeLessThan(844);
    expect(complaints).toEqual([]);
    await page.close();
  }, 120_000);
});

/** Where a thing ends on the screen [px]. */
async function lowest(page: Page, what = '#stage'): Promise<number> {
  const box = (await page.locator(what).first().boundingBox())!;
  return box.y + box.height;
}

describe('the page of a nut', () => {
  let page: Page;
  let path = '';
  beforeAll(async () => {
    path = (await pageOf('nut'))!;
    ({ page } = await openPage(browser, path));
    await drawn(page);
  }, 180_000);
  afterAll(() => page.close());

  it('is small', () => expect(statSync(path).size).toBeLessThan(400_000));

  it('shows the part on the first screen of a phone, and cuts the screw with the nut', async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.evaluate(() => window.scrollTo(0, 0));
    const box = (await page.locator('#stage').boundingBox())!;
    expect(box.y + box.height).toBeLessThan(844);
    const count = await drawn(page);
    await page.selectOption('#cut', 'along');
    await drawn(page, count);
    const whole = await shot(page);
    await page.uncheck('#companions');
    await drawn(page, count + 1);
    expect(await shot(page)).not.toBe(whole);
    await page.check('#companions');
    await page.selectOption('#cut', 'none');
    await page.setViewportSize({ width: 1100, height: 900 });
  });

  it('starts the model when it is scrolled to, and lets a finger scroll over it until it is taken in hand', async () => {
    const other = await browser.newPage();
    await other.setViewportSize({ width: 390, height: 120 });
    await other.goto(`file://${path}`);
    await other.waitForTimeout(500);
    const early = await other.evaluate(() => document.getElementById('stage')?.dataset.drawn);
    await other.locator('#stage').scrollIntoViewIfNeeded();
    await drawn(other);
    const canvas = other.locator('#stage canvas');
    const touch = () => canvas.evaluate((one) => getComputedStyle(one).touchAction);
    expect([early, await touch()]).toEqual([undefined, 'pan-y']);
    await canvas.click();
    expect(await touch()).toBe('none');
    await other.close();
  });

  it('is turned, zoomed and reset by the keyboard', async () => {
    await page.locator('#stage canvas').focus();
    for (const key of ['ArrowRight', '+', 'Home']) {
      const before = await shot(page);
      const count = await drawn(page);
      await page.keyboard.press(key);
      await drawn(page, count);
      expect(await shot(page), key).not.toBe(before);
    }
  });

  it('lets the keyboard reach every control', async () => {
    const wanted = await page.evaluate(
      () =>
        [...document.querySelectorAll('button, select, input, a[href], canvas')].filter(
          (one) => one instanceof HTMLElement && one.offsetParent !== null && !(one as HTMLInputElement).disabled,
        ).length,
    );
    await page.evaluate(() => {
      (document.activeElement as HTMLElement | null)?.blur();
      window.scrollTo(0, 0);
    });
    const reached = new Set<string>();
    for (let i = 0; i < wanted + 40; i++) {
      await page.keyboard.press('Tab');
      reached.add(
        await page.evaluate(() => {
          const all = [...document.querySelectorAll('*')];
          return document.activeElement ? String(all.indexOf(document.activeElement)) : '';
        }),
      );
    }
    expect(reached.size).toBeGreaterThanOrEqual(wanted);
  });

  it('sorts, filters and opens its checks', async () => {
    await page.selectOption('#checks-verdict', 'caution');
    const rows = await page.locator('#checks-table tbody:visible').count();
    expect(rows).toBe(await page.locator('#checks-table tbody[data-verdict=caution]').count());
    await page.selectOption('#checks-verdict', 'all');
    await page.locator('#checks-words').fill('thread-backlash');
    const row = page.locator('#checks-table tbody:visible').first();
    await row.locator('button.fold').click();
    expect(await row.locator('dl').isVisible()).toBe(true);
    expect(await row.locator('dl').textContent()).toContain('Source');
    await page.locator('#checks-words').fill('');
    await page.locator('thead button[data-key=id]').click();
    const ids = await page
      .locator('#checks-table tbody')
      .evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset.id));
    expect(ids).toEqual([...ids].sort());
  });

  it('prints the card on one sheet of paper, under the sentence and beside the part', async () => {
    const other = await browser.newPage();
    await other.goto(`file://${path}`);
    await other.evaluate(() => document.documentElement.classList.add('card-only'));
    const pdf = await other.pdf({ preferCSSPageSize: true });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await other.emulateMedia({ media: 'print' });
    for (const what of ['.lead', '#stage img', '#card li:last-child'])
      expect(await other.locator(what).first().isVisible(), what).toBe(true);
    expect(await other.locator('.questions').isVisible()).toBe(false);
    await other.close();
  });

  it('prints every check, and the drawing to scale', async () => {
    await page.emulateMedia({ media: 'print' });
    const hidden = await page
      .locator('#checks-table tbody tr')
      .evaluateAll((rows) => rows.filter((row) => getComputedStyle(row).display === 'none').length);
    expect(hidden).toBe(0);
    const bar = await page.locator('#scale-bar').evaluate((line) => line.getBoundingClientRect().width);
    // a CSS pixel is 1/96 in, so 50 mm are 188.98 of them
    expect(bar).toBeGreaterThan(188.5);
    expect(bar).toBeLessThan(191);
    expect((await page.pdf({ preferCSSPageSize: true })).length).toBeGreaterThan(20_000);
    await page.emulateMedia({ media: null });
  });

  it('prints the still picture in place of the model, and holds every section to its heading', async () => {
    await page.emulateMedia({ media: 'print' });
    const shown = (what: string) =>
      page.locator(what).evaluate((one) => {
        const { display, visibility } = getComputedStyle(one);
        return display !== 'none' && visibility === 'visible';
      });
    expect(await shown('#stage img')).toBe(true);
    expect(await shown('#stage canvas')).toBe(false);
    const after = await page.locator('h2').evaluateAll((all) => all.map((one) => getComputedStyle(one).breakAfter));
    expect(new Set(after)).toEqual(new Set(['avoid']));
    await page.emulateMedia({ media: null });
  });

  it('shows its findings on a phone without scrolling sideways', async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    const wide = await page
      .locator('#checks, #checks *')
      .evaluateAll((all) =>
        all
          .filter((one) => one.scrollWidth > one.clientWidth + 1 && one.clientWidth > 0)
          .map((one) => one.outerHTML.slice(0, 80)),
      );
    expect(wide).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await page.setViewportSize({ width: 1100, height: 900 });
  });

  it('tells all but the model without its script', async () => {
    const plain = await browser.browser()!.newContext({ javaScriptEnabled: false });
    const still = await plain.newPage();
    await still.goto(`file://${path}`);
    expect(await still.locator('.questions dt').allTextContents()).toContain('Goes on?');
    expect(await still.locator('#stage img').isVisible()).toBe(true);
    expect(await still.locator('#card li').count()).toBeGreaterThan(5);
    expect(await still.locator('#checks-table tbody tr').count()).toBeGreaterThan(40);
    expect(await still.locator('#checks-table tbody tr').last().isVisible()).toBe(true);
    await plain.close();
  });

  it('remembers what was ticked off', async () => {
    const ticked = () =>
      page
        .locator('#card input[type=checkbox], #hardware input[type=checkbox]')
        .evaluateAll((boxes) => boxes.filter((box) => (box as HTMLInputElement).checked).map(({ id }) => id));
    const first = page.locator('#hardware input[type=checkbox]').first();
    await first.check();
    await page.reload();
    expect(await ticked()).toEqual(['hardware-1']);
    await first.uncheck();
    await page.reload();
    expect(await ticked()).toEqual([]);
    // what is not seen is not drawn
    await page.locator('#stage').scrollIntoViewIfNeeded();
    await drawn(page);
  });

  it('does not shift while it loads', async () => {
    const other = await browser.newPage();
    await other.addInitScript(() => {
      const seen = window as unknown as { shift: number };
      seen.shift = 0;
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) seen.shift += (entry as unknown as { value: number }).value;
      }).observe({ type: 'layout-shift', buffered: true });
    });
    await other.goto(`file://${path}`);
    await drawn(other);
    expect(await other.evaluate(() => (window as unknown as { shift: number }).shift)).toBeLessThan(0.1);
    await other.close();
  });

  it('shows a name of a script as a name', async () => {
    const evil = await pageOf('nut', (sheet) =>
      sheet.replace('material: pa12', 'mark: "<script>"\nmaterial: pa12').replace('bore: 20 mm, ', ''),
    );
    if (!evil) return;
    const other = await openPage(browser, evil);
    expect(other.complaints).toEqual([]);
    await other.page.close();
  });

  it('shares its script with other pages of a folder', async () => {
    const sheet = readFileSync(join(SHEETS, 'demo-nut.yaml'), 'utf8');
    const { files } = await makePart(sheet, { formats: ['page'], pageScript: { src: 'shared.js' } });
    const bytes = files.find(({ name }) => name === 'report.html')!.bytes;
    const shared = join(folder, 'sharing.html');
    writeFileSync(shared, bytes);
    writeFileSync(join(folder, 'shared.js'), await sharedPageScript());
    expect(bytes.length).toBeLessThan(250_000);
    const other = await openPage(browser, shared);
    await drawn(other.page);
    expect(other.complaints).toEqual([]);
    await other.page.close();
  });

  it('is found broken when it is', async () => {
    const broken = join(folder, 'broken.html');
    writeFileSync(broken, readFileSync(path, 'utf8').replace(/script-src 'sha256-[^']*'/, "script-src 'none'"));
    const other = await browser.newPage();
    const complaints: string[] = [];
    other.on('console', (message) => complaints.push(message.text()));
    await other.goto(`file://${broken}`);
    expect(complaints.join()).toContain('Content Security Policy');
    expect(await other.locator('#stage').getAttribute('data-drawn')).toBeNull();
    await other.close();
  });
});
