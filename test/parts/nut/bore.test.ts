import { describe, expect, it } from 'vitest';
import { check, design } from '../../../src/index.js';
import { boreRoom, enteringBore, sidewaysInBore, widest } from '../../../src/parts/nut/bore.js';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import { workOut } from '../../../src/pipeline/work-out.js';
import { plusMinus } from '../../../src/units/measured.js';
import { changed, nutSheet } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

type Changes = Record<string, unknown>;
const found = (id: string, changes: Changes = {}) => findingOf(nutSheet(changes), id);
const AWAY = { stands: 'away', mounting: 'flange-down', holes: { head: 'body' } };

describe('a nut whose body stands away from its carriage', () => {
  it('puts the screw alone into the bore: 12 − 9.9 mm', () => {
    const row = found('mount-bore', {
      ...AWAY,
      screw: { designation: 'Tr10x2', major: '9.9 ± 0 mm' },
      carriage: { bore: '12 ± 0.1 mm' },
    })!;
    expect(row.message).toMatch(/^a screw 9.9 mm across in a bore of 12 mm leaves 2.1 mm$/);
    expect([row.least, row.value, row.most]).toEqual([2, 2.1, 2.2].map((one) => expect.closeTo(one, 6)));
  });

  it('fails where not even the screw passes', () => {
    expect(found('mount-bore', { ...AWAY, carriage: { bore: 9.5 } })!.verdict).toBe('fail');
  });

  it('puts its stub into the bore, as wide as its body: 17.5 − 17 mm', () => {
    const stub = { ...AWAY, flange: { offset: 3 }, carriage: { bore: 17.5 } };
    expect(found('mount-bore', stub)!.value).toBeCloseTo(0.5, 9);
    expect(found('mount-bore', stub)!.message).toMatch(/^a stub 17 mm/);
  });

  it('seats on all of its flange but bore and holes: π/4 (37² − 12² − 4·3.6²) = 921.4 mm²', () => {
    // round flange of 37, bore of 12 ± 0, four holes of 3.6: 1075.21 − 113.10 − 40.72
    const row = found('seat-pressure', { ...AWAY, mounting: 'flange-up', carriage: { bore: '12 ± 0 mm' } })!;
    const [, area] = /on a seat of ([\d.]+) mm²/.exec(row.message) ?? [];
    expect(Math.abs(Number(area) - 921.4)).toBeLessThan(2);
  });

  it('hangs its carriage on the screws where a through body would carry it, and the other way round', () => {
    const pulls = (changes: Changes) => (design(nutSheet(changes)) as unknown as { pulls: string[] }).pulls;
    expect(pulls({ carriage: { bore: 17.6 } })).toEqual(['away']);
    expect(pulls({ carriage: { bore: 17.6 }, mounting: 'flange-down' })).toEqual(['onto']);
    expect(pulls({ ...AWAY, carriage: { bore: 12 } })).toEqual(['away']);
    expect(pulls({ ...AWAY, mounting: 'flange-up' })).toEqual(['onto']);
  });

  it('rides on no fillet, and a mark may be raised on its free face', () => {
    expect(found('mount-seat', { ...AWAY, carriage: { bore: 12 } })).toBeUndefined();
    const marked = { mark: 'A', flange: { diameter: 50 }, holes: { circle: 40 } };
    expect(() => design(nutSheet({ ...marked, carriage: { bore: 17.6 } }))).toThrow(/between flange and carriage/);
    expect(() => design(nutSheet(changed(AWAY, { ...marked, carriage: { bore: 12 } })))).not.toThrow();
  });

  it('refuses what cannot be', () => {
    expect(() => design(nutSheet({ ...AWAY, flange: undefined, holes: undefined }))).toThrow(/wants a flange/);
    expect(() => design(nutSheet({ stands: 'away' }))).toThrow(/would lie between flange and carriage/);
  });
});

