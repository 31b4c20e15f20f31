import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { identify } from '../../src/identify/identify.js';
import { identificationJson } from '../../src/identify/json.js';
import type { Readings } from '../../src/identify/readings.js';
import { readDriveSheet } from '../../src/pipeline/drive-sheet.js';
import { measureOverWires } from '../../src/standards/three-wire.js';
import { InputError } from '../../src/units/faults.js';

const named = (readings: Readings) => identify(readings).candidates[0]?.designation;
const TR8 = { major: [7.92, 7.94, 7.91], crests: { count: 10, length: 20.02 } } as const;

describe('identify', () => {
  // Sizes of the series with small errors; the travel gives the starts.
  it.each([
    ['Tr8x1.5', [7.9], 15.01, 15],
    ['Tr8x2', [7.92, 7.94, 7.91], 20.02, 20],
    ['Tr8x8(P2)', [7.92], 19.99, 80.1],
    ['Tr10x2', [9.93], 20.01, 20],
    ['Tr12x3', [11.9], 30.02, 30],
    ['Acme 3/8-10', [9.45], 25.41, 25.4],
    ['Acme 1/2-10-2start', [12.62], 25.39, 50.8],
    ['Acme 1/4-16', [6.28], 15.88, 15.87],
    ['M8', [7.88], 12.5, 12.5],
    ['M5', [4.9], 8.01, 8],
    ['1/4-20 UNC', [6.25], 12.71, 12.7],
    ['5/16-18 UNC', [7.82], 14.1, 14.11],
  ] as const)('names %s', (designation, major, ten, travel) => {
    const found = identify({ major, crests: { count: 10, length: ten }, travel: { turns: 10, length: travel } });
    expect(found.candidates[0]?.designation).toBe(designation);
    expect(found.fits).toBe(true);
    expect(found.contradictions).toEqual([]);
  });

  it('says that starts cannot be told from major and crests, and what tells', () => {
    const found = identify(TR8);
    expect(found.separable).toBe(false);
    expect([...found.twins].sort()).toEqual(['Tr8x4(P2)', 'Tr8x8(P2)']);
    expect(found.nextMeasurement?.what).toBe('starts');
    expect(identify({ ...TR8, starts: 4 }).separable).toBe(true);
    expect(named({ ...TR8, starts: 4 })).toBe('Tr8x8(P2)');
  });

  it('does not ask for what cannot be measured', () => {
    const asked: string[] = [];
    let cannot: NonNullable<Readings['cannot']> = [];
    for (let i = 0; i < 9; i++) {
      const next = identify({ major: [7.93], crests: { count: 10, length: 20 }, cannot }).nextMeasurement;
      if (next === null) break;
      expect(cannot).not.toContain(next.what);
      asked.push(next.what);
      cannot = [...cannot, next.what];
    }
    expect(asked[0]).toBe('starts');
    expect(new Set(asked).size).toBe(asked.length);
    expect(asked.length).toBeGreaterThan(2);
    expect(
      identify({ major: [5.3], crests: { count: 10, length: 17 }, cannot: ['crest', 'wires'] }).nextMeasurement,
    ).toBe(null);
  });

  it('tells a trapezoid from a V of the same size by its crests', () => {
    const found = identify({ major: [15.9], crests: { count: 10, length: 20 }, starts: 1 });
    expect(found.twins).toHaveLength(1);
    expect(found.nextMeasurement?.what).toBe('crest');
    expect(found.nextMeasurement?.why).toMatch(/flat for Tr16x2, sharp for M16/);
    expect(named({ major: [15.9], crests: { count: 10, length: 20 }, crest: 'sharp' })).toBe('M16');
    expect(named({ major: [15.9], crests: { count: 10, length: 20 }, crest: 'flat' })).toBe('Tr16x2');
  });

  // Td of 8x2 is 180 µm: 8.02 is 0.02 above the most, 1.33 standard deviations of 0.015
  it('keeps an oversize reading within its error', () => {
    const found = identify({ major: [8.02], crests: { count: 10, length: 20 }, starts: 1 });
    expect(found.candidates[0]).toMatchObject({ designation: 'Tr8x2' });
    expect(found.candidates[0]?.residuals[0]).toEqual({ what: 'major', mm: 0.02, sigma: 1.3333 });
    expect(found.separable).toBe(true);
  });

  it('gives the hand that was read', () => {
    expect(identify({ ...TR8, starts: 1, hand: 'left' }).candidates[0]).toMatchObject({
      designation: 'Tr8x2-LH',
      hand: 'left',
    });
  });

  it('reports a screw of no series as an odd one, with a block to paste', () => {
    const found = identify({ major: [8.6], crests: { count: 10, length: 23 }, starts: 1, hand: 'right' });
    expect(found).toMatchObject({ fits: false, separable: false, twins: [], nextMeasurement: { what: 'crest' } });
    expect(found.screw).toEqual({ form: 'trapezoidal', major: 8.6, pitch: 2.3, starts: 1, hand: 'right' });
    expect(found.block).toBe(
      'screw:\n  form: trapezoidal  # nearest series: look at the crests\n  major: 8.6 ± 0.03 mm\n' +
        '  crests: {count: 10, length: 23 ± 0.03 mm}\n  starts: 1\n  hand: right\n',
    );
  });

  it('takes the uncertainty that a reading has of its own before that of all', () => {
    const near = (uncertainties: NonNullable<Readings['uncertainties']>) =>
      identify({ ...TR8, crests: { count: 10, length: 20.1 }, uncertainties }).candidates[0]!.residuals[1]!.sigma;
    // 2.01 lies 0.008 above 2 · 1.001; σ is 0.03 / 2 / 10, or 0.15 / 2 / 10
    expect(near({})).toBeCloseTo(0.008 / 0.0015, 3);
    expect(near({ crests: 0.15 })).toBeCloseTo(0.008 / 0.0075, 3);
    expect(() => near({ crests: 0 })).toThrow(/^uncertainties\.crests: /);
  });

  it('writes counted starts beside a designation that has others', () => {
    const found = identify({ major: [9.85], crests: { count: 10, length: 30 }, starts: 3 });
    expect(found.screw.starts).toBe(3);
    expect(found.block).toContain(`designation: ${found.candidates[0]!.designation}\n  starts: 3\n`);
  });

  it('names a ground screw whose pitch diameter is the basic size', () => {
    // over wires of 1.035 mm the basic 7 mm of Tr8x2 measure 8.317 mm
    const wires = { wire: 1.035, over: 8.31 };
    const found = identify({ major: [7.92], crests: { count: 10, length: 20 }, starts: 1, wires });
    expect(found.candidates[0]!.designation).toBe('Tr8x2');
  });

  it('gives a block with the designation where one fits', () => {
    expect(identify({ ...TR8, starts: 1 }).block).toBe('screw:\n  designation: Tr8x2\n  major: 7.923 ± 0.03 mm\n');
  });
});

