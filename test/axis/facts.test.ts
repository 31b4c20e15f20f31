import { describe, expect, it } from 'vitest';
import { partFacts } from '../../src/axis/facts.js';
import type { DesignBase } from '../../src/parts/part-kind.js';
import { design } from '../../src/pipeline/design.js';
import { exactly } from '../../src/units/measured.js';
import { BUSH, GUIDED, LOCATED, RING } from '../support/end-holder-sheets.js';
import { changed } from '../support/nut-sheets.js';

const facts = (part: string, fields: object) => partFacts({ part, ...fields } as unknown as DesignBase);
const SCREW = { designation: 'Tr8x2', lead: 2, leastRoot: { cut: 5.2 } };
const shaft = (diameter: number, length?: number) => ({
  diameter: exactly(diameter),
  ...(length === undefined ? {} : { length }),
});

describe('what any part says to its neighbours', () => {
  it('is its screw and its material', () => {
    const material = { name: 'pc' };
    expect(facts('gauge', { screw: SCREW, material })).toEqual({ screw: SCREW, material });
    expect(facts('coupon', {})).toEqual({});
  });

  it.each([[undefined], [null], ['Tr8x2'], [{}], [{ lead: 2 }], [{ leastRoot: {} }]])(
    'is no screw where it holds %j in its place',
    (screw) => {
      expect(facts('gauge', { screw })).toEqual({});
    },
  );

  it('is that it sits at the motor, of four kinds', () => {
    const bare = { hubs: [], insert: { pad: { kind: 'none' } }, form: 'bush', finished: { thickness: 6 } };
    for (const part of ['coupling', 'sleeve', 'collar', 'motor-plate']) expect(facts(part, bare).isAtMotor).toBe(true);
    for (const part of ['adapter', 'gauge', 'coupon']) expect(facts(part, bare)).not.toHaveProperty('isAtMotor');
  });
});

describe('what a coupling says', () => {
  const hub = (name: string, diameter: number, depth: number, length?: number) => ({
    name,
    depth,
    shaft: shaft(diameter, length),
  });
  const both = [hub('motor-hub', 5, 22, 25), hub('screw-hub', 8, 24)];
  const joint = (fields: object) =>
    facts('coupling', { hubs: both, insert: { pad: { kind: 'none' } }, ...fields }).joint;

  it('is how far both shafts go in, and what is between them', () => {
    expect(joint({ shaftGap: 3 })).toEqual({
      kind: 'flexible',
      motorBore: exactly(5),
      motorDepth: 22,
      shaft: 25,
      screwBore: exactly(8),
      screwDepth: 24,
      gap: 3,
    });
  });

  it.each([
    ['disc', 'disc'],
    ['ball', 'disc'],
    ['none', 'flexible'],
    ['sheet', 'flexible'],
  ])('a pad of %s makes it %s', (kind, wanted) => {
    expect(joint({ insert: { pad: { kind } } })!.kind).toBe(wanted);
  });

  it('leaves out what is not there', () => {
    expect(joint({ hubs: [both[1]!] })).toStrictEqual({ kind: 'flexible', screwBore: exactly(8), screwDepth: 24 });
    expect(joint({ hubs: [hub('motor-hub', 5, 22)] })).toStrictEqual({
      kind: 'flexible',
      motorBore: exactly(5),
      motorDepth: 22,
    });
  });
});

describe('what a sleeve says', () => {
  const sleeve = (form: string, motorLength?: number) =>
    facts('sleeve', {
      form,
      finished: { length: 50, bores: [{ depth: 26 }, { depth: 22 }] },
      // the ends stand in any order, each with the bore at its own place
      ends: [
        { name: 'screw end', shaft: shaft(8) },
        { name: 'motor end', shaft: shaft(5, motorLength) },
      ],
    });

  it('is a rigid joint, of a clamp with both its bores', () => {
    expect(sleeve('clamp', 24).joint).toEqual({
      kind: 'rigid',
      motorBore: exactly(5),
      motorDepth: 22,
      shaft: 24,
      screwBore: exactly(8),
      screwDepth: 26,
      // 50 − 22 − 26
      gap: 2,
    });
    expect(sleeve('clamp').joint).not.toHaveProperty('shaft');
  });

  it('is nothing of a bush, which joins no shafts', () => {
    expect(sleeve('bush', 24)).toEqual({ isAtMotor: true });
  });
});

describe('what moves, carries and bears', () => {
  it('is a printed nut, by its own length, and whether it floats', () => {
    const nut = { finished: { length: 18 } };
    expect(facts('nut', nut).nut).toEqual({ length: 18, floats: false, printed: true });
    expect(facts('twin-nut', { ...nut, float: { axis: 0.2 } }).nut).toEqual({
      length: 18,
      floats: true,
      printed: true,
    });
  });

  it('is a bought nut in its adapter, if it has one', () => {
    expect(facts('adapter', { kind: 'floating', nut: { length: 15 } }).nut).toEqual({
      length: 15,
      floats: true,
      printed: false,
    });
    expect(facts('adapter', { kind: 'plate', nut: {} }).nut).toStrictEqual({ floats: false, printed: false });
    expect(facts('adapter', { kind: 'plate' })).toEqual({});
  });

  it('is a collar with a bearing, and the plate under a motor', () => {
    const bearing = { bore: 8, outside: 16, height: 5 };
    expect(facts('collar', { bearing })).toEqual({ isAtMotor: true, collar: true, bearing });
    expect(facts('collar', {})).toEqual({ isAtMotor: true });
    expect(facts('motor-plate', { finished: { thickness: 8 } })).toEqual({ isAtMotor: true, plate: 8 });
  });
});

describe('what an end holder says', () => {
  const holder = (base: Record<string, unknown>, changes: Record<string, unknown> = {}) =>
    partFacts(design(changed(base, changes))).holder!;

  it('is its role, and the room that it wants before the nut', () => {
    // 3 · 7.85 mm with play, 8 · 7.85 where a bush of 7.95 mm leads closely, 5 mm before a guard ring
    expect(holder(GUIDED).role).toBe('guiding');
    expect(holder(GUIDED).nutGap).toBeCloseTo(23.55, 9);
    expect(holder(BUSH, { bore: 7.95 }).nutGap).toBeCloseTo(62.8, 9);
    expect(holder(RING)).toMatchObject({ role: 'free', nutGap: 5 });
    expect(holder(LOCATED).role).toBe('locating');
  });

  it('is how far it stands out, the plate over its bearing counted, and the frame that it sits on', () => {
    expect(holder(GUIDED, { body: { thickness: 12, cover: 3 } })).toMatchObject({ thickness: 15, frame: 5 });
    expect(holder(GUIDED, { body: { thickness: 12 }, held_by: 'press' }).thickness).toBe(12);
    expect(holder(RING, { body: { thickness: 6 }, frame: undefined })).not.toHaveProperty('frame');
  });
});
