import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/judge/check.js';
import { allowableStress } from '../../../src/mechanics/strength/allowable.js';
import { frictionHold } from '../../../src/parts/collar/checks/hold.js';
import type { CollarDesign } from '../../../src/parts/collar/dimensions.js';
import { heldIn } from '../../../src/parts/collar/held-in.js';
import { gripOfHeld } from '../../../src/parts/common/held.js';
import { advise } from '../../../src/pipeline/advise.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { PLAIN, THREADED } from '../../support/collar-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

type Tree = Record<string, unknown>;
type Base = Readonly<Tree>;

const CRESTS = { shaft: undefined, screw: 'Tr10x2' };
const LEVEL = { mounting: 'horizontal' };
const STANDING = { mounting: 'motor-above', duty: { span: 200 } };
const BACKED = { backed_by: 'metal-collar' };
const JAMS = { motor: { torque: '2 N m' } };

const found = (id: string, base: Base, changes: Tree = {}): Finding | undefined =>
  findingOf(changed(base, changes), id);
const collar = (base: Base, changes: Tree = {}) => design(changed(base, changes)) as CollarDesign;
const limit = (id: string, bounds: Tree) => ({ limits: { [id]: bounds } });

/** [check, sheet, changes, what its message says], each figure by hand from the sheet. */
const SAID: readonly [string, Base, Tree, RegExp][] = [
  ['bearing-bore', PLAIN, {}, /^a bore of 10 mm on a shaft of 9.99 mm$/],
  ['bearing-bore', PLAIN, { shaft: '10 ± 0 mm' }, /^a bore of 10 mm on a shaft of 10 mm$/],
  [
    'bearing-bore',
    PLAIN,
    { bearing: 'F8-16' },
    /^a bore of 8 mm on a shaft of 9.99 mm; a bearing bored 10 mm or more goes over it for sure$/,
  ],
  // twice the load, whatever is wanted of it
  ['axial-grip', PLAIN, {}, / 80 N are asked: 2 × 40 N$/],
  ['axial-grip', PLAIN, limit('axial-grip', { min: 400 }), / 400 N are asked by the sheet$/],
  ['axial-grip', PLAIN, BACKED, /^the metal collar behind it carries what pulls/],
  [
    'axial-grip',
    PLAIN,
    { ...CRESTS, ...JAMS },
    / 80 N are asked: 2 × 40 N; it slips when the axis jams, under \d+ N; use/,
  ],
  ['axial-grip', PLAIN, { duty: { load: 900 } }, / 1800 N are asked: 2 × 900 N; use larger screws or a metal collar/],
  ['axial-grip', PLAIN, { duty: { load: 900, temperature: undefined } }, / 1800 N are asked/],
  ['axial-grip', PLAIN, { duty: { temperature: undefined } }, /^not judged: duty.temperature is missing$/],
  ['axial-grip', PLAIN, { mounting: undefined }, /^not judged: mounting is missing$/],
  ['friction-alone', PLAIN, {}, /^a level screw does not sink$/],
  ['friction-alone', THREADED, { ...LEVEL, pin: undefined }, /^a level screw does not sink$/],
  ['friction-alone', PLAIN, { ...STANDING, ...BACKED }, /^a metal collar behind it$/],
  ['friction-alone', THREADED, {}, /^the flanks of its thread/],
  ['friction-alone', THREADED, { mounting: undefined }, /^the flanks of its thread/],
  ['friction-alone', THREADED, { pin: undefined }, /^the clamp alone keeps the thread/],
  ['friction-alone', PLAIN, STANDING, /^friction in plastic alone/],
  // major 8.55, rooted 2 − (1 − 2·0.725·tan 15°) = 1.3885 wide, arm (8.55 − (6.05 + 7.92)/2)/2 = 0.7825, half of
  // (1 − 1.5/(π·7.1))·(10 − 2·(0.3 + 0.7825))/2 turns bear: 6·30·0.7825/(π·8.55·1.3885²·1.827) = 1.488
  ['thread-hold', THREADED, LEVEL, /^bending of the teeth 1.49 MPa of [\d.]+ MPa under 30 N standing$/],
  ['thread-hold', THREADED, { ...LEVEL, length: 20 }, /^bending of the teeth 0.65 MPa/],
  ['thread-hold', THREADED, { ...LEVEL, ...JAMS }, / N for a moment, the axis jammed; a longer collar/],
  // 0.01 N·m stalled
  ['thread-hold', THREADED, { ...LEVEL, duty: { load: 0 } }, / MPa under 20 N for a moment, the axis jammed$/],
  ['thread-hold', THREADED, { ...LEVEL, duty: { temperature: 140 } }, / MPa of 0 MPa under 30 N .*less heat$/],
  ['thread-hold', THREADED, { duty: { temperature: undefined, load: 2000 } }, /; a longer collar/],
  ['thread-hold', THREADED, BACKED, /^none: the metal collar/],
  // 30·(2/(2π) + 0.005·6) N·mm
  ['pin-hold', THREADED, LEVEL, /^0.06 MPa by 10 N·mm that turn it off, .*; it bears 1\d.\d MPa$/],
  ['pin-hold', THREADED, { duty: { load: 20_000, temperature: undefined } }, / MPa; a thicker pin/],
  ['pin-hold', THREADED, { duty: { temperature: undefined } }, /^not judged: duty.temperature is missing$/],
  [
    'closing-strain',
    THREADED,
    limit('closing-strain', { max: 0.001 }),
    /; use a closer fit, a thinner wall or a tougher/,
  ],
  ['closing-strain', PLAIN, limit('closing-strain', { max: 0.001 }), /; use a smaller hold.bore_clearance, a thinner/],
  ['runs-on', PLAIN, {}, /^a thrust bearing, centred by the shaft$/],
  // 10 − 9.6, the most that a shaft centres
  ['runs-on', PLAIN, { shaft: 9.6 }, /^a thrust bearing, centred by the shaft$/],
  ['runs-on', PLAIN, { shaft: 9.59 }, /^a thrust bearing, centred by its lip$/],
  ['runs-on', PLAIN, { shaft: 8 }, /^a thrust bearing, centred by its lip$/],
  ['runs-on', PLAIN, { bearing: undefined, duty: { load: 0 } }, /^nothing: no load is told/],
  ['runs-on', PLAIN, { bearing: undefined }, /^its face rubs/],
  ['runs-on', PLAIN, { ...STANDING, bearing: undefined, duty: { load: 0, span: 200 } }, /^its face rubs/],
  // (10 − 9.99)/2, (10 − 9.98)/2
  ['bearing-centre', PLAIN, {}, /^centred by the shaft, 0.005 mm to one side, 0.01 mm at most$/],
  // lip and washer (0.05 + 0.2)/2, the bore (8.05 − 8)/2
  ['bearing-centre', PLAIN, { shaft: 8 }, /^centred by the lip, .*, 0.15 mm to one side, .* runs truer$/],
  ['seat-backing', PLAIN, {}, /^94 % of a washer of 24 mm, slit and mouth left out$/],
  ['seat-backing', PLAIN, limit('seat-backing', { min: 0.95 }), /; a larger outside/],
  ['seat-pressure', PLAIN, {}, /^0.11 MPa under 40 N for good, 13.2 MPa are borne$/],
  ['seat-pressure', PLAIN, { duty: { load: 0 } }, /^0 MPa under 0 N for good/],
  ['seat-pressure', PLAIN, { ...CRESTS, ...JAMS }, / N for a moment, the axis jammed, [\d.]+ MPa are borne$/],
  ['seat-pressure', PLAIN, { ...CRESTS, ...JAMS, duty: { load: 2800 } }, / under 2800 N for good/],
  ['seat-pressure', PLAIN, { duty: { load: 20_000, temperature: undefined } }, / are borne; a larger bearing/],
  ['seat-runout', PLAIN, {}, /^the face is printed on the bed/],
  ['seat-runout', PLAIN, { shaft: 8 }, /^the face in the lip/],
];

