import { describe, expect, it } from 'vitest';
import { type RememberedPart, rememberedPart } from '../../src/fleet/made-part.js';
import { pairFacts } from '../../src/fleet/pair-facts.js';
import { pairFindings } from '../../src/fleet/pairs.js';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { THREADED } from '../support/collar-sheets.js';
import { GUIDED, LOCATED } from '../support/end-holder-sheets.js';
import { MOUNTED } from '../support/motor-plate-sheets.js';
import { nutSheet } from '../support/nut-sheets.js';

function made(sheet: string | object): RememberedPart {
  const worked = design(sheet);
  return rememberedPart('', check(worked), pairFacts(worked), []);
}
const nut = (changes: Record<string, unknown> = {}, role = 'nut', axis = 'z') => ({
  role,
  axis,
  made: made(nutSheet(changes)),
});
const found = (...given: Parameters<typeof pairFindings>) =>
  pairFindings(...given).map(({ id, verdict }) => [id, verdict]);

describe('pairFindings', () => {
  // practice: equal lead, clearance within 0.05 mm
  it.each([
    [{}, 'pass'],
    [{ screw: 'Tr10x2-LH' }, 'caution'],
    [{ screw: 'Tr10x3' }, 'fail'],
    [{ fit: { diametral: 0.34, axial: 0.1 } }, 'pass'],
    [{ fit: { diametral: 0.36, axial: 0.1 } }, 'caution'],
  ])('the second nut of an axis with %j: %s', (changes, verdict) => {
    expect(found([nut(), nut(changes, 'other')], undefined)).toEqual([['axis-pair', verdict]]);
  });

  it('compares nuts of one axis only', () => {
    expect(found([nut(), nut({ screw: 'Tr10x3' }, 'other', 'y')], undefined)).toEqual([]);
  });

  it('holds what else is made for a screw against the nuts of its axis', () => {
    const on = (role: string, sheet: object) => ({ role, axis: 'z', made: made(sheet) });
    const thrust = (screw: object) => on('collar', { ...THREADED, screw });
    const own = { designation: 'Tr8x2', major: 7.95 };
    const nuts = [nut({ screw: own })];
    expect(found([...nuts, thrust(own)], undefined)).toEqual([
      ['axis-fit', 'pass'],
      ['axis-fit', 'pass'],
    ]);
    expect(found([...nuts, thrust({ designation: 'Tr8x2-LH', major: 7.95 })], undefined)[0]).toEqual([
      'axis-fit',
      'fail',
    ]);
    expect(found([...nuts, thrust({ designation: 'Tr8x8(P2)', major: 7.95 })], undefined)[0]).toEqual([
      'axis-fit',
      'fail',
    ]);
    // two screws, one of them left-handed: the part belongs to one of both
    const both = [nut({ screw: own }), nut({ screw: { designation: 'Tr8x2-LH', major: 7.95 } }, 'other')];
    expect(found([...both, thrust({ designation: 'Tr8x2-LH', major: 7.95 })], undefined)).toContainEqual([
      'axis-fit',
      'pass',
    ]);
  });

  it('lets one place alone carry a screw along its axis', () => {
    const carried = { role: 'collar', axis: 'z', made: made(THREADED) };
    const located = { role: 'end', axis: 'z', made: made(LOCATED) };
    expect(found([carried], undefined)).toEqual([['axis-fit', 'pass']]);
    expect(found([carried, located], undefined)).toEqual([['axis-fit', 'fail']]);
    expect(found([carried, { ...located, axis: 'y' }], undefined)).toEqual([
      ['axis-fit', 'pass'],
      ['axis-fit', 'pass'],
    ]);
    const guided = { role: 'end', axis: 'z', made: made(GUIDED) };
    expect(found([guided], undefined)).toEqual([]);
  });

  it('keeps a coupling off the plate that the motor’s shaft comes out of', () => {
    const coupling = { role: 'coupling', axis: 'z', made: made(startSheet('coupling')) };
    const depth = coupling.made.facts.motorDepth!;
    expect(depth).toBeGreaterThan(5);
    const plate = (beyond: number, axis = 'z') => {
      const sheet = {
        ...MOUNTED,
        plate: { thickness: 6 },
        motor: { ...MOUNTED.motor, shaft: { diameter: 5, length: 6 + depth + beyond } },
      };
      return { role: 'plate', axis, made: made(sheet) };
    };
    // common practice: a millimetre of air, and none is a hub that rubs
    expect(found([coupling, plate(1.01)], undefined)).toEqual([['axis-fit', 'pass']]);
    expect(found([coupling, plate(0.9)], undefined)).toEqual([['axis-fit', 'caution']]);
    expect(found([coupling, plate(-0.1)], undefined)).toEqual([['axis-fit', 'fail']]);
    expect(found([coupling, plate(-0.1, 'y')], undefined)).toEqual([]);
  });

  it('compares a coupling’s bores with the motor and with the screw of its axis', () => {
    // the sheet says a motor shaft of 5 mm and a Tr8x2 of 7.95 mm
    const coupling = { role: 'coupling', axis: 'z', made: made(startSheet('coupling')) };
    expect(found([coupling], 5)).toEqual([['coupling-motor', 'pass']]);
    expect(found([coupling], 5.1)).toEqual([['coupling-motor', 'caution']]);
    expect(found([coupling], 6.35)).toEqual([['coupling-motor', 'fail']]);
    const screw = (major: string) => nut({ screw: { designation: 'Tr8x2', major } });
    expect(found([coupling, screw('7.93 mm')], undefined)).toEqual([['coupling-screw', 'pass']]);
    expect(found([coupling, screw('7.70 mm')], undefined)).toEqual([['coupling-screw', 'fail']]);
    expect(found([coupling, nut()], undefined)).toEqual([['coupling-screw', 'caution']]);
  });
});

