import { describe, expect, it } from 'vitest';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import { fitFigures, fitWithChances } from '../../../src/parts/nut/fit-figures.js';
import { workOut } from '../../../src/pipeline/work-out.js';
import { EXACT_NUT } from '../../support/exact-nut.js';
import { changed, nutSheet } from '../../support/nut-sheets.js';

type Changes = Record<string, unknown>;

/** tan 15° */
const K = 2 - Math.sqrt(3);
/** What the edges of layers of 0.08 mm take on a flank that leans with its lead by 0.2771: they stand 0.08 · (√(1 + 0.2771²) − 0.2771) out */
const LAYERS = 0.08 * (Math.hypot(1, 0.2771) - 0.2771);

const made = (changes: Changes = {}) => workOut(changed(nutSheet(EXACT_NUT), changes)) as NutDesign;
const five = ({ least, likely, most, worst }: ReturnType<typeof fitFigures>['play']) => [least, likely, most, ...worst];
const near = (...values: readonly number[]) => values.map((value) => expect.closeTo(value, 4));

describe('figures of a fit, by hand', () => {
  it('of a screw that is known exactly are one value each', () => {
    const { diametral, crestGap, rootGap, play, axial, freshAxial, layers } = fitFigures(made());
    const all = (value: number) => near(value, value, value, value, value);
    expect(five(diametral)).toEqual(all(0.3));
    expect(five(crestGap)).toEqual(all(0.4));
    expect(five(rootGap)).toEqual(all(0.4));
    expect(five(play)).toEqual(all(0.1 + 0.3 * K));
    expect(five(axial)).toEqual(all(0.1 + 0.3 * K));
    expect(layers).toBeCloseTo(LAYERS, 4);
    expect(five(freshAxial)).toEqual(all(0.1 + 0.3 * K - LAYERS));
  });

  it('lie within what everything at its worse bound gives; play less the drift at the end where less is left', () => {
    // shrink along the axis off by s = ± 0.2 %: play 1.1 · (1 − s) − 1 + 0.3 · tan 15° · (1 − s), drift 18 · s
    const { play, axial, freshAxial } = fitFigures(
      made({ effects: { shrink: 'on' }, material: { shrink: { axial: '0.6 ± 0.2 %' } } }),
    );
    const s = 0.002;
    const off = (1.1 + 0.3 * K) * s;
    expect(play.worst).toEqual(near(0.1 + 0.3 * K - off, 0.1 + 0.3 * K + off));
    // two standard deviations to either side: 19 of 20 lie within 1.96 of them
    expect([play.least, play.likely, play.most]).toEqual(
      near(0.1 + 0.3 * K - 0.98 * off, 0.1 + 0.3 * K, 0.1 + 0.3 * K + 0.98 * off),
    );
    // 0.1 + 0.3 · tan 15° · (1 − s) − 18 · s; at the most as much as one tooth has
    const worst = [0.1 + 0.3 * K * (1 - s) - 18 * s, 0.1 + 0.3 * K + off];
    expect(axial.worst).toEqual(near(...worst));
    expect(freshAxial.worst).toEqual(near(...worst.map((one) => one - LAYERS)));
    // |s| lies below 0.0006745 in half of the nuts and below 0.0022414 in 39 of 40, the last of which the bounds cut
    expect(axial.likely).toBeCloseTo(0.1 + 0.3 * K - 18 * 0.0006745, 3);
    expect(axial.least).toBeCloseTo(worst[0]!, 4);
    expect(freshAxial.likely).toBeCloseTo(axial.likely - LAYERS, 4);
    expect(freshAxial.most).toBeCloseTo(axial.most - LAYERS, 4);
  });
});

describe('chances of a fit, by hand', () => {
  const chances = (changes: Changes) => {
    const { starts, turns, turnsRunIn } = fitWithChances(made(changes));
    return [starts, turns, turnsRunIn];
  };
  /** nobody compensates shrink: the pitch is 0.6 % short, which is all lost over the length; 0.0799 + 0.1 are there before */
  const SHORT = { printer: { compensation: { shrink: 'none', holes: 'file' } } };

  it.each<[string, Changes, readonly number[]]>([
    ['all is wide enough', {}, [1, 1, 1]],
    // 0.03 + 0.1 · tan 15° = 0.0568 mm of play, less than the layers' 0.0608
    ['the layers take all play', { fit: { diametral: 0.1, axial: 0.03 } }, [0, 0, 1]],
    // 0.006 · 18 = 0.108 leaves 0.072, and 0.0608 of it are the layers'
    ['its drift leaves more than the layers take', SHORT, [1, 1, 1]],
    // 0.006 · 24 = 0.144 leaves 0.036
    ['its drift leaves less than they take', { ...SHORT, body: { length: 24 } }, [1, 0, 1]],
    ['its drift leaves nothing', { ...SHORT, body: { length: 36 } }, [1, 0, 0]],
    // 0.1 − 0.15 on the diameter
    [
      'flanks meet on the diameter alone',
      { fit: { diametral: 0.1, axial: 0.3 }, printer: { compensation: { shrink: 'file', holes: 'none' } } },
      [0, 0, 0],
    ],
    // a core of 8.4 mm in a bore of 8.3
    ['the core does not pass', { screw: { minor: '8.4 ± 0 mm' } }, [0, 0, 0]],
  ])('%s', (_, changes, wanted) => {
    expect(chances(changes)).toEqual(near(...wanted));
  });

  it('count the entry behind a squashed first layer: of up to 2 · (0.8 − 0.05) mm, 0.8 mm of room take 8 in 15', () => {
    const squashed = { effects: { first_layer: 'on' }, printer: { first_layer: 0.8 }, lead_in: 0.05 };
    expect(chances(squashed)).toEqual(near(8 / 15, 8 / 15, 8 / 15));
  });

  it('tell how many stay below a play', () => {
    const { playBelow } = fitWithChances(made());
    expect([playBelow(0.18), playBelow(0.181)]).toEqual([0, 1]);
  });
});
