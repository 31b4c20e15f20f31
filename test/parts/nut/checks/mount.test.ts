import { describe, expect, it } from 'vitest';
import { nutSheet } from '../../../support/nut-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

type Changes = Record<string, unknown>;
const found = (id: string, changes: Changes = {}) => findingOf(nutSheet(changes), id)!;

/** Nothing that shrinks more or less than it should. */
const STEADY = { preset: 'pa12', shrink: { plane: '0 ± 0 %', axial: '0 ± 0 %' } };
const carriage = (changes: Changes) => ({
  holes: { count: 4, circle: '27 ± 0 mm', start: 45, diameter: '3.6 ± 0 mm', screw: 'M3', ...changes },
});
const sleeves = { float: 0.3, holes: { fit: undefined } };

describe('heads on their holes by hand: (across − hole)/2', () => {
  // M3: washer 7 mm, head and nut 5.5 mm; a sleeve of 5 mm; M5 shoulder 6 mm, its head 10.2 mm
  it.each<[string, Changes, RegExp]>([
    ['a washer on 3.6 mm, 1.7 mm', {}, /^the washer, 7 mm across, bears on a ring 1\.7 mm wide/],
    ['a washer on 5 + 2 · 0.3, 0.7 mm', sleeves, /^the washer, 7 mm across, .* 0\.7 mm wide around a hole of 5\.6 mm/],
    [
      'a shoulder screw on 6 + 2 · 0.3, 1.8 mm',
      {
        float: { sideways: 0.3, spacer: 'shoulder' },
        holes: { fit: undefined, screw: 'M5', circle: 32 },
        flange: { diameter: 46 },
      },
      /^the head, 10\.2 mm across, .* 1\.8 mm wide around a hole of 6\.6 mm/,
    ],
    [
      'a sleeve on a carriage with 4.6 mm, 0.2 mm',
      { ...sleeves, carriage: carriage({ diameter: 4.6 }) },
      /^the sleeve on the carriage, 5 mm across, .* 0\.2 mm wide around a hole of 4\.6 mm/,
    ],
    [
      'no sleeve around bare screws, but a washer on 4.6 mm, 1.2 mm',
      { float: { sideways: 0.3, spacer: 'bare' }, holes: { fit: undefined }, carriage: carriage({ diameter: 4.6 }) },
      /^the washer on the carriage, 7 mm across, .* 1\.2 mm wide around a hole of 4\.6 mm/,
    ],
    [
      'a washer on a carriage with 4.5 mm, 1.25 mm',
      { carriage: carriage({ diameter: 4.5 }) },
      /^the washer on the carriage, 7 mm across, .* 1\.25 mm wide around a hole of 4\.5 mm/,
    ],
    ...['insert', 'tapped', 'hexagon'].map((joint): [string, Changes, RegExp] => [
      `a head opposite the ${joint} on 4.5 mm, 0.5 mm`,
      { holes: { joint }, carriage: carriage({ diameter: 4.5 }) },
      /^the head on the carriage, 5\.5 mm across, .* 0\.5 mm wide around a hole of 4\.5 mm/,
    ]),
  ])('%s', (_, changes, words) => {
    expect(found('head-seat', changes).message).toMatch(words);
  });
});

it('asks for the screw of a hole of 4.2 mm, which is no usual one of M3 and passes no M4', () => {
  const unnamed = { holes: { screw: undefined, fit: undefined, diameter: 4.2 } };
  expect(found('head-seat', unnamed).missing).toEqual(['holes.screw']);
});

describe('what screws clamp', () => {
  const clamped = (changes: Changes) =>
    Number(
      /clamps (\d+) N, set by pull-out/.exec(found('bolt-clamp', { ...changes, duty: { pull: 'away' } }).message)![1],
    );

  it('M3 inserts hold by 2 · 3 mm of thread, or by the plate where that is thinner: 5 mm hold 5/6', () => {
    const whole = clamped({ holes: { joint: 'insert' }, flange: { thickness: 8 } });
    expect(clamped({ holes: { joint: 'insert' } }) / whole).toBeCloseTo(5 / 6, 2);
    expect(clamped({ holes: { joint: 'insert' }, flange: undefined, body: { diameter: 40 } }) / whole).toBeCloseTo(
      1,
      2,
    );
  });

  it('a floating flange of 30 N on four rings: 7.5/(π/4 · (7² − 5.65²)) = 0.559 MPa', () => {
    // holes of 5 + 0.6 mm come out 0.05 mm larger at most
    const row = found('float-pull', { ...sleeves, material: STEADY, duty: { motor: undefined, pull: 'away' } });
    expect(row.value).toBeCloseTo(0.559174, 5);
    expect(row.message).toMatch(/0\.56 MPa on the rings under 4 heads/);
  });
});

