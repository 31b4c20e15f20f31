import { describe, expect, it } from 'vitest';
import { limitsInForce } from '../../../src/judge/limits-in-force.js';
import { gripPull, gripTorque } from '../../../src/mechanics/shaft/clamp-grip.js';
import { frictionHold } from '../../../src/parts/collar/checks/hold.js';
import { seatPressure } from '../../../src/parts/collar/checks/seat.js';
import type { CollarDesign } from '../../../src/parts/collar/dimensions.js';
import { heldIn } from '../../../src/parts/collar/held-in.js';
import { pinPressure, slippingTorque, unscrewingTorque } from '../../../src/parts/collar/pin.js';
import type { CollarPlan } from '../../../src/parts/collar/plan.js';
import { backing, washerOffset } from '../../../src/parts/collar/seat.js';
import type { Shaft } from '../../../src/parts/common/bore.js';
import { gripOfHeld } from '../../../src/parts/common/held.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { HALVES, PLAIN, THREADED } from '../../support/collar-sheets.js';
import { changed } from '../../support/nut-sheets.js';

type Tree = { readonly [key: string]: unknown };

const collar = (base: object, changes: object = {}) => design(changed(base as Tree, changes as Tree)) as CollarDesign;
const finding = (base: object, id: string, changes: object = {}) =>
  check(collar(base, changes)).checks.find((row) => row.id === id);

describe('a collar that holds by friction, worked by hand', () => {
  it('has an ideal grip of 2π·µ·S, of which half is planned', () => {
    // common practice: µ 0.2 and a screw of 400 N hold 503 N, planned are 250
    const ideal = gripTorque({ normalForce: 2 * 400, diameter: 8, friction: 0.2, contact: 'uniform' });
    expect(gripPull({ torque: ideal, diameter: 8 })).toBeCloseTo(503, 0);
  });

  it.each([
    ['washed', { hold: { degreased: 'yes' } }],
    ['greasy', { hold: { degreased: 'no' } }],
    ['with two screws', { hold: { clamp: { count: 2 } } }],
    ['tightened once', { retighten: 'no' }],
    ['of PA12, hot', { material: 'pa12', duty: { temperature: 60 } }],
  ])('never promises more than half of that: %s', (_, changes) => {
    const made = collar(PLAIN, { duty: { load: 0, temperature: 23 }, ...changes });
    const { clamp, friction } = made.grip;
    const view = heldIn(made);
    const { preload } = gripOfHeld(view.held[0]!, view);
    expect(frictionHold(made)).toBeLessThanOrEqual(Math.PI * friction * clamp.count * preload);
    // M4 of 8.8 is never tightened to more than 90 % of its yield: 5.6 kN
    expect(preload).toBeLessThan(5600);
    expect(frictionHold(made)).toBeGreaterThan(0);
  });

  it('asks whether a shaft is washed where what it holds hangs on that', () => {
    const held = (load: number, degreased?: string) =>
      finding(PLAIN, 'axial-grip', { hold: { degreased, clamp: { count: 1 } }, duty: { load } });
    // friction 0.05 in place of 0.2 and less: a third of the pull
    const washed = held(40, 'yes')!.value!;
    const greasy = held(40, 'no')!.value!;
    expect(greasy).toBeLessThan(washed / 2);
    const between = (washed + greasy) / 4;
    expect(held(between, 'yes')).toMatchObject({ word: 'yes' });
    expect(held(between, 'no')).toMatchObject({ word: 'no' });
    expect(held(between)).toMatchObject({ word: 'not-told', missing: ['hold.degreased'] });
    expect(held(greasy / 2.1)).toMatchObject({ word: 'yes' });
    expect(held(washed)).toMatchObject({ word: 'no' });
  });

  it('holds as well by two halves, whose screws pull on both sides and bend nothing', () => {
    const made = collar(HALVES, { duty: { load: 0, temperature: 23 } });
    const { clamp, friction } = made.grip;
    // hoop pull S at both joints: 2π·µ·S, planned with half, as of a slit one
    expect(frictionHold(made)).toBeLessThanOrEqual(Math.PI * friction * clamp.count * 5600);
    expect(frictionHold(made)).toBeGreaterThanOrEqual(
      frictionHold(collar(PLAIN, { duty: { load: 0, temperature: 23 } })) - 1e-9,
    );
    expect(finding(HALVES, 'closing-strain')).toBeUndefined();
    const screws = check(made).hardware.find(({ item }) => item.includes('cap screw'));
    expect(screws?.count).toBe(2 * clamp.count);
  });

  it('counts a greasy screw with a friction of 0.05, a washed one with 0.15', () => {
    const crests = { shaft: undefined, screw: 'Tr10x2' };
    const greasy = collar(PLAIN, { ...crests, hold: { degreased: undefined } });
    const washed = collar(PLAIN, { ...crests, hold: { degreased: 'yes' } });
    expect(greasy.grip.friction).toBe(0.05);
    expect(washed.grip.friction).toBe(0.15);
    expect(frictionHold(washed)).toBeCloseTo(3 * frictionHold(greasy), 6);
  });

  it('must hold twice the load, and the weight of a screw that stands', () => {
    expect(finding(PLAIN, 'axial-grip')!.limit).toEqual({ min: 80 });
    // π/4·10²·200 mm³ of steel, 7.85 g/cm³: 123.3 g, 1.21 N
    const standing = { mounting: 'motor-above', duty: { load: 40, upward: 0, span: 200 } };
    expect(finding(PLAIN, 'axial-grip', standing)!.limit!.min).toBeCloseTo(2 * (40 + 1.21), 1);
  });

  it('alone never holds a standing screw, whatever the clamp', () => {
    for (const mounting of ['motor-above', 'motor-below']) {
      const strong = {
        mounting,
        hold: { clamp: { screw: 'M5', count: 2, washers: 'yes' } },
        duty: { load: 1, upward: 0 },
      };
      expect(finding(PLAIN, 'axial-grip', strong)!.word).toBe('yes');
      expect(finding(PLAIN, 'friction-alone', strong)!.word).toBe('no');
      expect(finding(PLAIN, 'friction-alone', { ...strong, backed_by: 'metal-collar' })!.word).toBe('yes');
    }
  });
});

