import { describe, expect, it } from 'vitest';
import { check, design } from '../../../src/index.js';
import type { Finding } from '../../../src/judge/check.js';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import { bendFlange } from '../../../src/parts/nut/flange-bending.js';
import { nutSheet } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

function found(id: string, sheet: object): Finding | undefined {
  return findingOf(sheet, id);
}

/** A narrow flange on two ears. */
const NARROW = {
  part: 'nut',
  name: 'narrow',
  screw: 'Tr8x2',
  body: { diameter: 14, length: 15 },
  flange: { shape: 'rectangular', size: [46, 14.5], thickness: 3.6 },
  holes: { count: 2, circle: 32, screw: 'M4', head: 'flange' },
  fillet: 0,
  material: 'petg',
  printer: { compensation: 'file' },
  duty: { axis: 'horizontal', load: 150, temperature: 23, pull: 'away' },
};

/** The sound nut without a motor, so that its standing load alone is judged. */
const quiet = (changes: Record<string, unknown> = {}, duty: Record<string, unknown> = {}) =>
  nutSheet({ ...changes, duty: { motor: undefined, layer_heights: undefined, ...duty } });

describe('flange-bending', () => {
  it('takes the chord beside the body of a narrow flange: 75·9·6/(14.5·3.6²) = 21.6 MPa, which no plastic bears for long', () => {
    const row = found('flange-bending', NARROW)!;
    expect(row.value).toBeCloseTo((75 * 9 * 6) / (14.5 * 3.6 ** 2), 3);
    // PETG at 23 °C: 1,000 h 44·0.28 = 12.3, or the strain limit 0.008·1850·0.65 = 9.62; back and forth 44·0.2, which is less
    expect(row.limit).toEqual({ max: expect.closeTo(8.8, 2) });
    expect(row.verdict).toBe('fail');
    expect(row.message).toContain('pulled off its carriage, 9 mm of arm on a section of 14.5 × 3.6 mm');
  });

  it('takes flats and ears as they are', () => {
    // a round flange of 46 cut to 14.5 across its flats is as narrow beside the body
    const flats = { ...NARROW, flange: { diameter: 46, flats: 14.5, thickness: 3.6 } };
    expect(found('flange-bending', flats)!.value).toBeCloseTo(21.55, 1);
    // an ear that tapers has less: between the ear's 7.25 and the middle's 14.5
    const ears = { ...NARROW, flange: { shape: 'two-ear', size: [46, 14.5], thickness: 3.6 } };
    expect(found('flange-bending', ears)!.value).toBeGreaterThan(22);
    // wherever it is weakest, its screw stands 9 mm beside the body
    expect(bendFlange(design(ears) as NutDesign, 'away')!.arm).toBeCloseTo(9, 6);
    // drawn out of its flange it is pulled at its sharp corner, though nobody tells the carriage's bore
    const drawn = { ...NARROW, stands: 'away', holes: { ...NARROW.holes, head: 'body' } };
    expect(found('flange-bending', drawn)!.value).toBeCloseTo((2 * 75 * 9 * 6) / (14.5 * 3.6 ** 2), 3);
  });

  it('takes strip or loose ring of a round flange, whichever is worse: 44 on 22, four screws at 16, 800 N, 6 thick', () => {
    const sheet = {
      ...NARROW,
      screw: 'Tr12x3',
      body: { diameter: 22, length: 20 },
      flange: { diameter: 44, thickness: 6 },
      holes: { count: 4, circle: 32, screw: 'M4', head: 'flange' },
      duty: { ...NARROW.duty, load: 800 },
    };
    // handbook ring: 6·800·5/(2π)/(36·11·ln 2)
    expect(found('flange-bending', sheet)!.value).toBeCloseTo(13.92, 2);
    expect(found('flange-bending', sheet)!.message).toContain('loose ring');
  });

  it('asks which way the load goes: on its carriage a flange bends by the play of the bore alone', () => {
    const onto = { ...NARROW, carriage: { bore: '15 ± 0 mm' }, duty: { ...NARROW.duty, pull: 'onto' } };
    // 24 places of the edge, those under the flange share; arms of half a millimetre at most
    expect(found('flange-bending', onto)!.value).toBeLessThan(3);
    expect(found('flange-bending', onto)!.verdict).toBe('pass');
    // of an unknown bore nothing is known to press nearer than the screws
    expect(found('flange-bending', { ...NARROW, duty: onto.duty })!.value).toBeCloseTo(21.55, 1);
  });

  it.each([
    ['flange-up', 'away', 16],
    ['flange-down', 'onto', 2],
  ])('a vertical axis with the body in the bore and %s means %s', (mounting, pull, least) => {
    const sheet = {
      ...NARROW,
      mounting,
      carriage: { bore: '15 ± 0 mm' },
      duty: { axis: 'vertical', load: 150, temperature: 23 },
    };
    const made = check(design(sheet));
    const row = made.checks.find(({ id }) => id === 'flange-bending')!;
    if (pull === 'away') expect(row.value).toBeGreaterThan(least);
    else expect(row.value).toBeLessThan(3);
    expect(made.assumptions.map(({ field }) => field)).not.toContain('duty.pull');
  });

  it('judges the worse where nobody told the direction, and lists it', () => {
    const sheet = {
      ...NARROW,
      carriage: { bore: '15 ± 0 mm' },
      duty: { axis: 'horizontal', load: 150, temperature: 23 },
    };
    const made = check(design(sheet));
    expect(made.checks.find(({ id }) => id === 'flange-bending')!.value).toBeCloseTo(21.55, 1);
    expect(made.assumptions).toContainEqual(expect.objectContaining({ field: 'duty.pull', value: 'away or onto' }));
  });

  it('lets a stalled motor pull for a moment, in either direction', () => {
    // Tr8x2 greased, friction 0.05 on a flank of 15°: 400 N·mm push with 797 N (hand: 400/(3.5·(0.0909 + 0.0518)/(1 − 0.0047)))
    const sheet = { ...NARROW, duty: { ...NARROW.duty, load: 5, motor: { torque: '0.4 N m' } } };
    const row = found('flange-bending', sheet)!;
    expect(row.value! / ((797 / 150) * 21.55)).toBeCloseTo(1, 2);
    expect(row.message).toContain('the motor stalled');
    expect(row.verdict).toBe('fail');
  });

  it('passes, and is not judged without load or temperature unless it fails even so', () => {
    expect(found('flange-bending', quiet())!.verdict).toBe('pass');
    expect(found('flange-bending', quiet({}, { load: undefined }))).toMatchObject({
      word: 'not-told',
      missing: ['duty.load'],
    });
    expect(found('flange-bending', quiet({}, { temperature: undefined }))).toMatchObject({
      word: 'not-told',
      missing: ['duty.temperature'],
    });
    const cold = { ...NARROW, duty: { ...NARROW.duty, temperature: undefined } };
    expect(found('flange-bending', cold)!.verdict).toBe('fail');
    expect(found('flange-bending', quiet({ flange: undefined, holes: undefined }))).toBeUndefined();
    expect(found('flange-bending', quiet({}, { temperature: 95 }))!.verdict).toBe('fail');
  });
});