describe('what goes into the bore of a carriage', () => {
  const made = (changes: Changes = {}) => workOut(nutSheet(changes)) as NutDesign;
  const SCREW = { screw: { designation: 'Tr10x2', major: '9.9 ± 0.05 mm' } };
  const bare = { flange: undefined, holes: undefined, mounting: undefined };

  it.each<[string, number, Changes]>([
    ['round', 17, { diameter: 17 }],
    ['square', 17 * Math.SQRT2, { shape: 'square', diameter: undefined, across_flats: 17 }],
    ['hexagon', (17 * 2) / Math.sqrt(3), { shape: 'hexagon', diameter: undefined, across_flats: 17 }],
  ])('is a %s body, by the circle around it: %f mm', (_, across, body) => {
    const one = made({ body });
    expect(widest(one)).toBeCloseTo(across, 9);
    expect(enteringBore(one)).toEqual({
      what: 'body',
      across: { least: widest(one), likely: widest(one), most: widest(one) },
    });
  });

  it.each<[string, 'body' | 'stub' | 'screw', Changes]>([
    ['a body without a flange', 'body', bare],
    ['a body that ends with its flange', 'screw', { body: { length: 8 }, flange: { thickness: 8 } }],
    ['one that ends with a flange 3 mm up', 'screw', { body: { length: 8 }, flange: { offset: 3 } }],
    ['one that stands out of it', 'body', { body: { length: 8.1 }, flange: { offset: 3 } }],
    ['one that stands away', 'screw', AWAY],
    ['one that stands away, its flange 3 mm up', 'stub', { ...AWAY, flange: { offset: 3 } }],
  ])('of %s is its %s', (_, what, changes) => {
    expect(enteringBore(made(changes)).what).toBe(what);
  });

  it('leaves bore less body as it is printed: 0.5 ± 0.1 and 0.5 % of 17 mm; sideways half of it as it is wanted', () => {
    const room = boreRoom(made(), plusMinus(17.5, 0.1));
    expect([room.least, room.likely, room.most]).toEqual([0.315, 0.5, 0.685].map((one) => expect.closeTo(one, 9)));
    const aside = sidewaysInBore(made(), plusMinus(17.5, 0.1));
    expect([aside.least, aside.likely, aside.most]).toEqual([0.2, 0.25, 0.3].map((one) => expect.closeTo(one, 9)));
  });

  it('leaves bore less screw as both were read: 2.1 ± 0.15', () => {
    const one = made({ ...AWAY, ...SCREW });
    expect(enteringBore(one).across.likely).toBe(9.9);
    const room = boreRoom(one, plusMinus(12, 0.1));
    expect([room.least, room.likely, room.most]).toEqual([1.95, 2.1, 2.25].map((each) => expect.closeTo(each, 9)));
    const through = boreRoom(made({ ...SCREW, body: { length: 8 }, flange: { thickness: 8 } }), plusMinus(12, 0.1));
    expect(through.likely).toBeCloseTo(2.1, 9);
  });
});

describe('a nut that does not enter its bore', () => {
  const failing = (sheet: Changes) =>
    check(design(sheet))
      .checks.filter(({ verdict }) => verdict === 'fail')
      .map(({ id }) => id);

  it.each([
    [
      'too wide by a little',
      { carriage: { bore: 16.9 }, duty: { motor: { torque: '0.25 N m' } } },
      ['body.diameter', 'carriage.bore', 'stands', 'flange.thickness'],
    ],
    [
      'with no wall to spare',
      { carriage: { bore: 13 }, duty: { motor: { torque: '0.25 N m' } } },
      ['carriage.bore', 'stands', 'flange.thickness'],
    ],
    // the corner at the root of a body that stands away bears 1.6 times what the flange beside it does
    [
      'on a strong motor',
      { carriage: { bore: 13 }, duty: { feed: undefined, motor: { torque: '0.36 N m' } } },
      ['carriage.bore', 'flange.thickness'],
    ],
    ['in a bore that the screw just passes', { carriage: { bore: 10.02 } }, ['carriage.bore']],
    // no motor pulls the screws of a plate between out of their plastic
    [
      'on a screw turned by hand',
      { carriage: { bore: 13 }, duty: { motor: undefined } },
      ['carriage.bore', 'stands', 'flange.thickness', 'part'],
    ],
  ] as const)('%s is told ways that were tried, and each of them lets it in', (_, changes, named) => {
    const sheet = nutSheet(changes);
    const before = failing(sheet);
    expect(before).toContain('mount-bore');
    const made = design(sheet);
    const told = (made.remedies ?? []).filter((one) => one.check === 'mount-bore');
    expect(told.map(({ set }) => Object.keys(set)[0])).toEqual(named);
    const { message } = check(made).checks.find(({ id }) => id === 'mount-bore')!;
    for (const { set, words, another } of told) {
      expect(message).toContain(words);
      const after = another ?? withFields(sheet, set);
      const rows = check(design(after)).checks;
      const row = rows.find(({ id }) => id === 'mount-bore');
      expect(row === undefined || row.verdict === 'pass', words).toBe(true);
      expect(
        rows.filter(({ id, verdict }) => verdict === 'fail' && !before.includes(id)).map(({ id }) => id),
        words,
      ).toEqual([]);
    }
  });

  it('is told that nothing is left where nothing leads there, and no way beside it', () => {
    // the screw of 10 mm does not pass 9, and bored out to 17.3 next to nothing of a flange of 17.6 would lie on the carriage
    const sheet = nutSheet({ flange: { diameter: 17.6, thickness: 5 }, holes: undefined, carriage: { bore: 9 } });
    const { message } = check(design(sheet)).checks.find(({ id }) => id === 'mount-bore')!;
    expect(message).toMatch(/; no slimmer body, wider bore, .* keep the metal nut$/);
    expect(message).not.toContain('carriage.bore:');
  });
});

function withFields(sheet: Changes, set: Readonly<Record<string, unknown>>): Changes {
  return Object.entries(set).reduce<Changes>((made, [path, value]) => {
    const [section, field] = path.split('.') as [string, string?];
    return changed(made, { [section]: field === undefined ? value : { [field]: value } });
  }, sheet);
}
