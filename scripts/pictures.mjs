// Renews docs/pictures/ from the sheets that ship, by the command as it is built: npm run build first.
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';

const ROOT = join(import.meta.dirname, '..');
const TO = join(ROOT, 'docs/pictures');
const PICTURES = [
  ['nut', 'whole', 'nut.png'],
  ['nut', 'section', 'nut-section.png'],
  ['coupling', 'apart', 'coupling-apart.png'],
  ['sleeve', 'whole', 'sleeve.png'],
  ['collar', 'whole', 'collar.png'],
  ['adapter', 'whole', 'adapter.png'],
];

mkdirSync(TO, { recursive: true });
const out = mkdtempSync(join(tmpdir(), 'leadwright-pictures-'));
for (const [kind, show, file] of PICTURES) {
  make(kind, ['--formats', 'stl', '--picture', join(TO, file), '--show', show]);
}
const { name } = make('nut', ['--formats', 'drawing,page']);
await photograph(join(out, name));
rmSync(out, { recursive: true });

/** One call of the command, and its report. */
function make(kind, options) {
  const sheet = join(ROOT, `presets/sheets/demo-${kind}.yaml`);
  const report = execFileSync(
    process.execPath,
    [join(ROOT, 'dist/leadwright.js'), 'make', sheet, '--out', out, '--json', ...options],
    { maxBuffer: 1e8 },
  );
  return JSON.parse(report);
}

/** Drawing and page as a browser shows them. */
async function photograph(folder) {
  const home = mkdtempSync(join(tmpdir(), 'leadwright-browser-'));
  const browser = await chromium.launchPersistentContext(home, {
    executablePath: '/usr/bin/chromium',
    headless: true,
    viewport: { width: 1123, height: 794 },
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--no-first-run',
      '--disable-background-networking',
      '--enable-unsafe-swiftshader',
      '--use-gl=angle',
      '--use-angle=swiftshader',
    ],
  });
  const page = await browser.newPage();
  await page.goto(pathToFileURL(join(folder, 'drawing.svg')).href);
  await page.screenshot({ path: join(TO, 'nut-drawing.png') });
  await page.setViewportSize({ width: 1000, height: 1180 });
  await page.goto(pathToFileURL(join(folder, 'report.html')).href);
  await page.waitForFunction(() => document.getElementById('stage')?.dataset.drawn);
  await page.screenshot({ path: join(TO, 'nut-page.png') });
  await live(page, folder);
  await browser.close();
  rmSync(home, { recursive: true, force: true });
}

/** The live page on the start sheet of a nut, on a desk and on a phone. */
async function live(page, folder) {
  const file = join(folder, 'live.html');
  execFileSync(process.execPath, [join(ROOT, 'dist/leadwright.js'), 'live', '--to', file]);
  for (const [picture, width, height] of [
    ['live-desk.png', 1440, 900],
    ['live-phone.png', 390, 844],
  ]) {
    await page.setViewportSize({ width, height });
    await page.goto('about:blank');
    await page.goto(pathToFileURL(file).href);
    await page.getByText('The nut is worn').click();
    await page.getByText('I know the screw').click();
    await page.locator('.hatched').first().waitFor();
    await page.waitForTimeout(3000);
    await page.evaluate(() => scrollTo(0, 0));
    await page.screenshot({ path: join(TO, picture) });
  }
}