describe('barrel-pull', () => {
  it('is the load on the body beside the thread, across the layers, turned by its flange and more at a corner that is drawn', () => {
    // hand: body 17, thread major of Tr10x2 running 10 + 0.5 + 0.3 = 10.8: π/4·(289 − 116.64) = 135.4 mm²; its wall of 3.1 mm
    // lies around 6.95 mm, 6.55 mm inside the screws, under a flange of 5 mm: 1 + 2.2·√(6.55·6.95)/5 = 3.969
    // it stands through its carriage, and what presses its flange on draws it out
    const turned = 3.969;
    const pressed = { load: 270.8, pull: 'away' };
    const into = found('barrel-pull', quiet({}, pressed))!;
    expect(into.value! / (2 * turned)).toBeCloseTo(1, 1);
    expect(into.message).toMatch(/on 135 mm² of body beside its bore, 4 times that as its flange turns it; under/);
    // fillet 1 mm on a wall of 3.1 mm: 2.660 − 2.084·0.667 − 0.2·0.444 + 0.624·0.296 = 1.367
    const drawn = found('barrel-pull', quiet({ fillet: 1 }, { ...pressed, pull: 'onto' }))!;
    expect(drawn.value! / (2 * turned * 1.367)).toBeCloseTo(1, 1);
    expect(drawn.message).toContain('4 times that as its flange turns it, 1.4 times at its corner; ');
    const sharp = found('barrel-pull', quiet({ fillet: 0 }, { ...pressed, pull: 'onto' }))!;
    expect(sharp.value! / (2 * turned * 2)).toBeCloseTo(1, 1);
    // a flange twice as thick turns it half as much
    const thick = found('barrel-pull', quiet({ flange: { thickness: 10 } }, pressed))!;
    expect(thick.value! / (2 * 2.484)).toBeCloseTo(1, 1);
    expect(found('barrel-pull', quiet({}, { load: 800 }))!.verdict).toBe('fail');
    expect(found('barrel-pull', quiet({}, { load: undefined }))!.word).toBe('not-told');
    // PA12 at 30 °C, 90 N: 90/135.4·3.969 = 2.64 MPa; for years 21·0.2·0.75·e^(−7/70) = 2.85, back and forth 21·0.12·e^(−7/85) = 2.32
    const told = { load: 90, pull: 'away', feed: undefined };
    expect(found('barrel-pull', quiet({}, told))!.verdict).toBe('pass');
    expect(found('barrel-pull', quiet({}, { ...told, axis: undefined }))!.verdict).toBe('fail');
  });

  it.each([
    ['through', 'onto', 'away'],
    ['away', 'away', 'onto'],
  ])('draws a body that stands %s out of its flange where the load pulls %s, and not %s', (stands, out, into) => {
    const value = (pull: string) =>
      found('barrel-pull', quiet({ stands, fillet: 0, holes: { head: 'body' } }, { load: 100, pull }))!.value!;
    expect(value(out) / value(into)).toBeCloseTo(2, 4);
  });
});