describe('a check of a collar', () => {
  it.each(SAID)('%s says what it is about (case %#)', (id, base, changes, words) => {
    expect(found(id, base, changes)?.message).toMatch(words);
  });

  it.each([
    ['axial-grip', THREADED, {}],
    ['thread-hold', PLAIN, CRESTS],
    ['pin-hold', PLAIN, CRESTS],
    ['pin-hold', THREADED, { pin: undefined }],
    ...['bearing-bore', 'bearing-centre', 'seat-backing', 'seat-pressure', 'seat-runout'].map(
      (id) => [id, PLAIN, { bearing: undefined }] as const,
    ),
  ] as const)('%s is not asked where there is nothing of its kind (case %#)', (id, base, changes) => {
    expect(found(id, base, changes)).toBeUndefined();
  });

  it('holds what is left of the clamp over the radius of the shaft', () => {
    for (const count of [1, 2]) {
      const made = collar(PLAIN, { hold: { clamp: { count } } });
      const view = heldIn(made);
      const { clamp } = gripOfHeld(view.held[0]!, view);
      expect(frictionHold(made)).toBeCloseTo((2 * clamp!.again) / 9.99, 6);
    }
  });

  it('asks twice the load of friction, and the whole jam for a clean yes', () => {
    const { limit: pass, fail_limit: fail } = found('axial-grip', PLAIN, { ...CRESTS, ...JAMS })!;
    expect(pass!.min).toBeGreaterThan(2000);
    expect(fail).toEqual({ min: 80 });
    expect(found('axial-grip', PLAIN, BACKED)!.limit).toEqual({ min: 0 });
    expect(found('pin-hold', THREADED, BACKED)!.limit).toEqual({ max: 1 });
  });

  it('counts a weight for years, the load of a level axis for 1,000 hours back and forth', () => {
    for (const [mounting, duration] of [
      ['horizontal', 'level'],
      ['motor-above', 'years'],
    ] as const) {
      const { material } = collar(THREADED, { mounting });
      const bears = (kind: 'pressure' | 'tension') => allowableStress(material, { kind, duration, temperature: 35 });
      for (const id of ['pin-hold', 'seat-pressure'])
        expect(found(id, THREADED, { mounting })!.limit!.max).toBeCloseTo(bears('pressure'), 5);
      const { value, message } = found('thread-hold', THREADED, { mounting })!;
      expect(value! * bears('tension')).toBeCloseTo(Number(/teeth ([\d.]+)/.exec(message)![1]), 2);
    }
  });

  it('presses a pin by 3·M·R/(2·d·(R³ − r³))', () => {
    // M 10.449, R 14, r 9.15/2, d 1.5
    expect(found('pin-hold', THREADED, LEVEL)!.value).toBeCloseTo((3 * 10.449 * 14) / (3 * (14 ** 3 - 4.575 ** 3)), 5);
  });

  it('takes the shaft at its largest and its smallest', () => {
    const { least, most } = found('bearing-bore', PLAIN)!;
    expect(least).toBeCloseTo(0, 9);
    expect(most).toBeCloseTo(0.02, 9);
  });

  it('doubts where a lip stands by half of what the print scatters of lip and bore', () => {
    // holes of ± 0.05 mm, pc that shrinks by ± 0.3 %: (0.05 + 0.003·24.05)/2 and (0.05 + 0.03 + 0.003·8.05)/2
    const [lip, bore] = [0.12215 / 2, (0.08 + 0.003 * 8.05) / 2];
    const { least, most } = found('bearing-centre', PLAIN, { shaft: 8 })!;
    expect(most).toBeCloseTo(0.15 + lip + bore, 4);
    // a clamp takes up no more than the play that is there
    expect(least).toBeCloseTo(0.125 - lip, 4);
    expect(found('bearing-centre', PLAIN)!.least).toBeCloseTo(0, 9);
  });

  it('breaks whatever is asked of plastic that is soft', () => {
    const soft = { ...LEVEL, duty: { temperature: 140 } };
    expect(found('thread-hold', THREADED, soft)).toMatchObject({ verdict: 'fail', value: null });
    expect(found('thread-hold', THREADED, changed(soft, { duty: { load: 0 } }))!.value).toBeLessThan(1);
  });

  it('asks for the motor of a screw before it holds, since an axis may jam', () => {
    for (const id of ['thread-hold', 'pin-hold', 'seat-pressure'])
      expect(found(id, THREADED, { motor: undefined })!.missing).toEqual(['motor.torque']);
    const crests = { ...CRESTS, screw: { designation: 'Tr10x2', major: 9.95 } };
    expect(found('axial-grip', PLAIN, crests)!.missing).toEqual(['motor.torque']);
    // a shaft without a thread is pushed by nobody; what breaks in work breaks without a jam
    expect(found('axial-grip', PLAIN)!.word).toBe('yes');
    expect(found('pin-hold', THREADED, { motor: undefined, duty: { load: 20_000 } })!.word).toBe('no');
  });

  it('presses its pin by the jam too, for a moment', () => {
    // 2 N·m on Tr8x2 at a friction of 0.05, 1.9926 N for a N·mm, turned down its thread and on rolling needles
    const torque = 2000 * 1.9926 * (2 / (2 * Math.PI) + 0.005 * 6);
    const { value, message } = found('pin-hold', THREADED, JAMS)!;
    expect(value! / ((3 * torque * 14) / (3 * (14 ** 3 - 4.575 ** 3)))).toBeCloseTo(1, 2);
    expect(message).toMatch(/ N·mm that turn it off for a moment, the axis jammed, no friction counted/);
  });

  it('names in its cure nothing that is there already', () => {
    const text = (changes: Tree) => found('axial-grip', PLAIN, { duty: { load: 5000 }, ...changes })!.message;
    expect(text({})).toMatch(/; use larger screws or a metal collar/);
    expect(text({ hold: { clamp: { count: 2 } } })).toMatch(/; use larger screws or a metal/);
    expect(text({ hold: { clamp: { washers: 'no' } }, retighten: 'no' })).toMatch(
      /; use washers, larger screws, one retightening \(retighten: yes\) or a metal collar/,
    );
    expect(text({ ...CRESTS, hold: { degreased: undefined } })).toMatch(
      /; use a screw washed free of grease .*, the screw’s own thread \(bore: thread\) or/,
    );
  });

  it('holds a screw that nobody measured at its thinnest', () => {
    // Tr8x2 of 7.64 mm in a bore for 8 mm: much of the clamp is spent on closing; a thick PLA collar hardly closes
    const thin = { shaft: undefined, screw: 'Tr8x2', material: 'pla', motor: { torque: 0.01 }, outside_diameter: 40 };
    const held = frictionHold(collar(PLAIN, thin));
    const load = 0.49 * held;
    expect(found('axial-grip', PLAIN, { ...thin, duty: { load, temperature: 23 } })!.missing).toEqual(['screw.major']);
  });
});

