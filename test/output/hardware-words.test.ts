import { describe, expect, it } from 'vitest';
import { hardwareWords } from '../../src/output/hardware-words.js';

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