describe('seat-pressure', () => {
  const on = (bore: string, duty: Record<string, unknown> = {}) =>
    quiet({ carriage: { bore } }, { pull: 'onto', ...duty });

  it('is the load on the ring outside the bore', () => {
    // hand: π/4·(37² − 17.6²) less four holes of 3.6: 831.9 − 40.7 = 791.2 mm²
    expect(found('seat-pressure', on('17.6 ± 0 mm', { load: 791.2 }))!.value).toBeCloseTo(1, 2);
    expect(found('seat-pressure', on('17.6 ± 0 mm'))!.verdict).toBe('pass');
    expect(found('seat-pressure', on('17.6 ± 0 mm', { load: 20000 }))!.verdict).toBe('fail');
    expect(found('seat-pressure', on('17.6 ± 0 mm', { load: undefined }))!.word).toBe('not-told');
  });

  it('fails a flange that goes through the bore', () => {
    expect(found('seat-pressure', on('40 ± 0 mm'))).toMatchObject({ verdict: 'fail' });
    expect(found('seat-pressure', on('40 ± 0 mm'))!.message).toContain('bored 40 mm');
  });

  it('says so where the screws carry instead', () => {
    expect(found('seat-pressure', on('17.6 ± 0 mm', { pull: 'away' }))).toMatchObject({ verdict: 'pass', value: null });
  });
});

describe('end-stop', () => {
  /** What breaks first, and at how much, with a motor that breaks it. */
  const first = (changes: Record<string, unknown>) => {
    const row = found('end-stop', nutSheet({ ...changes, duty: { feed: undefined, motor: { torque: '5 N m' } } }))!;
    const [, what, force] = /stall force, and (the [a-z ]+) may break at (\d+) N/.exec(row.message)!;
    return { what, force: Number(force) };
  };

  it('names the weakest: flange, body beside it, or teeth, by what each bears of PA12 for a moment at 30 °C', () => {
    const moment = 0.5 * Math.exp(-7 / 85);
    // the flange by its own check at 30 N, pulled or pressed
    const wide = { holes: { circle: 36 }, body: { diameter: 26 } };
    const thin = { ...wide, material: { tensile_across: '500 MPa' }, flange: { thickness: 3, diameter: 46 } };
    const bent = Math.max(
      ...['away', 'onto'].map(
        (pull) => found('flange-bending', quiet(thin, { load: 30, pull, feed: undefined }))?.value ?? 0,
      ),
    );
    expect(first(thin).what).toBe('the flange');
    expect(first(thin).force / ((30 * 42 * moment) / bent)).toBeCloseTo(1, 2);
    // teeth of 15.35 mm bend with 0.02242 MPa for a newton
    const thick = { ...wide, flange: { thickness: 15, diameter: 46 } };
    expect(first(thick).what).toBe('the teeth');
    expect(first(thick).force / ((42 * moment) / 0.02242)).toBeCloseTo(1, 1);
    // a long nut on a slim body: the ring between body and thread parts across its layers
    const long = { flange: { thickness: 16 }, body: { diameter: 14.2, length: 60 } };
    expect(first(long).what).toBe('the body beside its flange');
  });

  it('warns of a motor that breaks the nut at its end, and asks for the motor', () => {
    const strong = (torque: string) => nutSheet({ duty: { motor: { torque } } });
    // 0.06 N·m push with 108 N; twice that on 135.4 mm², 3.969 · 1.367 times: 8.7 MPa of 21·0.5·e^(−7/85) = 9.67
    expect(found('end-stop', strong('0.06 N m'))!.verdict).toBe('pass');
    const row = found('end-stop', strong('1 N m'))!;
    expect(row.verdict).toBe('caution');
    expect(row.message).toContain('end stops');
    expect(row.message).toMatch(/may break at \d+ N/);
    expect(found('end-stop', quiet())!.missing).toEqual(['duty.motor.torque']);
    expect(found('end-stop', nutSheet({ duty: { temperature: undefined, motor: { torque: '0.06 N m' } } }))!.word).toBe(
      'not-told',
    );
  });

  it('is twice the stall force', () => {
    // Tr10x2: tan λ = 2/(9π), μ′ = 0.05/cos 15°; hand: 100 N·mm push with 100/(4.5·(0.07074 + 0.05176)/(1 − 0.00366))
    const [lead, rub] = [2 / (9 * Math.PI), 0.05 / Math.cos(Math.PI / 12)];
    const push = 100 / ((4.5 * (lead + rub)) / (1 - lead * rub));
    const row = found('end-stop', nutSheet({ duty: { motor: { torque: '0.1 N m' } } }))!;
    expect(row.message).toContain(`up to ${Math.round(2 * push)} N`);
  });
});