describe('a standing screw that friction alone would hold', () => {
  const plain = {
    part: 'collar',
    name: 'plain',
    mounting: 'motor-above',
    hold: { degreased: 'yes' },
    material: 'pc',
    duty: { load: 2, span: 320, temperature: 25 },
  };
  const said = (sheet: object) =>
    check(design(sheet)).checks.find(({ id }) => id === 'friction-alone') ?? expect.fail('nothing was said');

  it('wants a thread and a pin, or metal; a plain shaft metal alone', () => {
    expect(said({ ...plain, screw: 'Tr10x2' })).toMatchObject({
      verdict: 'fail',
      message: expect.stringMatching(/bore: thread.*backed_by/),
    });
    const shaft = said({ ...plain, shaft: { diameter: 10 } });
    expect(shaft).toMatchObject({ verdict: 'fail', message: expect.stringMatching(/put a metal collar behind it/) });
    expect(shaft.message).not.toContain('thread');
  });

  it('is advised the metal collar, tried on the sheet itself', () => {
    const { checks } = advise({ ...plain, screw: 'Tr10x2' });
    expect(checks.find((one) => one.check === 'friction-alone')!.cures).toMatchObject([
      { set: { backed_by: 'metal-collar' }, reaches: 'pass' },
    ]);
  });
});