describe('a collar with the thread of its screw, worked by hand', () => {
  it('turns off by load times lead over 2π and the drag of its bearing', () => {
    // 100 N on Tr8x2 and a bearing of 8 × 16: 100·2/6.2832 + 0.005·100·6 = 31.83 + 3
    expect(unscrewingTorque(collar(THREADED), 100)).toBeCloseTo(34.83, 2);
  });

  it('holds one way on its thrust bearing, and both ways with a second one', () => {
    const ways = (changes: object) => finding(THREADED, 'both-ways', changes);
    // what hangs pulls one way
    expect(ways({})).toBeUndefined();
    expect(ways({ mounting: 'horizontal' })).toMatchObject({ word: 'not-told' });
    expect(ways({ mounting: 'horizontal', pair: 'no' })!.message).toMatch(
      /^nothing: .*a level screw pushes both ways; put a second/,
    );
    expect(ways({ mounting: 'horizontal', pair: 'yes' })).toMatchObject({ word: 'yes' });
    // 30 N and 300 mm of 8 mm steel, 1.15 N, weigh on a standing screw
    const lifted = (upward: number) => ways({ mounting: 'motor-below', duty: { upward }, pair: 'no' });
    expect(lifted(31)).toBeUndefined();
    expect(lifted(31.3)!.message).toMatch(/^nothing: .* lifts the screw with 31\.3 N of which 31\.1 N weigh on it/);
    expect(ways({ mounting: 'motor-below', duty: { upward: undefined } })).toBeUndefined();
    // a drill that is pushed lifts what hangs too
    expect(ways({ duty: { upward: 31 }, pair: 'no' })).toBeUndefined();
    expect(ways({ duty: { upward: 31.3 }, pair: 'no' })).toMatchObject({ word: 'no' });
    // what runs on no bearing is told so by others
    expect(ways({ mounting: 'horizontal', bearing: undefined })).toBeUndefined();
  });

  it('turns off along a greased thread where no pin keeps it, by F·d₂/2·tan(λ − ρ′) and what its bearing drags', () => {
    const level = { mounting: 'horizontal', pin: undefined, motor: { torque: 0.6 } };
    const fast = { ...level, screw: { designation: 'Tr8x8(P2)', major: '7.95 ± 0.03 mm' } };
    // Tr8x8(P2): tan λ = 8/(7π) = 0.36378, tan ρ′ = 0.05/cos 15° = 0.05176: tan(λ − ρ′) = 0.31202/1.01883 = 0.30626;
    // 405 · 3.5 · 0.30626 = 434.1, and 0.005 · 405 · 6 = 12.2 of F8-16
    expect(slippingTorque(collar(THREADED, fast), 405)).toBeCloseTo(446.3, 1);
    // Tr8x2: tan(λ − ρ′) = (0.09095 − 0.05176)/1.00471 = 0.03900; 100 · 3.5 · 0.03900 + 3 = 16.65
    expect(slippingTorque(collar(THREADED, level), 100)).toBeCloseTo(16.65, 1);
    // M8: tan λ = 1.25/(7.188π) = 0.05535 is below 0.05/cos 30° = 0.05774: it stays, and the bearing alone drags
    const fine = { ...level, screw: { designation: 'M8', major: '7.9 mm' } };
    expect(slippingTorque(collar(THREADED, fine), 100)).toBeCloseTo(3, 6);
    // a jam of 0.6 N·m at a lead of 8 mm: 405 N
    expect(finding(THREADED, 'turn-grip', fast)).toMatchObject({
      word: 'but',
      fail_limit: { min: expect.closeTo(66.1, 0) },
    });
    expect(finding(THREADED, 'turn-grip', fast)!.message).toMatch(/when the axis jams, 446 N·mm turn it; put a pin/);
    expect(finding(THREADED, 'turn-grip', { ...fast, hold: { tightening: 0.02 } })).toMatchObject({
      word: 'no',
      value: 0,
    });
    // what its load alone turns off fails, whatever the motor that nobody told
    const untold = { ...fast, motor: { torque: undefined } };
    expect(finding(THREADED, 'turn-grip', { ...untold, hold: { tightening: 0.02 } })!.word).toBe('no');
    expect(finding(THREADED, 'turn-grip', untold)!.missing).toEqual(['motor.torque']);
    const weak = finding(THREADED, 'turn-grip', { ...level, motor: { torque: 0.02 } })!;
    expect(weak.word).toBe('yes');
    expect(weak.message).not.toContain('jams');
    // with a pin, on a standing screw, or with metal behind it, others judge it
    expect(finding(THREADED, 'turn-grip', { mounting: 'horizontal' })).toBeUndefined();
    expect(finding(THREADED, 'turn-grip', { pin: undefined })).toBeUndefined();
    expect(finding(THREADED, 'turn-grip', { ...fast, backed_by: 'metal-collar' })).toBeUndefined();
    expect(finding(PLAIN, 'turn-grip')).toBeUndefined();
  });

  it('presses its pin on a hole of the diameter d from r to R with 3·M·R/(2·d·(R³ − r³))', () => {
    const plan = { outside: 30, bore: { form: 'round', diameter: 10 }, pin: { hole: 2, height: 5 } } as const;
    // M 100: 3·100·15/(2·2·(3375 − 125)) = 4500/13000
    expect(pinPressure(plan, 100)).toBeCloseTo(0.34615, 4);
    // by the moment of what grows with the radius: 2·d·∫ p·r/R·r dr from 5 to 15
    const steps = 1000;
    const moment = Array.from({ length: steps }, (_, i) => 5 + ((i + 0.5) * 10) / steps).reduce(
      (sum, r) => sum + 2 * 2 * ((pinPressure(plan, 100) * r) / 15) * r * (10 / steps),
      0,
    );
    expect(moment).toBeCloseTo(100, 3);
  });

  it('carries on its flanks: pressure by the turns that the slit leaves', () => {
    // Tr8x2, c 0.1: flanks from 7.95 to 6.05, 0.95 deep; d2 7; 10 mm less the slit's 1.5/(π·7.1); 30 N and 1.2 N of screw
    const { message, value } = finding(THREADED, 'thread-hold')!;
    const made = collar(THREADED);
    expect(made.finished.length).toBe(10);
    expect(value!).toBeGreaterThan(0);
    expect(value!).toBeLessThan(0.3);
    expect(message).toMatch(/under 31 N standing/);
  });

  it('bends its teeth by the crests that the class allows where nobody measured them, 7.82 mm in place of 8', () => {
    const share = (screw: object) => finding(THREADED, 'thread-hold', { screw })!;
    const measured = share({ designation: 'Tr8x2', major: '8 ± 0 mm' });
    expect(measured.message).toMatch(/^bending of the teeth/);
    // arm from the root, 8 + 0.5 + 0.1 mm, to the middle between nut's minor, 6.1 mm, and crests
    const arm = (crests: number) => (8.6 - (6.1 + crests) / 2) / 2;
    // what carries of 10 mm: at both ends not the lead-in, 0.3 mm, nor the chamfer of 45° down to that middle
    const carries = (crests: number) => 10 - 2 * (0.3 + arm(crests));
    expect(share({ designation: 'Tr8x2', major: undefined }).value! / measured.value!).toBeCloseTo(
      arm(7.82) / carries(7.82) / (arm(8) / carries(8)),
      4,
    );
  });

  it('is let off where a metal collar carries', () => {
    const backed = { backed_by: 'metal-collar', duty: { load: 5000 } };
    for (const id of ['thread-hold', 'pin-hold'])
      expect(finding(THREADED, id, backed)).toMatchObject({ value: 0, word: 'yes' });
  });
});

