import { describe, expect, it } from 'vitest';
import { hardwareWords, untoldWords } from '../../../src/parts/common/hardware-words.js';

describe('hardwareWords', () => {
  it('sets sizes of one thing together, in the order in which they were first named', () => {
    const rows = [
      { item: 'screw', size: 'M3x16', count: 5 },
      { item: 'washer', size: 'M3', count: 12 },
      { item: 'screw', size: 'M4x20', count: 4 },
    ];
    expect(hardwareWords(rows)).toEqual(['5 × M3x16, 4 × M4x20 screw', '12 × M3 washer']);
    expect(hardwareWords([])).toEqual([]);
  });
});

describe('untoldWords', () => {
  it('says which reading tells the length of a screw that has none', () => {
    const rows = [{ item: 'screw', size: 'M4', count: 4, untold: 'carriage.thickness' }];
    expect(hardwareWords(rows)).toEqual(['4 × M4 (as long as carriage.thickness tells) screw']);
    expect(untoldWords({})).toBe('');
  });
});