describe('screws on one side of the load', () => {
  const BLOCK = { flange: { shape: 'rectangular', size: [44, 34], diameter: undefined, thickness: 8 } };
  const on = (at: readonly (readonly number[])[]): Changes => ({
    ...BLOCK,
    holes: {
      at,
      count: undefined,
      circle: undefined,
      start: undefined,
      screw: 'M4',
      fit: 'medium',
      diameter: undefined,
    },
  });
  const beside = on([
    [15, 9],
    [15, -9],
  ]);

  it('pull 22/7 times the load, as the edge 22 mm away pries 7 mm beyond them', () => {
    const through = on([
      [15, 9],
      [-15, -9],
    ]);
    expect(found('bolt-clamp', through).value! / found('bolt-clamp', beside).value!).toBeCloseTo(22 / 7, 5);
    expect(found('bolt-clamp', beside).message).toContain(
      ' 2 of them, 15 mm beside the load, which pries up to 1.6 times itself on each,',
    );
  });

  it('ask for screws on the other side', () => {
    const weak = { ...beside, limits: { 'bolt-clamp': { min: 1e6 } } };
    expect(found('bolt-clamp', weak).message).toContain('; use screws on the other side too, more or larger screws');
  });

  it('bend the flange through their holes: 15 mm of arm, the load spread from 18 mm by 45°', () => {
    const body = { diameter: 18 };
    const pull = { duty: { pull: 'away', load: 40 } };
    // 18 + 2 · (15 − 9) less two holes of 4.5 mm is 21 mm: Z = 21 · 64 / 6 = 224 mm³, 15/224 MPa for each newton
    const { message, value } = found('flange-bending', { ...beside, body, ...pull, material: STEADY });
    expect(message).toMatch(
      /: [\d.]+ MPa pulled off its carriage, tipped about its edge, 15 mm of arm on a section of 21 × 8 mm;/,
    );
    const force = Number(/under (\d+) N/.exec(message)![1]);
    expect(value! / force).toBeCloseTo(15 / 224, 3);
  });
});

describe('gaps of heads and holes by hand', () => {
  // circle 27 mm, body 17 mm: 13.5 − 8.5 = 5; thread 10.8 mm and lead-in 0.5 mm: 13.5 − 5.4 − 0.5 = 7.6
  const hexagon = 5.7 / Math.sqrt(3);
  const counterbore = (5.68 + 0.5) / 2;
  const bare = { flange: undefined, body: { diameter: 40 } };
  it.each<[string, Changes, number]>([
    ['without a flange, the washer of a head', bare, 7.6 - 3.5],
    ['without a flange, a hole', { ...bare, holes: { head: 'none' } }, 7.6 - 1.8],
    ['without a flange, a washer that floats', { ...bare, ...sleeves }, 7.6 - 3.5 - 0.3],
    ['without a flange, a floating hole', { ...bare, float: 0.3, holes: { fit: undefined, head: 'none' } }, 7.6 - 2.8],
    ['a head opposite the body', {}, 5 - 1.8],
    ['the washer of a head beside a stub', { flange: { offset: 6 } }, 5 - 3.5],
    ['a hole beside a stub', { flange: { offset: 6 }, holes: { head: 'none' } }, 5 - 1.8],
    ['a nut on the body side', { holes: { joint: 'hexagon' } }, 5 - hexagon],
    ['a nut on the far side', { holes: { joint: 'hexagon', head: 'body' } }, 5 - 2.75],
    ['a nut beside a stub', { flange: { offset: 6 }, holes: { joint: 'hexagon', head: 'body' } }, 5 - hexagon],
    ['a counterbore on the far side', { holes: { joint: 'counterbore' } }, 5 - 1.8],
    ['a counterbore on the body side', { holes: { joint: 'counterbore', head: 'body' } }, 5 - counterbore],
    ['a counterbore beside a stub', { flange: { offset: 6 }, holes: { joint: 'counterbore' } }, 5 - counterbore],
  ])('%s', (_, changes, gap) => {
    expect(found('hole-clearance', { fillet: 0, lead_in: 0.5, ...changes }).value).toBeCloseTo(gap, 5);
  });
});