describe('wear, twins and what is left', () => {
  const readings = (major: number, length: number, more: Partial<Readings> = {}): Readings => ({
    major: [major],
    crests: { count: 10, length },
    ...more,
  });

  it('counts wear as a tail below the band: 47.63 over pitch 3 may be M48x3 or a Tr48x3 worn by 0.13 mm', () => {
    const found = identify(readings(47.63, 30));
    expect(found.separable).toBe(false);
    expect(found.twins).toEqual(['Tr48x3']);
    expect(found.nextMeasurement?.what).toBe('crest');
    // coarse V threads have a flat that shows, an eighth of a pitch; 0.366 of a pitch is a trapezoid's
    expect(identify(readings(47.63, 30, { crest: 'flat' })).nextMeasurement?.what).toBe('crest_flat');
    const flat = readings(47.63, 30, { crest: 'flat', crestFlat: 1.1, starts: 1 });
    expect(identify(flat).candidates[0]!.designation).toBe('Tr48x3');
  });

  it('asks for the crest wherever a screw of another form shares pitch and size', () => {
    for (const [major, length] of [
      [47.9, 30],
      [35.9, 30],
    ] as const) {
      expect(identify(readings(major, length, { starts: 1 })).nextMeasurement?.what).toBe('crest');
      expect(identify(readings(major, length)).nextMeasurement?.why).toMatch(
        /flat for Tr.*sharp for M|sharp for M.*flat for Tr/,
      );
    }
  });

  it('finds a lost screw from the bore of its nut and its travel: D1 of Tr8x8(P2) is 6 to 6.236', () => {
    const found = identify({ nutBore: { goes: 6, stops: 6.3 }, travel: { turns: 1, length: 8 } });
    expect([found.separable, found.candidates[0]!.designation]).toEqual([true, 'Tr8x8(P2)']);
  });

  it('gives an odd or worn screw its sheet lines, its form by the nearest series, and what to measure', () => {
    const found = identify({ major: [9.31, 9.28, 9.35], crests: { count: 8, length: 25.4 }, starts: 1 });
    expect(found.block).toMatch(/^screw:\n {2}form: acme .*\n {2}major: 9\.313 ± 0\.03 mm\n {2}crests: /);
    expect(found.nextMeasurement?.what).toBe('crest');
    expect(found.contradictions.join()).toMatch(/worn/);
  });

  it('writes a name that begins with # so that a sheet takes it', () => {
    const found = identify(readings(4.15, 7.94, { starts: 1, crest: 'sharp' }));
    expect(readDriveSheet(found.block).screw.designation).toBe('#8-32 UNC');
  });

  it('takes a worn M3 and a reading over 60 mm in a sheet', () => {
    expect(readDriveSheet(identify(readings(2.63, 5.01, { starts: 1 })).block).screw).toMatchObject({ major: 2.63 });
    expect(readDriveSheet(identify(readings(60.02, 90.02, { starts: 1, crest: 'flat' })).block).screw.lead).toBe(9);
  });

  it('says what no thread is: too coarse for its core, too fine, a groove without flanks', () => {
    const first = (given: Readings) => identify(given).contradictions[0] ?? '';
    expect(first(readings(10, 90))).toMatch(/^crests: a pitch of 9\.000 mm on a major of 10\.00 mm is coarser/);
    expect(first({ major: [40], travel: { turns: 10, length: 271 }, starts: 1 })).toMatch(/^travel: .* is coarser/);
    expect(first({ major: [40], travel: { turns: 10, length: 10 }, starts: 5 })).toMatch(/^travel: .* is finer/);
    // a V of pitch 2.234 is 1.45 deep from crest to pitch diameter, on the diameter
    expect(first(readings(35.47, 22.34, { minor: 34.88 }))).toMatch(/^minor: 34\.88 mm is 0\.59 mm below the crests/);
    expect(first(readings(35.47, 22.34, { minor: 33 }))).not.toMatch(/^minor: /);
  });

  it('names the slip alone where one explains what no thread is', () => {
    const { contradictions } = identify({ major: [0.313], crests: { count: 10, length: 0.787 } });
    expect(contradictions).toEqual([expect.stringMatching(/inches typed as millimetres; read so it is Tr8x2/)]);
  });

  it('does not take the starts of another screw for those of an odd one', () => {
    const found = identify({ major: [10.42], travel: { turns: 10, length: 104.3 } });
    expect(found.fits).toBe(false);
    expect(found.block).toContain('# pitch: measure it over 10 pitches');
  });

  it('tells a ball screw by its round grooves', () => {
    const found = identify({ major: [11.9], crest: 'round' });
    expect(found.contradictions.join()).toMatch(/ball screw.*a printed nut is wrong for it/);
    expect(found).toMatchObject({ fits: false, separable: false, block: '' });
  });
});