describe('the seat of a bearing', () => {
  it('is the face on the bed where the shaft centres it, and else a lip that leaves the other washer free', () => {
    expect(collar(PLAIN).finished.lip).toBeUndefined();
    const { lip } = collar(PLAIN, { shaft: 8 }).finished;
    // 51100 is 24 × 9; its washers are more than a quarter of its height each
    expect(lip!.diameter).toBeCloseTo(24.05, 6);
    expect(lip!.depth).toBeCloseTo(2.25, 6);
  });

  it('is wide enough for the washer and its clamp: outside at least shaft + 2·(head + 2)', () => {
    // M3 heads of 5.5 mm: 8 + 2·7.5 = 23; F8-16 itself would do with 17
    expect(collar(THREADED).finished.outside).toBeGreaterThanOrEqual(23);
    expect(collar(PLAIN).finished.outside).toBeGreaterThanOrEqual(24 + 0.8);
  });

  it('presses with the load over the ring that is backed', () => {
    const { value } = finding(PLAIN, 'seat-pressure')!;
    // ring from the mouth, 10.04 + 2·0.4, to 24, less a slit of 1.5 mm: 40 N
    const [outer, inner] = [12, 5.02 + 0.4];
    expect(value).toBeCloseTo(40 / (Math.PI * (outer ** 2 - inner ** 2) - 1.5 * (outer - inner)), 4);
  });
});

