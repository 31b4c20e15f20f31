import { createHash } from 'node:crypto';
import { inflateSync, strFromU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { base64 } from '../../src/output/page/base64.js';
import { xmlText } from '../../src/output/xml-text.js';
import { makePart } from '../../src/pipeline/make.js';
import { CUBES } from '../support/cube-kind.js';

const options = { kinds: CUBES, presets: {}, formats: ['page'] as const };

async function pageOf(sheet: object, more: object = {}): Promise<string> {
  const { files } = await makePart({ part: 'cube', name: 'a', size: 10, ...sheet }, { ...options, ...more });
  return new TextDecoder().decode(files.find(({ name }) => name === 'report.html')!.bytes);
}

describe('writePage', () => {
  it('forbids everything but its own script and styles, by their hashes', async () => {
    const page = await pageOf({});
    const policy = page.match(/http-equiv="Content-Security-Policy" content="([^"]*)"/)?.[1] ?? '';
    const between = (open: RegExp, close: string) =>
      [...page.matchAll(open)].map((m) => page.slice(m.index + m[0].length, page.indexOf(close, m.index)));
    const hashed = (texts: string[]) =>
      texts.map((one) => `'sha256-${createHash('sha256').update(one).digest('base64')}'`).join(' ');
    const [deflated = ''] = between(/id="viewer-code">/g, '</script>');
    const viewer = strFromU8(inflateSync(new Uint8Array(Buffer.from(deflated, 'base64'))));
    const script = hashed([...between(/<script>/g, '</script>'), viewer]);
    const styles = hashed(between(/<style>/g, '</style>'));
    expect(
      policy ===
        `default-src 'none'; script-src ${script}; worker-src blob:; style-src ${styles}; img-src data:; base-uri 'none'; form-action 'none'`,
      policy,
    ).toBe(true);
    expect(/(?:src|href)="(?:https?:)?\/\//.test(page)).toBe(false);
    expect(/ style="| on[a-z]+="/.test(page)).toBe(false);
  });

  it('names every check, caution, assumption and bought part', async () => {
    const page = await pageOf({});
    for (const text of [
      'cube-size',
      'cube-load',
      'not judged: duty.load is missing',
      'Mind the corners.',
      'none was given',
      'M3x10',
    ]) {
      expect(page).toContain(text);
    }
  });

  it('answers first: sentence and questions before the picture, what to see to after it', async () => {
    const page = await pageOf({ size: 30 });
    const places = ['class="lead"', 'class="questions"', 'id="part"', 'id="see"', 'id="card"'].map((mark) =>
      page.indexOf(mark),
    );
    expect(places.every((place, i) => place > (places[i - 1] ?? 0))).toBe(true);
    const row = '<dt>Prints?</dt><dd><span class="word not-told">not told</span> Load: duty.load is not told';
    expect(page.includes(row)).toBe(true);
    expect(page.includes('duty.load is not told, and without it nobody can judge: load.')).toBe(true);
  });

  it('boxes what was accepted although it fails, at the top and on the workshop card', async () => {
    const page = await pageOf({ size: 13 }, { accept: [{ check: 'heat', reason: 'never above 10 degrees' }] });
    const boxes = [
      ...page.matchAll(
        /class="accepted"><strong>Accepted although it fails<\/strong><p><span class="id">heat<\/span> — never above/g,
      ),
    ];
    const [top, card] = boxes.map(({ index }) => index);
    expect(boxes).toHaveLength(2);
    expect(top).toBeLessThan(page.indexOf('class="questions"'));
    expect(card).toBeGreaterThan(page.indexOf('id="card"'));
    expect(card).toBeLessThan(page.indexOf('id="step-1"'));
  });

  it('escapes reasons that were typed', async () => {
    const accept = [{ check: 'heat', reason: '<script>alert(1)</script>' }];
    const page = await pageOf({ size: 13 }, { accept });
    expect(page).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
    expect(page).not.toContain('<script>alert');
  });

  it('is the same text twice', async () => {
    const [first, second] = [await pageOf({}), await pageOf({})];
    expect(first === second).toBe(true);
  });
});

it('xmlText leaves out what XML forbids', () => {
  expect(xmlText('a\u0000\u001f<"\'&>\ufffeé')).toBe('a&lt;&quot;&#39;&amp;&gt;é');
});

it.each(['', 'f', 'fo', 'foo', 'foob', 'fooba', 'foobar'])('base64 of %j agrees with the platform', (text) => {
  expect(base64(new TextEncoder().encode(text))).toBe(btoa(text));
});