describe('the worst of a pattern, of a bore and of two patterns', () => {
  it('is the hole nearest to a square body: 13.5 · sin 60° − 8.5 − 1.8, where another is 13.5 − 8.5 − 1.8 away', () => {
    const body = { shape: 'square', diameter: undefined, width: 17 };
    const three = { count: 3, start: 0, head: 'none' };
    expect(found('hole-clearance', { fillet: 0, body, holes: three }).value).toBeCloseTo(
      13.5 * Math.sin(Math.PI / 3) - 10.3,
      3,
    );
  });

  it('is a body of 17 mm that shrank by 1 ± 0.2 % in 17.5 mm: 0.5 + 0.17 ± 0.034 mm', () => {
    const row = found('mount-bore', {
      material: { shrink: { plane: '1 ± 0.2 %' } },
      printer: { compensation: 'none' },
      carriage: { bore: '17.5 ± 0 mm' },
    });
    expect([row.least, row.value, row.most]).toEqual([0.636, 0.67, 0.704].map((one) => expect.closeTo(one, 5)));
  });

  it('no body enters a bore where it ends with its flange: 13 + 5 of 18 mm', () => {
    const bored = { carriage: { bore: 17.5 } };
    const message = (offset: number) => findingOf(nutSheet({ ...bored, flange: { offset } }), 'mount-bore')!.message;
    expect(message(13)).toMatch(/^a screw 10 mm across/);
    expect(message(12)).toMatch(/^a body 17 mm across/);
  });

  it('is half of what both circles may be off: 0.6 − 0.2 ± (0.1 + 0.06)/2 ± 0.05/2 mm, less 0.1 mm of scatter at the least', () => {
    // circles of 27 and 27.4 mm; M3 in two holes of 3.6 mm, of which the printed one scatters by 0.05 mm
    const row = found('mount-float', {
      material: STEADY,
      holes: { circle: '27 ± 0.06 mm' },
      carriage: carriage({ circle: '27.4 ± 0.1 mm' }),
    });
    expect([row.least, row.value, row.most]).toEqual([0.195, 0.4, 0.505].map((one) => expect.closeTo(one, 5)));
  });

  it('is no ring at all under a washer of 7 mm on 5 + 2 · 1.5 mm', () => {
    expect(found('float-pull', { float: 1.5, holes: { fit: undefined } }).verdict).toBe('fail');
  });
});

describe('walls and floors of pockets by hand', () => {
  it('a nut keeps 1.6 mm to the edge, an insert 2 mm', () => {
    // 18.5 − 13.5 − 5.7/√3; of an insert of 4 mm on a circle of 32 mm 18.5 − 16 − 2 = 0.5
    const nut = found('pocket-wall', { holes: { joint: 'hexagon' } });
    expect(nut).toMatchObject({ verdict: 'pass', limit: { min: 1.6 } });
    expect(nut.value).toBeCloseTo(5 - 5.7 / Math.sqrt(3), 5);
    const insert = found('pocket-wall', { holes: { joint: 'insert', circle: 32 } });
    expect(insert).toMatchObject({ verdict: 'fail', value: 0.5, limit: { min: 2 }, fail_limit: { min: 1.5 } });
    expect(insert.message).toMatch(/; 1\.5 mm are missing/);
  });

  it('a head of 3 mm sunk into a nut of 18 mm without a flange leaves 15 mm, 187.5 layers of 0.08 mm', () => {
    const sunk = { flange: undefined, body: { diameter: 40 }, holes: { joint: 'counterbore' } };
    expect(found('pocket-floor', sunk).value).toBeCloseTo(15 / 0.08, 3);
  });
});

describe('edges and ligaments by hand', () => {
  const plainHole = (diameter: number) => ({ holes: { screw: undefined, fit: undefined, diameter, head: 'none' } });

  it('holes that no listed screw passes are measured by themselves, and keep 1.2 mm', () => {
    // flange of 37 mm: 18.5 − 13.5 = 5 mm; 5/1.5, and (0.75 + 1.2)/1.5 = 1.3
    expect(found('hole-edge', plainHole(1.5))).toMatchObject({
      value: expect.closeTo(5 / 1.5, 5),
      limit: { min: 1.5 },
      fail_limit: { min: expect.closeTo(1.3, 5) },
    });
    // (0.5 + 1.2)/1 = 1.7; a flange of 30 mm leaves 1.5 mm, so 0.2 mm are wanted
    const thin = found('hole-edge', { ...plainHole(1), flange: { diameter: 30 } });
    expect(thin).toMatchObject({ verdict: 'fail', limit: { min: expect.closeTo(1.7, 5) } });
    expect(thin.message).toBe(
      'centres 1.5 mm from the edge, 1 mm of material left; 0.2 mm more of edge are wanted: a larger flange or a smaller circle',
    );
  });

  it('an insert of M3 fails below (2 + 1.2)/3 diameters', () => {
    expect(found('hole-edge', { holes: { joint: 'insert' } }).fail_limit!.min).toBeCloseTo(3.2 / 3, 5);
  });

  it.each<[string, Changes, number]>([
    ['two washers of 7 mm, which may come within 1.2 mm less', { head: 'flange' }, 27 - (7 - 1.2)],
    ['two holes of 3.6 mm', { head: 'none' }, 27 - 3.6],
    ['two nuts of 5.5 + 0.2 mm, over corners', { joint: 'hexagon' }, 27 - (2 * 5.7) / Math.sqrt(3)],
  ])('between %s, 27 mm apart', (_, changes, ligament) => {
    expect(found('hole-spacing', { holes: { count: 2, ...changes } }).value).toBeCloseTo(ligament, 5);
  });

  it('one hole has no neighbour', () => {
    expect(findingOf(nutSheet({ holes: { count: 1 } }), 'hole-spacing')).toBeUndefined();
  });
});