describe('a collar in plain figures', () => {
  const turned = (more: object, bearing?: object) =>
    unscrewingTorque(
      { finished: { outside: 26, thread: { lead: 2 }, ...more }, ...(bearing ? { bearing } : {}) } as CollarDesign,
      100,
    );

  it('is turned off by F·l/2π and what it runs on: 0.005 on a bearing at 8.5 mm, 0.5 on plastic at 13 mm', () => {
    const lead = 200 / (2 * Math.PI);
    expect(turned({}, { bore: 10, outside: 24 })).toBeCloseTo(lead + 100 * 0.005 * 8.5, 6);
    expect(turned({})).toBeCloseTo(lead + 100 * 0.5 * 13, 6);
    expect(turned({ thread: undefined })).toBeCloseTo(100 * 0.5 * 13, 6);
  });

  const plan = (more: object = {}) =>
    ({ outside: 26, chamfer: 0.5, slit: 1.5, halves: false, bore: { diameter: 8 }, ...more }) as CollarPlan;
  const backed = (more: object = {}, bearing: object = {}) =>
    backing(plan(more), { bore: 9, outside: 20, height: 5, ...bearing }).area;
  const ring = (inner: number, outer: number, slits = 1) =>
    Math.PI * (outer ** 2 - inner ** 2) - slits * 1.5 * (outer - inner);

  it('backs what of a washer lies between mouth, lip and edge, its slits left out', () => {
    expect(backed()).toBeCloseTo(ring(4.5, 10), 9);
    expect(backed({ halves: true })).toBeCloseTo(ring(4.5, 10, 2), 9);
    expect(backed({}, { bore: 8 })).toBeCloseTo(ring(4.5, 10), 9);
    expect(backed({ thread: {} }, { bore: 8 })).toBeCloseTo(ring(4, 10), 9);
    expect(backed({}, { outside: 30 })).toBeCloseTo(ring(4.5, 12.5), 9);
    expect(backed({ lip: { diameter: 18 } })).toBeCloseTo(ring(4.5, 9), 9);
    expect(backed({}, { bore: 26, outside: 40 })).toBe(0);
    expect(backing(plan(), { bore: 9, outside: 20, height: 5 }).share).toBeCloseTo(
      ring(4.5, 10) / (Math.PI * (100 - 20.25)),
      9,
    );
  });

  it('backs nothing of a washer that is wider inside than the collar is outside, and says so', () => {
    const bare = {
      bearing: { bore: 26, outside: 40, height: 5 },
      finished: plan(),
      axial: { mounting: 'horizontal', load: 5 },
    };
    expect(seatPressure.run(bare as unknown as CollarDesign, limitsInForce())).toMatchObject({
      kind: 'told',
      verdict: 'fail',
      message: 'nothing of the washer is backed: take a larger outside or a wider bearing',
    });
  });

  it('lets a bearing stand off by its play on the shaft, at the thinnest that it may have', () => {
    const shaft = (more: object = {}) =>
      ({ form: 'round', diameter: { least: 7.8, likely: 7.9, most: 7.96 }, ...more }) as Shaft;
    const on = { bore: 8, outside: 20, height: 5, centredBy: 'shaft' } as const;
    const off = (least: number, likely: number, most: number) =>
      Object.fromEntries(Object.entries({ least, likely, most }).map(([key, one]) => [key, expect.closeTo(one, 9)]));
    expect(washerOffset(on, shaft())).toEqual(off(0.02, 0.05, 0.1));
    expect(washerOffset(on, shaft({ thinnest: 7.7 }))).toEqual(off(0.02, 0.05, 0.15));
    expect(washerOffset({ ...on, bore: 7.85 }, shaft())).toEqual(off(0, 0, 0.025));
  });
});

