import { describe, expect, it } from 'vitest';
import { tableTextOf, textOf } from '../../src/work/text-of.js';

const TEXT = 'machine;screw.major\r\nZ-Tür;7,95 ± 0,02 mm\r\n';
const bigEndian = Uint8Array.from(Buffer.from(`\ufeff${TEXT}`, 'utf16le').swap16());
// ± and ü are the bytes B1 and FC there, as in the first rows of Unicode
const oldPage = Uint8Array.from(Buffer.from(TEXT, 'latin1'));

describe('textOf', () => {
  it('reads UTF-8 and UTF-16 with and without their marks', () => {
    for (const bytes of [
      Buffer.from(TEXT),
      Buffer.from(`\ufeff${TEXT}`),
      Buffer.from(`\ufeff${TEXT}`, 'utf16le'),
      bigEndian,
    ])
      expect(textOf(bytes)).toBe(TEXT);
  });

  it('takes no code page for a sheet', () => {
    expect(() => textOf(oldPage)).toThrow('must be UTF-8 text');
  });
});

describe('tableTextOf', () => {
  it('reads what spreadsheets write, the code page of western Windows included', () => {
    for (const bytes of [Buffer.from(TEXT), Buffer.from(`\ufeff${TEXT}`, 'utf16le'), bigEndian, oldPage])
      expect(tableTextOf(bytes)).toBe(TEXT);
  });

  it('refuses what is no text', () => {
    expect(() => tableTextOf(Uint8Array.from([0x50, 0x4b, 0, 0xff, 0xb1]))).toThrow('binary file');
  });
});
