import { describe, expect, it } from 'vitest';
import { calibrateRuns, writeProfile } from '../../src/pipeline/calibrate.js';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { SHIPPED } from '../../src/presets/shipped.js';
import { InputError } from '../../src/units/faults.js';
import { usualCoupon } from '../calibrate/recovery.js';
import { randomNature, readCoupon } from '../support/simulated-printer.js';

const { head, features } = usualCoupon();
const FEEL = { T1: 'no', T2: 'tight', T3: 'good', T4: 'loose', T5: 'loose' } as const;
const feel = (mark: string) => Object.entries(FEEL).find(([key]) => key === mark)?.[1] ?? 'good';

function profile(id: string, more: object = {}, seed = 41) {
  const results = readCoupon(head, features, randomNature(2), { seed, feel });
  return { [`profiles/${id}.yaml`]: writeProfile(id, 1, calibrateRuns([{ ...results, ...more }])) };
}

const PRESETS = {
  ...SHIPPED,
  ...profile('mine'),
  ...profile('dry', { state: 'dry' }),
  ...profile('pa6-dry', { state: 'dry', material: 'pa6' }),
  ...profile('scaled', { slicer_compensates: 'both' }),
};

const NUT = { part: 'nut', name: 'n', screw: 'Tr8x2', body: { diameter: 16, length: 15 } };
const made = (changes: object) => design({ ...NUT, ...changes }, { presets: PRESETS });
const finding = (changes: object, id: string) => check(made(changes)).checks.find((one) => one.id === id);

function faultsOf(sheet: string | object): readonly string[] {
  try {
    design(sheet, { presets: PRESETS });
  } catch (error) {
    if (error instanceof InputError) return error.message.split('\n');
    throw error;
  }
  throw new Error('nothing was refused');
}

/** Half-width of a diametral clearance at 7.23 mm: hole offset, shrink in the plane and the reading of the screw. */
function spreadByHand(nut: unknown): number {
  const { printer, material } = nut as {
    printer: { holeSpread: number };
    material: { shrink: { plane: { least: number; most: number } } };
  };
  const { least, most } = material.shrink.plane;
  return Math.hypot(printer.holeSpread, ((most - least) / 2) * 7.23, 0.003);
}

