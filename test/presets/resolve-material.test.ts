import { describe, expect, it } from 'vitest';
import type { Material } from '../../src/presets/material.js';
import { DEFAULT_MATERIAL, resolveMaterial } from '../../src/presets/resolve-material.js';
import { SHIPPED } from '../../src/presets/shipped.js';
import { Assumptions } from '../../src/sheet/assumptions.js';
import { materialSection } from '../../src/sheet/sections/material.js';
import { InputError } from '../../src/units/faults.js';

function resolve(typed: unknown): { material: Material; listed: string[]; assumptions: Assumptions } {
  const assumptions = new Assumptions();
  const sheet = typed === undefined ? undefined : materialSection.parse(typed);
  const material = resolveMaterial(sheet, SHIPPED, assumptions);
  return { material, listed: assumptions.list.map(({ field }) => field), assumptions };
}

function faultsOf(run: () => unknown) {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.faults;
    throw error;
  }
  throw new Error('nothing was refused');
}

describe('resolveMaterial', () => {
  // common practice, PA12: usual shrink 0.7-1.5 % and 0.3-0.8 %, left after compensation ± 0.5 %
  it('takes PA12 where the sheet names none, and says so', () => {
    const { material, assumptions } = resolve(undefined);
    expect(material).toMatchObject({ name: 'pa12', density: 1.01, softening: 95, shares: { years: 0.2 } });
    expect(material.shrink.plane.likely).toBeCloseTo(0.011, 12);
    expect(material.shrink.plane.least).toBeCloseTo(0.006, 12);
    expect(material.shrink.axial.likely).toBeCloseTo(0.0055, 12);
    expect(material.shrink.axial.most).toBeCloseTo(0.0105, 12);
    expect(assumptions.list).toMatchObject([{ field: 'material', value: DEFAULT_MATERIAL }]);
  });

  it('lists nothing for a preset by name, however it is spelt', () => {
    expect(resolve('petg')).toMatchObject({ material: { name: 'petg' }, listed: [] });
    expect(resolve(' PETG ').material.name).toBe('petg');
    expect(resolve({ preset: 'petg' }).listed).toEqual([]);
  });

  // [id, plane %, axial %, ± %, density, least softening] of common practice; middles of the usual ranges
  it.each([
    ['pla', 0.25, 0.1, 0.2, 1.24, 52],
    ['petg', 0.35, 0.15, 0.2, 1.27, 65],
    ['abs', 0.7, 0.25, 0.3, 1.04, 85],
    ['asa', 0.6, 0.25, 0.3, 1.07, 88],
    ['pc', 0.65, 0.25, 0.3, 1.2, 125],
    ['pa6', 1.3, 0.55, 0.5, 1.13, 60],
    ['pa12', 1.1, 0.55, 0.5, 1.01, 95],
    ['pom', 2, 0.85, 0.5, 1.41, 95],
    ['tpu95a', 0.85, 0.4, 0.2, 1.21, 70],
  ])('%s', (id, plane, axial, half, density, softening) => {
    const { material } = resolve(id);
    expect(material.shrink.plane.likely * 100).toBeCloseTo(plane, 9);
    expect(material.shrink.axial.likely * 100).toBeCloseTo(axial, 9);
    expect((material.shrink.plane.most - material.shrink.plane.likely) * 100).toBeCloseTo(half, 9);
    expect(material).toMatchObject({ density, softening });
    expect(material.tensileAcross).toBeLessThan(material.tensile);
    expect(material.wear).toBe({ pla: 0.2, pa6: 0.02 }[id]);
  });

  it('replaces figures of a preset, and keeps the rest', () => {
    const { material, listed } = resolve({ preset: 'pla', density: 1.3, tensile: '50 MPa', moisture_growth: '0.1 %' });
    expect(material).toMatchObject({ name: 'pla', density: 1.3, tensile: 50, shear: 25, moistureGrowth: 0.001 });
    expect(listed).toEqual([]);
  });

  it('lets a preset keep its shares of a smaller tensile strength, and says so', () => {
    // abs: 17.5 and 17 of 35 MPa; half of both is left of 17.5 MPa
    const { material, listed } = resolve({ preset: 'abs', tensile: '17.5 MPa' });
    expect(material).toMatchObject({ tensile: 17.5, tensileAcross: 8.75, shear: 8.5 });
    expect(material.creep.strain).toBeCloseTo(0.007, 12);
    expect(listed).toEqual(['material.tensile_across', 'material.shear']);
    // pom: 18 of 45 MPa across
    expect(resolve({ preset: 'pom', tensile: '30 MPa' }).material.tensileAcross).toBeCloseTo(12, 9);
    // more along the layers is not more across them
    const strong = resolve({ preset: 'abs', tensile: '60 MPa' });
    expect(strong.material).toMatchObject({ tensileAcross: 17.5, shear: 17 });
    expect(strong.listed).toEqual([]);
    const told = resolve({ preset: 'abs', tensile: '17.5 MPa', tensile_across: '12 MPa', shear: '11 MPa' });
    expect(told).toMatchObject({ material: { tensileAcross: 12, shear: 11 }, listed: [] });
  });

  it('takes a plastic of one’s own for the least that is usual, whatever PA12 has', () => {
    // common practice: 0.4 of the tensile strength across layers (POM) and in shear (nylon), 0.5 % of strain (PLA)
    const { material, assumptions } = resolve({ tensile: '18 MPa', softening: 90, heat: { glass: 100 } });
    expect(material.tensileAcross).toBeCloseTo(7.2, 9);
    expect(material.shear).toBeCloseTo(7.2, 9);
    expect(material.creep).toMatchObject({ hour: 0.75, strain: 0.005 });
    const why = (field: string) => assumptions.list.find((one) => one.field === field);
    expect(why('material.tensile_across')).toMatchObject({
      why: expect.stringMatching(/^0\.4 of its tensile, the least/),
    });
    expect(why('material.shear')).toMatchObject({ why: expect.stringMatching(/^0\.4 of its tensile, the least/) });
    expect(why('material.creep.strain')).toMatchObject({ value: '0.5 %', why: expect.stringMatching(/^the least/) });
    const told = resolve({ tensile: '18 MPa', tensile_across: '9 MPa', shear: '10 MPa', creep: { strain: '0.8 %' } });
    expect(told.material).toMatchObject({ tensileAcross: 9, shear: 10, creep: { strain: 0.008 } });
    for (const field of ['material.tensile_across', 'material.shear', 'material.creep.strain'])
      expect(told.listed).not.toContain(field);
  });

  it('takes one that is told apart for the least that slides and stands, where it does not say', () => {
    // common practice: PLA 0.3 MPa, 0.02 MPa·m/s, 100 mm/s; TPU 1 MPa whatever the share; PC stands up to 105 of 147 °C
    const told = { tensile: '50 MPa', softening: 52, heat: { glass: 58 } };
    const { material, assumptions } = resolve(told);
    expect(material).toMatchObject({ pressureLimit: 0.3, pressureCap: 1, pvLimit: 0.02, speedLimit: 100 });
    expect(material.standingLimit).toBeCloseTo(0.71 * 58, 9);
    for (const key of ['pressure_limit', 'pressure_cap', 'pv_limit', 'speed_limit', 'standing_limit'])
      expect(assumptions.list.find(({ field }) => field === `material.${key}`)?.why).toMatch(
        /^the least that is usual/,
      );
    // a glass that stands more heat than PA12 is taken for that
    const glass = resolve({ ...told, heat: { glass: 200 } });
    expect(glass.material.standingLimit).toBe(80);
    const own = { pressure_limit: '1 MPa', pressure_cap: '3 MPa', pv_limit: '0.05 MPa m/s', speed_limit: '200 mm/s' };
    const said = resolve({ ...told, ...own, standing_limit: 50 });
    expect(said.material).toMatchObject({ pressureLimit: 1, pressureCap: 3, pvLimit: 0.05, standingLimit: 50 });
    expect(said.material.speedLimit).toBe(200);
    expect(said.listed).not.toContain('material.pv_limit');
    // of one that is not told apart checks ask
    expect(resolve({ tensile: '50 MPa' }).material).toMatchObject({ pressureLimit: 2, standingLimit: 80 });
  });

  it('keeps the spread of the preset for a shrink without ±, and takes the sheet’s own with it', () => {
    const { material } = resolve({ preset: 'pa12', shrink: { plane: '1 %', axial: '0.6 ± 0.1 %' } });
    expect(material.shrink.plane.likely).toBe(0.01);
    expect(material.shrink.plane.most).toBeCloseTo(0.015, 12);
    expect(material.shrink.axial.least).toBeCloseTo(0.005, 12);
    expect(material.shrink.axial.most).toBeCloseTo(0.007, 12);
  });

  it('fills figures of one’s own up from PA12, and lists each', () => {
    const { material, listed } = resolve({ density: 1.1, shrink: { plane: '0.4 ± 0.1 %' } });
    expect(material).toMatchObject({ name: 'custom', density: 1.1, softening: 95 });
    expect(listed).not.toContain('material');
    expect(listed).not.toContain('material.density');
    expect(listed).toEqual(
      expect.arrayContaining(['material.shrink.axial', 'material.softening', 'material.pv_limit']),
    );
    expect(new Set(listed).size).toBe(listed.length);
  });

  it('needs nothing of PA12 where all figures are given', () => {
    const figures = {
      shrink: { plane: '0.4 ± 0.1 %', axial: '0.2 ± 0.1 %' },
      ...{ density: 1, softening: 80, tensile: 30, tensile_across: 15, shear: 15, compressive: 40, modulus: 2000 },
      ...{ pressure_limit: 1, pv_limit: 0.05, creep_share: '20 %', moisture_growth: '0 %', wear: 0.3 },
      ...{ pressure_cap: 2, speed_limit: 100, heat: { glass: 70 }, standing_limit: 50 },
      ...{ heat_capacity: 1300, stress_cracks: 'no' },
      ...{ shares: { hour: '40 %', thousand_hours: '25 %' }, creep: { hour: '80 %', exponent: 0.05, strain: '1 %' } },
      stiffness: { at_40: '90 %', at_60: '70 %', at_80: '0 %', at_100: '0 %' },
    };
    const { material, listed } = resolve(figures);
    expect(material).toMatchObject({ name: 'custom', pvLimit: 0.05, moistureGrowth: 0, wear: 0.3 });
    expect(material).toMatchObject({ heat: { glass: 70 }, shares: { hour: 0.4, thousandHours: 0.25, years: 0.2 } });
    expect(material.stiffness[1]![0]).toBe(60);
    expect(material.stiffness[1]![1]).toBeCloseTo(0.7, 12);
    expect(listed).toEqual([]);
  });

  it('takes one law of heat, not two halves', () => {
    const refused = (heat: unknown) => materialSection.safeParse({ preset: 'pa12', heat }).success;
    expect(refused({ glass: 70, standing: 60, moment: 60 })).toBe(false);
    expect(refused({ standing: 60 })).toBe(false);
    expect(resolve({ preset: 'pa12', heat: { standing: 60, moment: 60 } }).material.heat).toEqual({
      standing: 60,
      moment: 60,
    });
  });

  it('names the nearest preset, and where the mistake stands', () => {
    const [one] = faultsOf(() => resolve('pa21'));
    expect(one).toMatchObject({ path: 'material', value: 'pa21' });
    expect(one!.allowed).toMatch(/did you mean pa12\?.*known: abs, asa, pa12, pa6/);
    expect(faultsOf(() => resolve({ preset: 'wood', density: 0.7 }))[0]!.path).toBe('material.preset');
  });

  it('is not led out of its folder, nor to what every object has', () => {
    for (const name of ['../printers/nozzle-0.4-layer-0.12', 'constructor', '__proto__', '', 'pla.yaml']) {
      expect(faultsOf(() => resolve(name))[0]!.path).toBe('material');
    }
  });
});