describe('a thrust bearing against its rating', () => {
  const rating = (changes: object = {}) => finding(THREADED, 'bearing-rating', changes);

  // F8-16 is 8 × 16 × 5: balls of 2.25 mm, 12 of them on ⌀12; C0 = 61.6·12·2.25² = 3742 N, C = 90·12^(2/3)·2.25^1.8
  const turning = 90 * 12 ** (2 / 3) * 2.25 ** 1.8;
  // 30 N and π/4·7.95² · 300 mm of steel, 1.1462 N, hang on it
  const load = 31.1462;

  it('lasts 100 million turns with C over the cube root of 100', () => {
    expect(turning).toBeCloseTo(2031, 0);
    const { value, message } = rating()!;
    expect(value! / ((load * 4.6416) / turning)).toBeCloseTo(1, 3);
    expect(message).toBe('31 N of the 437 N with which it lasts 100 million turns');
    // by its sizes as by its name
    expect(rating({ bearing: { bore: 8, outside: 16, height: 5 } })!.value).toBe(value);
  });

  it('of needles turns with a third of what it stands: 220·11·6.5·2/3', () => {
    // 8 × 21: 11 needles of 2 mm on ⌀14.5, each rolls on 3.25 mm: 15,730 N
    const { value } = rating({ bearing: 'AXK0821' })!;
    expect(value! / ((load * 4.6416) / (15_730 / 3))).toBeCloseTo(1, 3);
  });

  it('takes a jam up to what dents its tracks', () => {
    // 0.4 N·m at the least friction of grease, 0.05: 2·400/(7·0.143385) = 797.05 N, tan(λ + ρ') with tan λ = 2/(7π), tan ρ' = 0.05/cos 15°
    const { value, message } = rating({ motor: { torque: 0.4 } })!;
    expect(value! / (797.05 / 3742.2)).toBeCloseTo(1, 3);
    expect(message).toBe('797 N of 3742 N when the axis jams');
  });

  it('is not asked without a bearing', () => {
    expect(rating({ bearing: undefined })).toBeUndefined();
  });
});

