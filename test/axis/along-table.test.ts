import { describe, expect, it } from 'vitest';
import { alongTable } from '../../src/axis/along-table.js';
import type { AxisDesign } from '../../src/axis/axis-design.js';
import { type Known, told } from '../../src/axis/known.js';
import { plusMinus } from '../../src/units/measured.js';

const UNKNOWN: Known = { missing: ['lengths.clear'] };
const NOWHERE = {
  shaftRoom: UNKNOWN,
  screwStart: UNKNOWN,
  jointEnd: UNKNOWN,
  near: UNKNOWN,
  far: UNKNOWN,
  holderEnd: UNKNOWN,
  screwEnd: UNKNOWN,
};
const tableOf = (along: object, duty: object = {}) =>
  alongTable({ along: { ...NOWHERE, ...along }, duty } as unknown as AxisDesign);
const rowsOf = (html: string) =>
  [...html.matchAll(/<tr><th scope="row">(.*?)<\/th><td class="n">(.*?)<\/td><td class="n">(.*?)<\/td><\/tr>/g)].map(
    ([, name, at, half]) => [name, at, half],
  );

describe('the table of places along the screw', () => {
  it('has each place that is known in its order, and how sure it is', () => {
    const html = tableOf({
      screwEnd: told(plusMinus(338, 0.1), ''),
      shaftRoom: told(3, ''),
      screwStart: told(28, ''),
      jointEnd: told(52.05, ''),
      near: told(plusMinus(60, 0.25), ''),
      far: told(plusMinus(330, 0.5), ''),
      holderEnd: told(plusMinus(335, 0.5), ''),
    });
    expect(rowsOf(html)).toEqual([
      ['the coupling begins', '3', '0'],
      ['the screw begins', '28', '0'],
      ['the coupling ends', '52.05', '0'],
      ['the nut comes to, at the motor', '60', '0.25'],
      ['the nut comes to, at the far end', '330', '0.5'],
      ['the end holder ends', '335', '0.5'],
      ['the screw ends', '338', '0.1'],
    ]);
    expect(html).toContain('From the face that the motor’s shaft stands out of, mm');
    expect(html).toContain('<th scope="col" class="n">at</th><th scope="col" class="n">±</th>');
    expect(html).not.toContain('Free length');
  });

  it('goes by the likely place, not by the one before it in the list', () => {
    const html = tableOf({ near: told(60, ''), screwStart: told(70, ''), far: told(20, '') });
    expect(rowsOf(html).map(([, at]) => at)).toEqual(['20', '60', '70']);
  });

  it('tells the free length where it is known, and is left out where nothing is', () => {
    expect(tableOf({ shaftRoom: told(3, '') }, { span: 283.46 })).toMatch(
      /<p>Free length of the screw: 283\.5 mm\.<\/p>$/,
    );
    expect(tableOf({}, { span: 283 })).toBe('');
  });
});
