import { describe, expect, it } from 'vitest';
import type { CouplingDesign } from '../../../src/parts/coupling/dimensions.js';
import { bareJaw, contactIn, type JawWork, jawLoads } from '../../../src/parts/coupling/jaw-load.js';
import { allowedMisalignment, squeezeAt, usedMisalignment } from '../../../src/parts/coupling/misalignment.js';
import { peakTorque } from '../../../src/parts/coupling/peak-torque.js';
import { resolveMaterial } from '../../../src/presets/resolve-material.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';

const JAWS = {
  count: 3,
  inner: 5,
  outer: 13,
  halfSlot: 3,
  height: 10,
  fillet: 1,
  bevel: 0.5,
  draft: 0,
  recess: 0,
  hollow: 0,
};
const INSERT = { height: 8, reach: 12, middle: 5, barrel: 0.3, halfWidth: 2.9, ring: 4 };
const place = (gap: number, insert: object = {}) =>
  ({ jaws: JAWS, insert: { ...INSERT, ...insert }, gap }) as unknown as JawWork;

describe('where jaws and lobes touch', () => {
  it('begins where the slot leaves the room between the jaws, √(5² − 3²) = 4, and ends at the lobe', () => {
    expect(contactIn(place(12))).toMatchObject({ jaws: 3, length: 8, meanRadius: 8 });
  });

  it('lies between the fillet and the bevel, as high as the insert', () => {
    // the insert stands from 2 to 10, the jaws are whole from 1 to 9.5
    expect(contactIn(place(12))).toMatchObject({ bottom: 2, top: 9.5, height: 7.5 });
    // from 0.5 to 8.5
    expect(contactIn(place(9))).toMatchObject({ bottom: 1, top: 8.5, height: 7.5 });
  });
});

