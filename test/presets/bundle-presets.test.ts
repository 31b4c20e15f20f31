import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { SHIPPED } from '../../src/presets/shipped.js';

describe('SHIPPED', () => {
  it('holds every preset file, in order', () => {
    const root = new URL('../../presets/', import.meta.url);
    const paths = readdirSync(root, { recursive: true, encoding: 'utf8' }).map((path) => path.replaceAll('\\', '/'));
    const files = paths.filter((path) => path.endsWith('.yaml')).sort((a, b) => (a < b ? -1 : 1));
    expect(Object.keys(SHIPPED)).toEqual(files);
    for (const file of files) {
      expect(SHIPPED[file], file).toBe(readFileSync(new URL(file, root), 'utf8').replaceAll('\r\n', '\n'));
    }
  });
});