describe('pairs of plain facts', () => {
  const screw = {
    form: 'trapezoidal',
    flankAngle: 30,
    major: 8,
    pitchDiameter: 7,
    minor: 5.5,
    pitch: 2,
    lead: 2,
    starts: 1,
    hand: 'right',
  } as const;
  const one = (role: string, facts: object, axis: string | undefined = 'z') => ({
    role,
    axis,
    made: { facts } as unknown as RememberedPart,
  });
  const nutOf = (role: string, more: object = {}, axis?: string) => one(role, { nut: { ...screw, ...more } }, axis);

  it('tells how far a hub goes on the shaft that stands out of a plate, and what cures one that rubs', () => {
    const hub = (axis?: string) => one('hub', { motorDepth: 18 }, axis);
    const plate = (standsOut: number) => one('plate', { standsOut });
    const words = 'mm of shaft that stand out of plate, hub takes 18 mm';
    expect(pairFindings([hub(), plate(20)], undefined)).toEqual([
      { id: 'axis-fit', verdict: 'pass', roles: ['hub', 'plate'], message: `Of 20 ${words}.` },
    ]);
    expect(pairFindings([hub(), plate(18.5)], undefined)[0]!.message).toMatch(
      new RegExp(`^Of 18.5 ${words}: a shorter hub, `),
    );
    const loose = [hub(), plate(20)].map((part) => ({ ...part, axis: undefined }));
    expect(pairFindings(loose, undefined)).toEqual([]);
  });

  it('names both nuts that it compares, each pair once', () => {
    const pairs = pairFindings([nutOf('a'), one('x', {}), nutOf('b'), nutOf('c')], undefined);
    expect(pairs.map(({ roles }) => roles)).toEqual([
      ['a', 'b'],
      ['a', 'c'],
      ['b', 'c'],
    ]);
    expect(pairs[0]!.message).toMatch(/^Both travel the same a turn; /);
    // parts of no axis belong to nobody
    const loose = [nutOf('a'), nutOf('b')].map((part) => ({ ...part, axis: undefined }));
    expect(pairFindings(loose, undefined)).toEqual([]);
  });

  it('holds nothing against a nut of no axis', () => {
    const bored = { screwShaft: { least: 8, likely: 8, most: 8 } };
    const loose = [nutOf('n'), one('h', { screw }), one('c', bored)].map((part) => ({ ...part, axis: undefined }));
    expect(pairFindings(loose, undefined)).toEqual([]);
  });

  it('tells which shaft a coupling is bored for, and by how much it may be off', () => {
    const motor = (bored: number, shaft: number) =>
      pairFindings([one('c', { motorShaft: { least: bored, likely: bored, most: bored } })], shaft)[0]!;
    expect(motor(5, 5)).toEqual({
      id: 'coupling-motor',
      verdict: 'pass',
      roles: ['c'],
      message: "The coupling is bored for a motor shaft of 5 mm, the machine's has 5 mm.",
    });
    // practice: 0.05 mm, and 0.2 at the most, to either side
    expect([5.05, 5.1, 5.2, 5.3, 4.95, 4.9, 4.7].map((bored) => motor(bored, 5).verdict)).toEqual([
      'pass',
      'caution',
      'caution',
      'fail',
      'pass',
      'caution',
      'fail',
    ]);
    expect(pairFindings([one('c', {})], 5)).toEqual([]);
  });

  it('lets a coupling be bored for a turned end, and says so', () => {
    const bored = (diameter: number, axis?: string) =>
      pairFindings(
        [one('c', { screwShaft: { least: diameter, likely: diameter, most: diameter } }, axis), nutOf('n')],
        undefined,
      );
    const words = (diameter: number) =>
      `The coupling is bored for ${diameter} mm, the screw of n has 8 mm over its crests.`;
    expect(bored(8)).toEqual([{ id: 'coupling-screw', verdict: 'pass', roles: ['c', 'n'], message: words(8) }]);
    // up to 0.1 mm below the crests a screw goes in; below that its end is turned down
    expect(bored(7.92)).toMatchObject([{ verdict: 'pass', message: words(7.92) }]);
    expect(bored(6)).toMatchObject([{ verdict: 'caution', message: `${words(6)} Its end must be turned down.` }]);
    expect(bored(8.1)).toMatchObject([{ verdict: 'caution', message: words(8.1) }]);
    expect(bored(8.3)).toMatchObject([{ verdict: 'fail' }]);
    expect(bored(8, 'y')).toEqual([]);
  });

  it('tells what a part is made for, by the nut that it suits best', () => {
    const holder = (more: object = {}, axis?: string) => one('h', { screw: { ...screw, ...more } }, axis);
    expect(pairFindings([nutOf('n'), holder()], undefined)).toEqual([
      { id: 'axis-fit', verdict: 'pass', roles: ['h', 'n'], message: 'It is made for the screw of n.' },
    ]);
    expect(pairFindings([nutOf('n'), holder({ hand: 'left', pitch: 3 })], undefined)).toEqual([
      {
        id: 'axis-fit',
        verdict: 'fail',
        roles: ['h', 'n'],
        message: 'It is made for another screw than n: pitch 2 and 3 mm, hand right and left.',
      },
    ]);
    const fits = pairFindings([nutOf('a', { pitch: 3, starts: 2 }), nutOf('b', { hand: 'left' }), holder()], undefined);
    expect(fits.filter(({ id }) => id === 'axis-fit')).toMatchObject([
      { verdict: 'fail', roles: ['h', 'b'], message: 'It is made for another screw than b: hand left and right.' },
    ]);
    expect(pairFindings([nutOf('n'), holder({}, 'y')], undefined)).toEqual([]);
    expect(pairFindings([nutOf('n'), { ...holder(), axis: undefined }], undefined)).toEqual([]);
    expect(pairFindings([one('x', {}), holder()], undefined)).toEqual([]);
  });

  it('lets one way alone carry a screw, and names all that do', () => {
    const by = (carries: string, role: string, axis?: string) => one(role, { carries }, axis);
    expect(pairFindings([by('collar', 'k'), one('x', {})], undefined)).toEqual([
      {
        id: 'axis-fit',
        verdict: 'pass',
        roles: ['k'],
        message: 'The screw is carried by a collar on a thrust bearing.',
      },
    ]);
    expect(pairFindings([by('collar', 'k'), by('holder', 'h')], undefined)).toEqual([
      {
        id: 'axis-fit',
        verdict: 'fail',
        roles: ['k', 'h'],
        message:
          'The screw is carried by a collar on a thrust bearing and an end holder that locates it: they fight each other when it warms, keep one.',
      },
    ]);
    // of one way there may be two: each carries a screw of its own
    expect(pairFindings([by('holder', 'h'), by('holder', 'g')], undefined)).toMatchObject([
      { verdict: 'pass', roles: ['h', 'g'] },
    ]);
    // two screws, and nobody tells which part is on which
    const two = [nutOf('a'), nutOf('b'), by('sleeve', 's'), by('holder', 'h')];
    expect(pairFindings(two, undefined).filter(({ id }) => id === 'axis-fit')).toMatchObject([
      { verdict: 'caution', roles: ['s', 'h'] },
    ]);
    const single = [nutOf('a'), by('sleeve', 's'), by('holder', 'h')];
    expect(pairFindings(single, undefined)).toMatchObject([{ verdict: 'fail' }]);
    expect(pairFindings([by('collar', 'k'), by('holder', 'h', 'y')], undefined)).toHaveLength(2);
  });
});