describe('contradictions', () => {
  const told = (readings: Readings) => identify(readings).contradictions.join('\n');

  it.each<[string, Readings, RegExp]>([
    ['a crest too many', { major: [7.92], crests: { count: 10, length: 18.01 } }, /over 9 it is Tr8x2/],
    ['a crest too few', { major: [7.92], crests: { count: 10, length: 22.0 } }, /over 11 it is Tr8x2/],
    [
      'a lead for a pitch',
      { major: [7.92], crests: { count: 10, length: 80 } },
      /lead of Tr8x8\(P2\), not its pitch 2 mm/,
    ],
    [
      'inches for mm',
      { major: [0.374], crests: { count: 10, length: 1 } },
      /inches typed as millimetres; .* Acme 3\/8-10/,
    ],
    ['an inch major', { major: [0.374], crests: { count: 10, length: 25.4 } }, /^major: looks like inches/m],
    ['mm taken for inches', { major: [201.2], crests: { count: 10, length: 508 } }, /multiplied by 25.4; .* Tr8x2/],
    [
      'a turn too many',
      { major: [7.92], crests: { count: 10, length: 20 }, travel: { turns: 10, length: 18 } },
      /in 9 it is Tr8x2/,
    ],
    [
      'no whole multiple',
      { major: [7.92], crests: { count: 10, length: 20 }, travel: { turns: 10, length: 50 } },
      /2.50 times the pitch/,
    ],
    [
      'starts',
      { major: [7.92], crests: { count: 10, length: 20 }, travel: { turns: 10, length: 80 }, starts: 1 },
      /1 counted, but a turn travels 4 pitches/,
    ],
    [
      'a flat V',
      { major: [7.9], crests: { count: 10, length: 12.5 }, crest: 'flat' },
      /seen as flat, .* M8, and a V thread/,
    ],
    ['a sharp trapezoid', { ...TR8, crest: 'sharp' }, /seen as sharp, .* Tr8x2/],
    ['uneven majors', { major: [7.7, 7.95], crests: { count: 10, length: 20 } }, /differ by 0.25 mm/],
    ['a radius', { major: [3.96], crests: { count: 10, length: 20 } }, /not the radius/],
    [
      'worn flanks',
      {
        ...TR8,
        starts: 1,
        wires: {
          wire: 1.04,
          over: measureOverWires({ form: 'trapezoidal', pitch: 2, lead: 2, wire: 1.04, pitchDiameter: 6.4 }),
        },
      },
      /pitch diameter 6.400 mm is below the least of Tr8x2.*worn/,
    ],
    [
      'worn crests',
      { major: [7.6], crests: { count: 10, length: 20 }, starts: 1 },
      /0.220 mm below the least of Tr8x2, though the pitch/,
    ],
    ['a narrow crest', { ...TR8, starts: 1, crestFlat: 0.4 }, /narrower than Tr8x2 allows/],
  ])('names %s', (_name, readings, message) => {
    expect(told(readings)).toMatch(message);
  });

  it.each<[string, Readings, object]>([
    [
      'a crest too many',
      { major: [7.92], crests: { count: 10, length: 18.01 } },
      { crests: { count: 9, length: 18.01 } },
    ],
    [
      'a lead for a pitch',
      { major: [7.92], crests: { count: 10, length: 80 } },
      { starts: 4, crests: { count: 40, length: 80 } },
    ],
    // 3/8 in is 9.525 mm
    ['an inch major', { major: [0.375], crests: { count: 10, length: 25.4 } }, { major: [9.525] }],
    ['a radius', { major: [3.96], crests: { count: 10, length: 20 } }, { major: [7.92] }],
  ])('gives the repair of %s, and read so the screw fits', (_name, readings, change) => {
    const repair = identify(readings).repairs.find((one) => JSON.stringify(one.change) === JSON.stringify(change));
    expect(identify(readings).contradictions).toContain(repair?.says);
    const mended = identify({ ...readings, ...repair?.change });
    expect(mended.fits).toBe(true);
    expect(mended.repairs).toEqual([]);
    expect([mended.candidates[0]!.designation, ...mended.twins]).toContain(repair?.designation);
  });

  it('finds the worn screw all the same', () => {
    expect(named({ ...TR8, starts: 1, wires: { wire: 1.04, over: 7.4 } })).toBe('Tr8x2');
  });

  it('names no slip where the readings fit', () => {
    expect(told(TR8)).toBe('');
  });
});

