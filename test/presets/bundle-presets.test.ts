import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PRESET_FOLDERS } from '../../src/presets/kinds.js';
import { SHIPPED, SHIPPED_VALUES } from '../../src/presets/shipped.js';
import { readYaml } from '../../src/sheet/read-yaml.js';

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

  it('holds of every preset what our own reader reads in its text', () => {
    const folders: readonly string[] = Object.values(PRESET_FOLDERS);
    const presets = Object.keys(SHIPPED).filter((path) => folders.includes(path.split('/')[0]!));
    expect(Object.keys(SHIPPED_VALUES)).toEqual(presets);
    for (const [file, json] of Object.entries(SHIPPED_VALUES))
      expect(JSON.parse(json), file).toEqual(readYaml(SHIPPED[file]!).value);
  });
});