it('moves sideways by half the play in its holes, less what two or more may stand off: 0.5 % of 27 mm, half of it, and 0.1 mm', () => {
  // 3.6 − 3 mm, off by 0.5 % of 3.6 and 0.05
  const room = (count: number) => found('mount-float', { holes: { count, start: 0 } });
  expect(room(1)).toMatchObject({ least: expect.closeTo(0.266, 6), value: expect.closeTo(0.3, 6) });
  for (const count of [2, 3]) expect(room(count).least).toBeCloseTo(0.266 - 0.1675, 6);
});

describe('what the carriage has between its bore and its holes, by hand', () => {
  it('is 12.5 − 14.5 − 1.5 mm of M3 on 25 mm over a bore of 29, and of its own holes where they are told', () => {
    const open = { holes: { circle: 25 }, carriage: { bore: '29 ± 0 mm' } };
    expect(found('carriage-wall', open)).toMatchObject({ word: 'no', value: expect.closeTo(-3.5, 6) });
    const own = { count: 4, circle: 35, start: 45, screw: 'M3', diameter: '3.6 ± 0 mm' };
    // 17.5 − 14.5 − 1.8
    expect(found('carriage-wall', { ...open, carriage: { bore: '29 ± 0 mm', holes: own } }).value).toBeCloseTo(1.2, 6);
  });

  it('counts a hole that no listed screw goes through by its own size: 30 − 15 − 10 mm', () => {
    const wide = {
      flange: { diameter: 90 },
      holes: { circle: 60, screw: undefined, fit: undefined, diameter: '20 ± 0 mm', head: 'none' },
      carriage: { bore: '30 ± 0 mm' },
    };
    expect(found('carriage-wall', wide).value).toBeCloseTo(5, 6);
  });

  it('is nothing of a nut without holes', () => {
    expect(found('carriage-wall', { flange: undefined, holes: undefined, carriage: { bore: 29 } })).toBeUndefined();
  });
});

it('a nut that goes in nowhere with all of its screws has no room to align', () => {
  // holes of 3.6 mm on 27 mm against threads on 24 mm: 1.5 mm apart, 0.3 mm of room
  const apart = { carriage: { bore: 20, holes: { count: 4, circle: 24, start: 45, screw: 'M3', diameter: 3.6 } } };
  const row = found('mount-float', apart);
  expect(row.value).toBeLessThan(0);
  expect(row.message).toContain('no room to align: the nut goes in nowhere with all of its screws');
});

describe('a nut that no screws hold', () => {
  it('is told that something else must keep it from turning', () => {
    const bare = { holes: undefined, carriage: undefined };
    for (const changes of [{ ...bare, flange: undefined }, bare]) {
      const row = found('mount-held', changes);
      expect(row).toMatchObject({ verdict: 'caution', word: 'but', grave: true });
      expect(row.message).toContain('must keep it from turning');
    }
    expect(found('mount-held')).toBeUndefined();
  });
});

describe('threads of the holes', () => {
  // a flange of 3 mm has three quarters of an M4
  it('want a flange as thick as they are wide', () => {
    const tapped = (thickness: number) =>
      found('hole-engagement', { holes: { screw: 'M4', joint: 'tapped', fit: undefined }, flange: { thickness } });
    expect(tapped(3)).toMatchObject({ value: 0.75, verdict: 'fail' });
    expect(tapped(3).message).toBe('0.75 diameters of thread; a thicker flange holds more');
    expect(tapped(4)).toMatchObject({ value: 1, verdict: 'caution' });
    expect(tapped(6)).toMatchObject({ value: 1.5, verdict: 'pass', message: '1.5 diameters of thread' });
    expect(found('hole-engagement')).toBeUndefined();
  });
});