describe('identify, whatever is read', () => {
  const length = fc.double({ min: 0.01, max: 400, noNaN: true });
  const readingsArb: fc.Arbitrary<Readings> = fc
    .record(
      {
        major: fc.array(length, { minLength: 1, maxLength: 4 }),
        crests: fc.record({ count: fc.integer({ min: 1, max: 40 }), length }),
        travel: fc.record({ turns: fc.integer({ min: 1, max: 20 }), length }),
        starts: fc.integer({ min: 1, max: 12 }),
        minor: length,
        crestFlat: fc.double({ min: 0.01, max: 5, noNaN: true }),
        wires: fc.record({ wire: fc.double({ min: 0.1, max: 8, noNaN: true }), over: length }),
        crest: fc.constantFrom('flat' as const, 'sharp' as const),
        hand: fc.constantFrom('right' as const, 'left' as const),
        uncertainty: fc.double({ min: 0.001, max: 1, noNaN: true }),
      },
      { requiredKeys: [] },
    )
    .map((readings) => readings as Readings);

  it('sums to one, holds no NaN and does not depend on the order of the readings', () => {
    fc.assert(
      fc.property(readingsArb, (readings) => {
        try {
          const found = identify(readings);
          const total = found.candidates.reduce((sum, one) => sum + one.probability, 0);
          expect(Math.abs(total - 1)).toBeLessThan(1e-9);
          expect(JSON.stringify(found)).toBe(
            JSON.stringify(found, (_k, v) => (typeof v === 'number' && !Number.isFinite(v) ? 'NaN' : v)),
          );
          const turned = Object.fromEntries(Object.entries(readings).reverse()) as Readings;
          const reversed = turned.major === undefined ? turned : { ...turned, major: [...turned.major].reverse() };
          expect(identify(reversed)).toEqual(found);
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
        }
      }),
      { numRuns: 60 },
    );
  });

  it.each<[Readings, RegExp]>([
    [{}, /at least one of major/],
    [{ major: [] }, /at least one of major/],
    [{ major: [Number.NaN] }, /^major: .*above 0/],
    [{ major: [8], crests: { count: 0, length: 20 } }, /crests.count: 0; must be a whole number/],
    [{ travel: { turns: 10, length: -1 } }, /travel.length: -1/],
    [{ major: [8], minor: 9 }, /minor: 9; must be below/],
    [{ major: [8], uncertainty: 0 }, /uncertainty: 0/],
  ])('refuses %o', (readings, message) => {
    expect(() => identify(readings)).toThrow(InputError);
    expect(() => identify(readings)).toThrow(message);
  });

  it('tells every mistake at once', () => {
    expect(() => identify({ major: [0], starts: 0 })).toThrow(/major[^\n]*\nstarts/);
  });
});

describe('identificationJson', () => {
  it('has the fields of the machine-readable answer', () => {
    const json = identificationJson(identify({ ...TR8, crestFlat: 0.73 }));
    expect(Object.keys(json)).toEqual(
      expect.arrayContaining(['candidates', 'separable', 'next_measurement', 'contradictions', 'screw']),
    );
    expect(json.screw).toEqual({
      form: 'trapezoidal',
      major: 7.923,
      pitch: 2.002,
      starts: 1,
      hand: 'right',
      crest_flat: 0.73,
    });
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
  });
});
