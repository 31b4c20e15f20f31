import { describe, expect, it } from 'vitest';
import { BOUGHT_HUBS, couplingSheet } from '../../../support/coupling-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

const found = (id: string, changes: Parameters<typeof couplingSheet>[0] = {}) => findingOf(couplingSheet(changes), id);
const ball = (diameter: number, hole = 8.6) => ({ insert: { hole, pad: { kind: 'ball', diameter } } });
const disc = (diameter: number, hole = 8.6) => ({ insert: { hole, pad: { kind: 'disc', diameter } } });

// shafts of 5 ± 0.03 and 7.95 ± 0.03 mm
describe('room in the hole of an insert', () => {
  it('is that of the pad, or of the thicker shaft where that is wider', () => {
    expect(found('pad-room', ball(8.4))).toMatchObject({
      word: 'yes',
      value: 0.2,
      message: 'a ball of 8.4 mm in a hole of 8.6 mm',
    });
    expect(found('pad-room', disc(8.5))).toMatchObject({
      word: 'but',
      value: 0.1,
      message: 'a disc of 8.5 mm in a hole of 8.6 mm; widen insert.hole, or leave it out',
    });
    expect(found('pad-room', disc(7))).toMatchObject({
      value: 0.62,
      message: 'a shaft of 7.98 mm in a hole of 8.6 mm',
    });
    expect(found('pad-room', disc(8.7))).toMatchObject({ word: 'no', value: -0.1 });
  });

  it('is asked of a rigid pad alone, between bought hubs too', () => {
    for (const pad of ['soft', 'none']) {
      expect(found('pad-room', { insert: { pad } })).toBeUndefined();
      expect(found('pad-aside', { insert: { pad } })).toBeUndefined();
    }
    const bought = { ...BOUGHT_HUBS, insert: { hole: 9, pad: { kind: 'disc', diameter: 8 } } };
    expect(found('pad-room', bought)).toMatchObject({ value: 1 });
    expect(found('pad-aside', bought)).toBeUndefined();
  });
});

describe('a pad that lies aside', () => {
  it('is judged by half of its play, over what the flat leaves of the shaft: 4.5 − 2.5 mm', () => {
    expect(found('pad-aside', ball(6.6))).toMatchObject({
      word: 'yes',
      value: 0.5,
      message: 'a ball of 6.6 mm lies up to 1 mm aside in its hole, a shaft’s end reaches 2 mm',
    });
    expect(found('pad-aside', ball(6))).toMatchObject({
      word: 'but',
      value: 0.65,
      message:
        'a ball of 6 mm lies up to 1.3 mm aside in its hole, a shaft’s end reaches 2 mm; a wider ball (insert.pad.diameter), or a narrower insert.hole',
    });
    expect(found('pad-aside', disc(4.4))).toMatchObject({ word: 'no', value: 1.05 });
  });

  it('is judged by the radius of a round shaft, and not at all where it does not go in', () => {
    const round = { ...ball(6.1), motor: { shaft: { diameter: 5, flat: undefined } } };
    expect(found('pad-aside', round)).toMatchObject({ value: 0.5 });
    expect(found('pad-aside', disc(8.6))).toMatchObject({ value: 0 });
    expect(found('pad-aside', disc(8.7))).toBeUndefined();
  });
});