describe('what else a bearing asks of its shaft', () => {
  it('is a bore that is wider by the room that a sheet asks for', () => {
    // 9.99 ± 0.01 mm and 0.1
    expect(finding(PLAIN, 'bearing-bore', { limits: { 'bearing-bore': { min: 0.1 } } })!.message).toMatch(
      /; a bearing bored 10\.1 mm or more goes over it for sure$/,
    );
  });

  it('is a lip that stands off by what a print leaves uncertain, compensated or not', () => {
    // (0.05 + 0.2)/2 by the washer's room in its lip; then half of what is uncertain of lip and bore each: 0.05 mm of the
    // printer and PC's shrink of 24.05 and 8 mm
    const bare = { shaft: '8 ± 0.02 mm', printer: { compensation: 'none', hole_offset: '0.3 mm' } };
    const made = collar(PLAIN, bare);
    const { plane } = made.material.shrink;
    const uncertain = (size: number) => 0.05 + (plane.most - plane.likely) * size;
    const bore = made.finished.bore.diameter;
    // nobody compensates: the bore comes out tighter by offset and shrink, and wider by its clearance
    const play = made.clearance - 0.3 - plane.likely * bore + uncertain(bore) + 0.02;
    const most = 0.125 + uncertain(made.finished.lip!.diameter) / 2 + Math.max(0, play) / 2;
    expect(finding(PLAIN, 'bearing-centre', bare)!.most).toBeCloseTo(most, 5);
  });
});

describe('what would hold more than a clamp', () => {
  it('is the screw’s own thread only where the screw itself is held, by its crests', () => {
    const much = { shaft: undefined, motor: { torque: 0.1 }, duty: { load: 4000 } };
    const words = (changes: object) => finding(PLAIN, 'axial-grip', { ...much, ...changes })!.message;
    expect(words({ screw: 'Tr10x2' })).toContain('the screw’s own thread (bore: thread)');
    expect(words({ screw: 'Tr12x3', turned_end: 9.98 })).not.toContain('own thread');
  });
});