describe('profile: NAME', () => {
  it('supplies material and printer', () => {
    const { material, printer } = made({ profile: 'mine' }) as unknown as {
      material: { name: string; shrink: { plane: { likely: number; most: number } } };
      printer: { holeOffset: { at_zero: number }; holeSpread: number; compensationKnown: boolean; firstLayer: number };
    };
    const nature = randomNature(2);
    expect(material.name).toBe('pa12');
    expect(material.shrink.plane.likely).toBeCloseTo((nature.shrinkX + nature.shrinkY) / 2, 3);
    expect(printer.firstLayer).toBeCloseTo(nature.squash, 1);
    expect(printer.compensationKnown).toBe(true);
    expect(printer.holeSpread).toBeLessThan(0.05);
  });

  it('narrows the spread that the checks judge by', () => {
    // of a screw that was measured: what the class allows a named one would drown what the printer leaves
    const screw = { designation: 'Tr8x2', pitch_diameter: '6.93 ± 0.003 mm' };
    const [before, after] = [{ material: 'pa12' }, { profile: 'mine' }].map((by) => {
      const sheet = { screw, fit: 'running', ...by };
      return { found: finding(sheet, 'thread-clearance')!, byHand: spreadByHand(made(sheet)) };
    });
    expect(after!.found.value).toBeCloseTo(before!.found.value!, 5);
    // as shipped √(0.05² + (0.005·7.23)² + 0.003²) = 0.0618 mm; by this coupon √(0.045² + (0.0012·7.23)² + 0.003²) =
    // 0.0459 mm: 0.743 of it. The facets of both are far below.
    expect(before!.byHand).toBeCloseTo(0.0618, 4);
    expect(after!.byHand / before!.byHand).toBeLessThan(0.75);
    expect(after!.found.uncertainty / before!.found.uncertainty).toBeCloseTo(after!.byHand / before!.byHand, 2);
  });

  it('says in the report where the figures come from, before and after', () => {
    const [before, after] = [check(made({ material: 'pa12' })), check(made({ profile: 'mine' }))];
    expect(before.figures).toMatch(/no coupon of it was read/);
    expect(before.profile).toBeUndefined();
    expect(after.figures).toMatch(/measured: profile mine, revision 1, by 63 readings/);
    expect(after.profile).toMatchObject({ name: 'mine', revision: 1, assumed: [], readings: 63, state: 'room' });
  });

  it('gives a nut the clearance that the hand liked, unless the sheet says otherwise', () => {
    const liked = made({ profile: 'mine' });
    expect(liked.assumptions.find(({ field }) => field === 'fit')!.why).toMatch(/the hand likes/);
    const own = made({ profile: 'mine', fit: 'loose' });
    expect(own.assumptions.some(({ field }) => field === 'fit')).toBe(false);
  });

  it('is in the schema of every part that has a material', () => {
    const named = KINDS.filter(({ schema }) => 'profile' in (schema as unknown as { shape: object }).shape);
    expect(named.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['nut', 'coupon']));
  });

  it('refuses material or printer beside it, at their places', () => {
    const text =
      'part: nut\nname: n\nscrew: Tr8x2\nbody: {diameter: 16, length: 15}\nprofile: mine\nmaterial: pa12\nprinter: {nozzle: 0.4}\n';
    expect(faultsOf(text)).toEqual([
      '6:11 material: pa12; the profile supplies it: give profile, or material and printer',
      expect.stringMatching(/^7:10 printer: .*the profile supplies it/),
    ]);
  });

  it('names the nearest where there is none', () => {
    expect(faultsOf({ ...NUT, profile: 'mien' })[0]).toMatch(
      /profile: mien; no mien.yaml beside the sheet.*did you mean mine\?/,
    );
    expect(faultsOf({ ...NUT, profile: '../secret' })[0]).toMatch(/must be the name of a profile/);
  });

  it('tells other mistakes of the sheet at the same time', () => {
    expect(faultsOf({ ...NUT, profile: 'mine', material: 'pa12', bodi: 1 })).toHaveLength(2);
  });

  it('names the file where a profile is broken', () => {
    const broken = {
      ...PRESETS,
      'profiles/mine.yaml': PRESETS['profiles/mine.yaml']!.replace('nozzle: 0.4 mm', 'nozzle: wide'),
    };
    expect(() => design({ ...NUT, profile: 'mine' }, { presets: broken })).toThrow(
      /profiles\/mine.yaml:\d+:\d+ printer.nozzle/,
    );
  });
});

describe('the state of nylon', () => {
  it('passes where read and used alike', () => {
    expect(finding({ profile: 'mine' }, 'profile-state')).toMatchObject({ verdict: 'pass' });
  });

  it.each([[{ name: 'dry', state: 'room' }], [{ name: 'pa6-dry', state: 'wet' }], [{ name: 'mine', state: 'wet' }]])(
    'is a caution for %j',
    (profile) => {
      expect(finding({ profile }, 'profile-state')).toMatchObject({ verdict: 'caution' });
    },
  );
});

describe('a slicer that compensates', () => {
  it('is told of in the cautions, so that its setting stays', () => {
    expect(check(made({ profile: 'scaled' })).cautions[0]).toMatch(
      /scaled for shrink and enlarged holes: leave that on/,
    );
    expect(check(made({ profile: 'mine' })).cautions[0]).toMatch(/leave its shrink and hole corrections off/);
  });
});

describe('what is not measured', () => {
  it('is a caution that says so', () => {
    const results = readCoupon(head, features, randomNature(2), { seed: 44 });
    const bores = Object.fromEntries(Object.entries(results.readings ?? {}).filter(([mark]) => mark.startsWith('B')));
    const text = writeProfile('half', 1, calibrateRuns([{ ...results, readings: bores }]));
    const presets = { ...SHIPPED, 'profiles/half.yaml': text };
    const report = check(design({ ...NUT, profile: 'half' }, { presets }));
    const found = report.checks.find(({ id }) => id === 'profile-measured')!;
    expect(found.verdict).toBe('caution');
    expect(found.message).toMatch(/material.shrink.plane, material.shrink.axial, printer.outside_offset/);
    expect(report.figures).toMatch(/aside: profile half/);
  });
});
