import { describe, expect, it } from 'vitest';
import type { AxisDesign } from '../../src/axis/axis-design.js';
import { pairFacts } from '../../src/fleet/pair-facts.js';
import type { DesignBase } from '../../src/parts/part-kind.js';
import { exactly } from '../../src/units/measured.js';

const SCREW = {
  designation: 'Tr8x2',
  form: 'trapezoidal',
  flankAngle: 30,
  major: exactly(7.95),
  pitch: exactly(2),
  lead: 4,
  starts: 2,
  hand: 'left',
  pitchDiameter: exactly(6.9),
  leastRoot: { cut: 5.2, rolled: 5.1 },
};
const VIEW = {
  designation: 'Tr8x2',
  form: 'trapezoidal',
  flankAngle: 30,
  major: 7.95,
  pitch: 2,
  lead: 4,
  starts: 2,
  hand: 'left',
  pitchDiameter: 6.9,
  minor: 5.2,
  rolledMinor: 5.1,
};
const design = (part: string, fields: object = {}) => ({ part, ...fields }) as unknown as DesignBase;
const facts = (part: string, fields: object = {}) => pairFacts(design(part, fields));
const ofAxis = (parts: readonly object[]) => pairFacts({ part: 'axis', along: {}, parts } as unknown as AxisDesign);
const nut = (diametral: number, axial: number) => ({
  screw: SCREW,
  fit: { diametral, axial },
  finished: { length: 18 },
});

describe('what neighbours must suit', () => {
  it('is the screw of a nut and its clearances, none below nothing', () => {
    expect(facts('nut', nut(0.3, 0.1))).toEqual({ nut: { ...VIEW, diametralClearance: 0.3, axialClearance: 0.1 } });
    expect(facts('twin-nut', nut(-0.02, -0.01))).toEqual({
      nut: { ...VIEW, diametralClearance: 0, axialClearance: 0 },
    });
  });

  it('is no nut’s without a screw, without a fit, or of another kind', () => {
    const { screw: _s, ...noScrew } = nut(0.3, 0.1);
    const { fit: _f, ...noFit } = nut(0.3, 0.1);
    expect(facts('nut', noScrew)).toEqual({});
    expect(facts('nut', noFit)).toEqual({ screw: VIEW });
    expect(facts('gauge', nut(0.3, 0.1))).toEqual({ screw: VIEW });
  });

  it('is of an adapter that it holds a bought nut, where it does', () => {
    expect(facts('adapter', { nut: { length: 15 }, kind: 'joined' })).toEqual({ holdsNut: true });
    expect(facts('adapter', { kind: 'blank' })).toEqual({});
  });

  it('is what a coupling is bored for, and how far the motor goes in', () => {
    const hub = (name: string, diameter: number) => ({ name, depth: 20, shaft: { diameter: exactly(diameter) } });
    const coupling = (...hubs: readonly object[]) => facts('coupling', { hubs, insert: { pad: { kind: 'none' } } });
    expect(coupling(hub('screw-hub', 8), hub('motor-hub', 5))).toEqual({
      joint: { kind: 'flexible', motorBore: exactly(5), motorDepth: 20, screwBore: exactly(8), screwDepth: 20 },
    });
    expect(coupling(hub('screw-hub', 8))).toEqual({
      joint: { kind: 'flexible', screwBore: exactly(8), screwDepth: 20 },
    });
    expect(facts('gauge', { hubs: [hub('motor-hub', 5)] })).toEqual({});
  });

  it('is what a motor plate leaves of the shaft', () => {
    const plate = (shaftLength?: number) =>
      facts('motor-plate', { motor: shaftLength === undefined ? {} : { shaftLength }, finished: { thickness: 6 } });
    expect(plate(20.5)).toEqual({ plate: 6, standsOut: 14.5 });
    expect(plate()).toEqual({ plate: 6 });
    const told = { motor: { shaftDiameter: exactly(5) }, finished: { thickness: 6 } };
    expect(facts('motor-plate', told)).toEqual({ plate: 6, motorShaft: exactly(5) });
    expect(facts('gauge', { motor: { shaftLength: 20.5 }, finished: { thickness: 6 } })).toEqual({});
    expect(facts('motor-plate', { finished: { thickness: 6 } })).toEqual({ plate: 6 });
  });
});

describe('what carries a screw along its axis', () => {
  it('is a collar on its bearing, and no collar without one', () => {
    expect(facts('collar', { bearing: { name: 'F8-16' } })).toEqual({ collar: true });
    expect(facts('collar')).toEqual({});
  });

  it('is a clamped sleeve, through the bearing of the motor', () => {
    const end = (name: string) => ({ name, shaft: { diameter: exactly(5) } });
    const sleeve = {
      form: 'clamp',
      finished: { length: 50, bores: [{ depth: 22 }, { depth: 24 }] },
      ends: [end('motor end'), end('screw end')],
    };
    expect(facts('sleeve', sleeve)).toMatchObject({
      joint: { kind: 'rigid', motorDepth: 22, motorBore: exactly(5), screwBore: exactly(5) },
    });
    expect(facts('sleeve', { ...sleeve, form: 'bush' })).toEqual({});
  });

  it('is an end holder that locates it', () => {
    const holder = (role: string) =>
      facts('end-holder', {
        role,
        nut: 'floating',
        held: { diameter: exactly(8), thinnest: 7.9 },
        bearing: { bore: 8 },
        finished: { thickness: 11, bore: 18.5 },
      });
    expect(holder('locating')).toMatchObject({ holder: { role: 'locating' } });
    expect(holder('guiding')).toMatchObject({ holder: { role: 'guiding' } });
  });

  it('of an axis is what any of its parts says', () => {
    const parts = [
      { design: design('nut', nut(0.3, 0.1)) },
      { design: design('collar', { bearing: { name: 'F8-16' } }) },
    ];
    expect(ofAxis(parts)).toMatchObject({ nut: { lead: 4 }, collar: true });
    expect(ofAxis([])).toEqual({});
  });
});

describe('what a part says of its axis', () => {
  it('is read wherever its design keeps it, and nothing that its sheet does not tell', () => {
    const axial = { mounting: 'motor-above', thrustBearing: true, locatingHolder: false, load: 20, upward: 0 };
    expect(facts('collar', { axial })).toEqual({
      says: { mounting: 'motor-above', thrustBearing: true, load: 20, upward: 0 },
    });
    expect(
      facts('gauge', { mounting: 'horizontal', thrustBearing: true, duty: { axis: 'horizontal', load: 9 } }),
    ).toEqual({
      says: { mounting: 'horizontal', axis: 'horizontal', thrustBearing: true, load: 9 },
    });
    expect(facts('collar', { axial: { thrustBearing: false, locatingHolder: true } })).toEqual({
      says: { locatingHolder: true },
    });
    // a nut is told of what lifts it in its duty
    expect(facts('gauge', { duty: { load: 9, upward: 4 } })).toEqual({ says: { load: 9, upward: 4 } });
    for (const mounting of ['motor-below', 'motor-above', 'horizontal'])
      expect(facts('collar', { axial: { mounting } })).toEqual({ says: { mounting } });
    // a nut's mounting says how its flange lies
    expect(facts('gauge', { mounting: 'flange-up', duty: {} })).toEqual({});
  });

  it('of an axis is what all of its parts say', () => {
    const parts = [
      { design: design('gauge', { duty: { load: 9 } }) },
      { design: design('collar', { axial: { thrustBearing: false, locatingHolder: false, mounting: 'horizontal' } }) },
    ];
    expect(ofAxis(parts)).toEqual({ says: { load: 9, mounting: 'horizontal' } });
  });
});