describe('the foot of a jaw', () => {
  const work = (more: object = {}): JawWork => ({
    ...place(12),
    modulus: 10,
    flankClearance: -0.1,
    angle: 1,
    working: 1000,
    peak: 2000,
    material: resolveMaterial({ preset: 'pc' }, SHIPPED, new Assumptions()),
    temperature: 23,
    ...more,
  });
  const bending = (more: object = {}) => jawLoads(work(more))[0]!.bending;

  it('is bent by an arm that goes from the middle towards the tip by lean over squeeze', () => {
    // lobes press with 1000/(3·8·8·7.5) = 0.694 MPa and give 0.694·5.8/10 = 0.403, and 0.1 are built in;
    // the tip leans by 10·tan 1° = 0.1746: (5.75 + 3.75·0.1746/0.503)/5.75
    const lean = 10 * Math.tan(Math.PI / 180);
    const squeeze = 0.1 + ((1000 / (3 * 8 * 8 * 7.5)) * 5.8) / 10;
    expect(bending() / bending({ angle: 0 })).toBeCloseTo((5.75 + (3.75 * lean) / squeeze) / 5.75, 6);
    // what has play is not squeezed before it carries
    expect(bending({ flankClearance: 0.2 }) / bending({ angle: 0 })).toBeCloseTo(
      (5.75 + (3.75 * lean) / (squeeze - 0.1)) / 5.75,
      6,
    );
    // a hard insert: the tip carries, on two jaws of three
    expect(bending({ modulus: 1e9, flankClearance: 0 }) / bending({ angle: 0 })).toBeCloseTo((1.5 * 9.5) / 5.75, 6);
    // 98 Shore A is 57.1 MPa: of twice that 2.5 of 3 jaws carry
    expect(bending({ modulus: 114.2, angle: 0 }) / bending({ angle: 0 })).toBeCloseTo(3 / 2.5, 3);
    expect(bending({ modulus: 57, angle: 0 }) / bending({ angle: 0 })).toBe(1);
  });

  it('is judged in work and at the peak, and bare at the tip by one jaw', () => {
    const [inWork, peak] = jawLoads(work({ angle: 0 }));
    expect(peak!.bending / inWork!.bending).toBeCloseTo(2, 9);
    // one jaw in place of three, evenly, at 10 in place of 5.75, where three share it 1.5 times unevenly
    expect(bareJaw(work(), 1000).bending / inWork!.bending).toBeCloseTo((3 / 1.5) * (10 / 5.75), 6);
    expect(bareJaw(work(), 1000).shear / inWork!.shear).toBeCloseTo(3 / 1.5, 6);
  });

  // by hand: even pressure acts at 2/3·(13³ − 5³)/(13² − 5²) = 9.5926, where the jaw is 2·(9.5926/2 − 3)/cos 30° = 4.1489 wide;
  // 1.5·1000/(3·9.5926) = 52.12 N, 5.75 up, on 8·4.1489²/6 = 22.95 mm³: 13.06 MPa
  const SECTION = (52.124 * 5.75) / ((8 * 4.1489 ** 2) / 6);

  it('bears in bending what the section bears times the notch of its fillet, from tables of stress concentration', () => {
    // h/r = 4.1489/1, root 2.0369, 2h/D = 2/3: C1 1.042 + 0.982·2.0369 − 0.036·4.1489 = 2.8929, C2 −2.0895, C3 −0.5324,
    // C4 0.7290; 2.8929 − 2.0895·0.6667 − 0.5324·0.4444 + 0.7290·0.2963 = 1.479
    const [inWork, peak] = jawLoads(work({ angle: 0 }));
    expect(inWork!.notch).toBeCloseTo(1.479, 3);
    expect(inWork!.bending).toBeCloseTo(1.479 * SECTION, 1);
    expect(peak!.bending).toBeCloseTo(2 * 1.479 * SECTION, 1);
    // 2.5 of width to 1 of fillet and below counts little, 10 to 1 counts 1.92, a sharp corner twice
    const of = (fillet: number) => jawLoads(work({ angle: 0, jaws: { ...JAWS, fillet } }))[0]!;
    expect(of(0.41489).notch).toBeCloseTo(1.919, 2);
    expect(of(0).notch).toBe(2);
    expect(of(0).bending).toBeCloseTo(2 * SECTION, 1);
  });

  it('bears in shear what the section bears, whatever its corner', () => {
    for (const fillet of [0, 0.5, 1])
      expect(jawLoads(work({ angle: 0, jaws: { ...JAWS, fillet } }))[0]!.shear).toBeCloseTo(
        (1.5 * 52.124) / (8 * 4.1489),
        3,
      );
  });

  it('counts the notch of a bare jaw too: 1000/9.5926 = 104.25 N at its tip, 10 up, by 1.479', () => {
    expect(bareJaw(work(), 1000).bending).toBeCloseTo((1.479 * 104.247 * 10) / ((8 * 4.1489 ** 2) / 6), 0);
    expect(bareJaw(work(), 1000).notch).toBeCloseTo(1.479, 3);
  });

  it('sees the worse of starts and shock', () => {
    // DIN 740: 1 up to 100 starts an hour, 1.6 up to 400; shocks of 1.8
    expect(peakTorque({ torque: 100, starts: 60, shock: 'none' })).toBe(100);
    // what nobody tells is the worst: 2 above 1,000 starts an hour, 2.2 of heavy shock
    expect(peakTorque({ torque: 100, shock: 'none' })).toBe(200);
    expect(peakTorque({ torque: 100, starts: 60 })).toBeCloseTo(220, 9);
    expect(peakTorque({ torque: 100 })).toBeCloseTo(220, 9);
    expect(peakTorque({ torque: 100, starts: 300, shock: 'none' })).toBeCloseTo(160, 9);
    expect(peakTorque({ torque: 100, starts: 300, shock: 'medium' })).toBeCloseTo(180, 9);
  });
});

describe('misalignment, by hand', () => {
  interface More {
    readonly finished?: object;
    readonly flankClearance?: number;
    readonly modulus?: number;
    readonly misalignment?: object;
  }
  const between = (gap: number, more: More = {}) =>
    ({
      jaws: JAWS,
      gap,
      insert: {
        finished: { ...INSERT, ...more.finished },
        flankClearance: more.flankClearance ?? -0.1,
        modulus: more.modulus ?? 41,
      },
      misalignment: { parallel: 0.2, angular: 1, axial: 0.4, ...more.misalignment },
    }) as unknown as CouplingDesign;
  const lean = Math.tan((0.5 * Math.PI) / 180);

  it('squeezes a lobe by half the offset and by its lean at the ends', () => {
    // 0.1 built in; (0.1 + 0.008727·(4 + 0.008727·12))·√(1 + (0.6/7)²)
    const pushed = (0.1 + lean * (4 + lean * 12)) * Math.hypot(1, 0.6 / 7);
    expect(squeezeAt(between(12))).toBeCloseTo(0.1 + pushed, 6);
    expect(squeezeAt(between(12, { flankClearance: 0.1 }))).toBeCloseTo(pushed, 6);
  });

  it('and by the fillet of 1 mm where its lowest edge comes to lie: 0.195 mm up it stands out by 0.41', () => {
    const up = 0.5 - 0.2 - lean * 12;
    const bite = 1 - Math.sin(Math.acos(1 - up));
    const pushed = (0.1 + lean * (4 + lean * 12)) * Math.hypot(1, 0.6 / 7);
    expect(squeezeAt(between(9)) - 0.1 - pushed).toBeGreaterThan(bite - 1e-9);
    expect(squeezeAt(between(9)) - 0.1 - pushed).toBeLessThan(bite + 0.05);
    // at the bottom all of it
    expect(squeezeAt(between(8)) - 0.1 - pushed).toBeCloseTo(1, 6);
  });

  it('is allowed what is usual, and what rims, ring and lobes leave of it', () => {
    // 1 % of 26 mm; tips are 2 mm from the other floor
    expect(allowedMisalignment(between(12))).toEqual({ angular: 1, parallel: 0.26, axial: 1 });
    // 0.2 mm: atan(0.2/26) = 0.4407°
    expect(allowedMisalignment(between(10.2)).angular).toBeCloseTo(0.4407, 4);
    // an insert of 11 stands nearer than the jaws
    expect(allowedMisalignment(between(12, { finished: { height: 11 } })).axial).toBe(0.5);
    // 15 % of 5.8 less 0.8, twice; a ring 0.05 mm inside the jaws, twice; one that touches takes none
    expect(allowedMisalignment(between(12, { flankClearance: -0.8 })).parallel).toBeCloseTo(0.14, 9);
    expect(allowedMisalignment(between(12, { flankClearance: 0.8 })).parallel).toBe(0.26);
    expect(allowedMisalignment(between(12, { finished: { ring: 4.95 } })).parallel).toBeCloseTo(0.1, 9);
    expect(allowedMisalignment(between(12, { finished: { ring: 5.2 } })).parallel).toBe(0.001);
  });

  it('is allowed half of what is usual with an insert twice as stiff as 98 Shore A, but no less along', () => {
    const hard = allowedMisalignment(between(12, { modulus: 114.2 }));
    expect(hard.angular).toBeCloseTo(0.5, 3);
    expect(hard.parallel).toBeCloseTo(0.13, 3);
    expect(hard.axial).toBe(1);
    // what is narrower than that stays as it is
    expect(allowedMisalignment(between(10.2, { modulus: 114.2 })).angular).toBeCloseTo(0.4407, 4);
  });

  it('uses the sum of its shares: 1/1 + 0.2/0.26 + 0.4/1', () => {
    expect(usedMisalignment(between(12))).toBeCloseTo(1 + 0.2 / 0.26 + 0.4, 9);
    // tips 0.2 mm from the other floor take 0.4407° and 0.1 mm
    expect(usedMisalignment(between(10.2))).toBeCloseTo(1 / 0.4407 + 0.2 / 0.26 + 0.4 / 0.1, 3);
  });
});
