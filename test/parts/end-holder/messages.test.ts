import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/judge/check.js';
import { pressFit } from '../../../src/mechanics/shaft/press-fit.js';
import type { EndHolderDesign } from '../../../src/parts/end-holder/dimensions.js';
import { design } from '../../../src/pipeline/design.js';
import {
  BUSH,
  FLANGED,
  FLANGED_LOCATED,
  GUIDED,
  LIPPED,
  LOCATED,
  PRESSED,
  RING,
} from '../../support/end-holder-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

type Tree = Record<string, unknown>;
type Base = Readonly<Tree>;

const STANDS = { mounting: 'motor-below' };
/** Led closely: 7.95 − 7.88 mm of play at least. */
const CLOSE = { bore: 7.95 };
const WIDE_HOLES = { holes: { screw: undefined, rectangle: [90, 90], diameter: 20 } };

const found = (id: string, base: Base, changes: Tree = {}): Finding | undefined =>
  findingOf(changed(base, changes), id);
const holder = (base: Base, changes: Tree = {}) => design(changed(base, changes)) as EndHolderDesign;
const without = (field: string) => ({ duty: { [field]: undefined } });

/** [check, sheet, changes, what its message says], each figure by hand from the sheet. */
const SAID: readonly [string, Base, Tree, RegExp][] = [
  ['pocket-fit', PRESSED, { fit: { pocket: '21.96 ± 0.01 mm' } }, / takes 0.088 mm for good$/],
  ['pocket-fit', PRESSED, { fit: { pocket: '22 ± 0.05 mm' } }, /; print the pocket, measure it and write fit.pocket/],
  ['pocket-fit', PRESSED, { fit: { pocket: '22 ± 0.05 mm' } }, /^pocket 21.94 mm for 22 mm; petg takes/],
  ['pocket-fit', GUIDED, { fit: { pocket: '22 ± 0.05 mm' } }, / takes 0.088 mm for good$/],
  ['pocket-fit', GUIDED, { fit: { pocket: '21.8 ± 0.05 mm' } }, / and set fit.interference by it$/],
  ['screw-fit', GUIDED, {}, /^the screw of 7.85 mm in the bearing$/],
  ['screw-fit', BUSH, { bore: 8.15 }, /^the screw of 7.85 mm in its bore$/],
  ['screw-fit', BUSH, { bore: 9 }, /; take a smaller one$/],
  ['screw-fit', BUSH, CLOSE, /; take a larger bore/],
  // 8 + 0.3·(22 − 8)
  ['shoulder', GUIDED, {}, /^clears what turns up to 12.2 mm, backs the outer ring below 19.6 mm$/],
  ['shoulder', GUIDED, { fit: { shoulder: 12 } }, /; open it, or the inner ring rubs$/],
  ['shoulder', GUIDED, { fit: { shoulder: 20.5 } }, /; make it narrower/],
  ['over-constraint', RING, { coupling: undefined }, /^a guard ring leads nothing$/],
  ['over-constraint', GUIDED, { coupling: undefined }, /^not judged: coupling is missing$/],
  ['over-constraint', GUIDED, { nut: undefined }, /^not judged: nut is missing$/],
  ['over-constraint', GUIDED, {}, /^rigid nut leads the screw$/],
  ['over-constraint', GUIDED, { nut: 'floating' }, /^nothing leads the screw$/],
  ['over-constraint', BUSH, CLOSE, /^rigid nut, holder without play leads the screw; let the nut float/],
  ['locating-bearings', GUIDED, { coupling: undefined }, /^not judged: coupling is missing$/],
  ['locating-bearings', GUIDED, { coupling: 'disc', mounting: undefined }, /^not judged: mounting is missing$/],
  ['locating-bearings', GUIDED, { mounting: undefined }, /^the thrust bearing at the motor end$/],
  ['locating-bearings', GUIDED, STANDS, /^the thrust bearing at the motor end$/],
  ['locating-bearings', GUIDED, { thrust_bearing: 'no' }, /^none; nothing keeps it/],
  ['locating-bearings', LOCATED, {}, /^this holder$/],
  // a bearing that nobody tells of would be the second place
  ['locating-bearings', LOCATED, { thrust_bearing: undefined }, /^not judged: thrust_bearing is missing$/],
  [
    'locating-bearings',
    LOCATED,
    { thrust_bearing: undefined, limits: { 'locating-bearings': { min: 1, max: 2 } } },
    /^this holder$/,
  ],
  [
    'locating-bearings',
    LOCATED,
    { limits: { 'locating-bearings': { min: 2, max: 2 } } },
    /^this holder; the sheet wants another number$/,
  ],
  ['locating-bearings', LOCATED, { thrust_bearing: 'yes' }, /^this holder and the thrust bearing .*: keep one$/],
  ['locating-bearings', GUIDED, { ...STANDS, coupling: 'disc', thrust_bearing: 'no' }, /^the disc on .* only$/],
  // 8 − 7.88 = 0.12 mm of play at the least; root 5.35 mm: 3·207000·(π·5.35⁴/64)·0.34/(70²·500) = 3.47 N, 0.11 N at 400 mm
  ['screw-wobble', GUIDED, { runout: 0.4 }, /^run-out 0.4 mm, 3.5 N sideways on the nut .* travel; leave the end free/],
  ['screw-wobble', GUIDED, { runout: 0.4, nut_gap: 400 }, /^run-out 0.4 mm, 0.1 N sideways/],
  ['screw-wobble', GUIDED, { runout: 0.4, nut_gap: 500 }, /^run-out 0.4 mm; leave/],
  ['screw-wobble', GUIDED, { runout: 0.4, nut_gap: undefined }, /^run-out 0.4 mm; leave/],
  ['screw-wobble', GUIDED, { runout: 0.4, nut_gap: 0 }, /^run-out 0.4 mm; leave/],
  ['screw-wobble', GUIDED, { runout: 0.4, ...without('span') }, /^run-out 0.4 mm; leave/],
  ['screw-wobble', GUIDED, {}, /^run-out 0.04 mm, 0 N sideways on the nut at the end of its travel$/],
  ['screw-wobble', RING, {}, /^the end swings 0.04 mm to each side$/],
  ['screw-wobble', RING, { runout: 2 }, /^the end swings 2 mm to each side and may strike the ring/],
  // 3·7.85, 8·7.85
  ['nut-distance', GUIDED, {}, /^24 mm are wanted with play at nut or end$/],
  ['nut-distance', GUIDED, { nut_gap: 20 }, /^24 mm are wanted .*; the end of travel goes tight/],
  ['nut-distance', BUSH, CLOSE, /^63 mm are wanted with a screw that is led closely$/],
  ['nut-distance', BUSH, { ...CLOSE, nut_gap: 60 }, /^63 mm are wanted .*; the end of travel goes tight/],
  ['nut-distance', BUSH, { ...CLOSE, nut: undefined }, /^63 mm are wanted/],
  ['nut-distance', BUSH, { ...CLOSE, nut: 'floating' }, /^24 mm are wanted/],
  ['nut-distance', RING, { nut_gap: 5 }, /^5 mm are wanted before a guard ring$/],
  ['nut-distance', RING, { nut_gap: 4 }, /^5 mm are wanted before a guard ring; /],
  ['end-room', GUIDED, { end_room: undefined }, /^not judged: end_room is missing$/],
  ['end-room', GUIDED, without('span'), /^not judged: duty.span is missing$/],
  ['end-room', GUIDED, without('temperature'), /^not judged: duty.temperature is missing$/],
  ['end-room', GUIDED, { duty: { temperature: 10 } }, /^it grows by 0 mm$/],
  ['end-room', GUIDED, { duty: { temperature: 20 }, end_room: 0.5 }, /^it grows by 0 mm$/],
  ['end-room', GUIDED, { end_room: 0.4 }, /^it grows by 0.06 mm; shorten the end/],
  ['holding-needed', GUIDED, { mounting: undefined }, /^not judged: mounting is missing$/],
  ['holding-needed', GUIDED, without('span'), /^not judged: duty.span is missing$/],
  ['holding-needed', GUIDED, without('feed'), /^not judged: duty.feed is missing$/],
  ['holding-needed', GUIDED, without('load'), /^not judged: duty.load is missing$/],
  // 500/(40·7.85)
  ['holding-needed', GUIDED, {}, /^its sag asks most, 159 % of where an end is held$/],
  ['holding-needed', GUIDED, { duty: { span: 200 } }, /^its sag asks most, 64 % .*; a short stiff screw/],
  ['holding-needed', GUIDED, { ...STANDS, duty: { load: 1 } }, /^its speed asks most, /],
  ['holding-needed', GUIDED, { ...STANDS, duty: { load: 500 } }, /^its load asks most, \d+ % of where an end is held$/],
  ['holding-needed', RING, {}, /^its \w+ asks most, \d\d % of where an end is held$/],
  ['holding-needed', RING, { mounting: 'horizontal', duty: { span: 400 } }, / 127 % .*; hold it \(role: guiding\)$/],
  ['bearing-wall', GUIDED, {}, /^6.6 mm are usual around 22 mm$/],
  // π·22·3 mm²; under a plate of 6 mm the shoulder of 11 − 6.85 mm is thinner
  ['shoulder-shear', LOCATED, {}, /^3 mm under the edge of the outer ring/],
  ['shoulder-shear', LOCATED, { body: { cover: 6 } }, /^4.[12] mm under the edge/],
  ['shoulder-shear', LOCATED, { held_by: 'press' }, /^[4-9][.\d]* mm under the edge/],
  ['held-along', LOCATED, { held_by: 'press' }, /^a press fit in plastic lets go in time; hold the bearing by a plate/],
  ['held-along', LOCATED, { held_by: 'lip' }, /^a lip gives when it is pulled at; hold the bearing by a plate/],
  // 0.8 · 42/1300 of PA12
  ['lip-strain', LIPPED, {}, /^a lip that reaches in by 0.2 mm over 22 mm; pa12 springs back from 2.58 %$/],
  ['head-room', GUIDED, {}, /^washers of 9 mm$/],
  ['wall', GUIDED, {}, /^plate over the bearing: 3 mm, 6.7 lines$/],
];

describe('a check of an end holder', () => {
  it.each(SAID)('%s says what it is about (case %#)', (id, base, changes, words) => {
    expect(found(id, base, changes)?.message).toMatch(words);
  });

  it.each([
    ['pocket-fit', BUSH, {}],
    ['shoulder', BUSH, {}],
    ['press-hot', GUIDED, {}],
    ['end-room', LOCATED, {}],
    ['held-along', GUIDED, {}],
    ['bearing-wall', BUSH, {}],
    ['body-bending', GUIDED, {}],
    ['shoulder-bending', GUIDED, {}],
    ['shoulder-bending', LOCATED, { bearing: 'F608', held_by: 'press' }],
    ['shoulder-shear', GUIDED, {}],
    ['ring-pressure', GUIDED, {}],
    ['bolt-clamp', GUIDED, {}],
    ['head-room', GUIDED, WIDE_HOLES],
  ] as const)('%s is not asked where there is nothing of its kind (case %#)', (id, base, changes) => {
    expect(found(id, base, changes)).toBeUndefined();
  });

  // petg takes 0.4 % of 22 mm for good
  it.each([
    ['pocket-fit', PRESSED, {}, { min: 0, max: 0.088 }, { min: 0, max: 0.088 }],
    ['pocket-fit', GUIDED, {}, { min: -0.15, max: 0.088 }, { max: 0.088 }],
    ['screw-fit', GUIDED, {}, { min: 0, max: 0.35 }, { min: 0 }],
    ['screw-fit', BUSH, {}, { min: 0.1, max: 0.5 }, { min: 0 }],
    ['screw-fit', RING, {}, { min: 1, max: 4 }, { min: 0.5 }],
    ['screw-wobble', RING, {}, { max: 0 }, { max: 0 }],
    ['nut-distance', RING, {}, { min: 5 }, null],
    ['holding-needed', GUIDED, {}, { min: 1 }, null],
    ['holding-needed', RING, {}, { max: 1 }, { max: 1.666667 }],
  ] as const)('%s has the limits of its kind of holder (case %#)', (id, base, changes, pass, fail) => {
    const { limit, fail_limit } = found(id, base, changes)!;
    for (const [own, wanted] of [
      [limit, pass],
      [fail_limit, fail],
    ] as const) {
      expect(Object.keys(own ?? {})).toEqual(Object.keys(wanted ?? {}));
      for (const [bound, size] of Object.entries(wanted ?? {})) expect(own?.[bound as 'min']).toBeCloseTo(size, 5);
    }
  });

  it('counts a screw that nobody measured as thin as its class allows', () => {
    const rough = { screw: { designation: 'Tr8x2', major: undefined } };
    const { thinnest } = holder(GUIDED, rough).held;
    expect(thinnest!).toBeLessThan(8);
    expect(found('screw-fit', GUIDED, rough)!.most).toBeCloseTo(8 - thinnest!, 6);
  });

  it('presses a flanged bearing in by what of its ring sits in the bore, 7 − 1.5 mm', () => {
    const fit = { pocket: '21.94 ± 0.01 mm' };
    // from the bore to the nearest M4 hole √2·16 − 2.25 − 10.97 = 9.407 mm
    const { push } = pressFit({ interference: 0.06, diameter: 22, outside: 22 + 2 * 9.407, width: 5.5, modulus: 1850 });
    expect(Number(/pressed in by some (\d+) N/.exec(found('pocket-fit', FLANGED, { fit })!.message)![1])).toBe(
      Math.round(push),
    );
  });

  it('holds a bearing tighter where it is cold', () => {
    // steel and plastic shrink apart by 48 to 108e-6 · 20 K · 22 mm; PETG keeps 0.88·43,800^−0.0439 = 0.5505 for years
    const { least, most } = found('press-hot', PRESSED, { duty: { temperature: 0 }, fit: { pocket: '21.94 ± 0 mm' } })!;
    expect(least).toBeCloseTo(0.5505 * 0.051 + 0.02112, 4);
    expect(most).toBeCloseTo(0.5505 * 0.06 + 0.04752, 4);
  });

  it('lets a bearing lie loose where its nylon takes up room air', () => {
    const pressed = (material: string) =>
      found('press-hot', PRESSED, { material, duty: { temperature: 20 }, fit: { pocket: '21.9 ± 0 mm' } })!;
    // PA6 keeps 0.70·43,800^−0.064 = 0.353 of 0.1 mm, or of 9 µm less, and 22 mm grow by 0.9 %, half of it as likely: 0.198 mm
    const pa6 = pressed('pa6');
    expect(pa6.value).toBeCloseTo(0.0353 - 0.099, 3);
    expect(pa6.least).toBeCloseTo(0.353 * 0.091 - 0.198, 3);
    expect(pa6.most).toBeCloseTo(0.0353, 3);
    expect(pa6.word).toBe('no');
    expect(pa6.message).toMatch(
      /; room air opens the pocket by up to 0\.2 mm from dry, half of it taken as likely; a plate/,
    );
    // PA12 by 0.2 %, and it keeps 0.75·43,800^−0.0677 = 0.364
    expect(pressed('pa12').value).toBeCloseTo(0.0364 - 0.022, 3);
    expect(pressed('petg').message).not.toContain('room air');
  });

  it('needs an end that is held by speed and by load', () => {
    const { cut } = holder(GUIDED).screw.leastRoot;
    const standing = (duty: Tree) => found('holding-needed', GUIDED, { ...STANDS, duty })!.value;
    // 10 mm/s on a lead of 2 mm: 300/min, of 0.6 · 1.209e8 · 0.36 · dr/500²
    expect(standing({ load: 1 })).toBeCloseTo(300 / ((0.6 * 1.209e8 * 0.36 * cut) / 500 ** 2), 5);
    // half of Euler's load of a bar that is free at one end: π²·207000·I/(4·500²)
    const euler = (Math.PI ** 2 * 207_000 * ((Math.PI * cut ** 4) / 64)) / (4 * 500 ** 2);
    expect(standing({ load: 500 })! / (500 / (0.5 * euler))).toBeCloseTo(1, 5);
  });

  it('shears a ring under the bearing', () => {
    // 20 N over π·22·3 mm²
    expect(found('shoulder-shear', LOCATED)!.value).toBeCloseTo(20 / (Math.PI * 66), 5);
  });

  it('presses on what of the ring lies on plastic', () => {
    const pressure = (base: Base, changes: Tree = {}) => found('ring-pressure', base, changes)!.value!;
    const ring = (outside: number, inside: number) => (Math.PI / 4) * (outside ** 2 - inside ** 2);
    // chamfers of 0.3 mm leave 21.4 of 22 mm, over a shoulder of 18.5: 90.9 mm²
    expect(pressure(LOCATED)).toBeCloseTo(20 / ring(21.4, 18.5), 5);
    expect(pressure(LOCATED, { held_by: 'press' })).toBeCloseTo(20 / ring(21.4, 18.5), 5);
    // a flange of 25 mm on a bore of 22.03 mm with edges broken by 0.3 mm
    expect(pressure(FLANGED_LOCATED)).toBeCloseTo(20 / ring(25, 22.63), 5);
    // rings that are rounded by 3 mm: the plate over the flange bears less than the body under it
    const rounded = { bearing: { designation: 'F608', chamfer: 3 } };
    const { bore } = holder(FLANGED_LOCATED, rounded).finished.cover!;
    expect(pressure(FLANGED_LOCATED, rounded)).toBeCloseTo(20 / ring(25 - 6, bore), 5);
    expect(found('ring-pressure', LOCATED)!.message).toMatch(/^91 mm² of ring lie on plastic; /);
    expect(found('ring-pressure', FLANGED_LOCATED)!.message).toMatch(/^89 mm² of flange lie on plastic; /);
  });

  it('strains no ring by a lip that comes out too wide to reach in', () => {
    // 0.05 mm over 22 mm: 0.4545 %
    const strain = found('lip-strain', LIPPED, { fit: { lip: 0.05 } })!;
    expect(strain.value).toBeCloseTo((100 * 2 * 0.05) / 22, 5);
    expect(strain.least).toBe(0);
  });

  it('carries a screw that does not lie: 22 N of load on 500 mm of 7.85 mm steel, 1.863 N', () => {
    const stands = (duty: Tree) => found('shoulder-shear', LOCATED, { mounting: 'motor-below', duty })!.value;
    expect(stands({ load: 22 })).toBeCloseTo(23.863 / (Math.PI * 66), 4);
    // of a screw whose length nobody tells 125 diameters, 981 mm
    expect(stands({ load: 22, span: undefined })).toBeCloseTo((22 + 1.863 * (981.25 / 500)) / (Math.PI * 66), 4);
  });

  it('stands a crash of twice the stall force, 79.7 N by 20 N·mm on Tr8x2, for a moment', () => {
    const motor = { motor: { torque: '0.02 N m' } };
    const crash = (changes: Tree = {}) => found('end-stop', LOCATED, changed({ duty: motor }, changes))!;
    // PETG at 30 °C bears 0.5 · 44 · (40/47)^0.75 in tension; the plate bends as it does under 20 N
    const bends = found('body-bending', LOCATED)!.value! / 20;
    expect(crash().value! / ((79.71 * bends) / (22 * (40 / 47) ** 0.75))).toBeCloseTo(1, 3);
    expect(crash().message).toMatch(/gives up to 80 N, twice its stall force, which the plate can bear$/);
    // weak in shear: half of 1 MPa on π·22·3 mm²
    const weak = crash({ material: { preset: 'petg', shear: '0.1 MPa' } });
    expect(weak.value! / (79.71 / (Math.PI * 66) / (0.05 * (40 / 47) ** 0.75))).toBeCloseTo(1, 3);
    expect(weak.message).toMatch(/the edge around its bearing may break at/);
    expect(findingOf(changed(GUIDED, { duty: motor }), 'end-stop')).toBeUndefined();
    // a flanged bearing, pressed in, has no shoulder: half of it turns 22.06 × 6 mm of body over 16 − 21.94/π mm
    const flanged = findingOf(changed(FLANGED_LOCATED, { held_by: 'press', duty: motor }), 'end-stop')!;
    const body = (0.5 * (16 - 21.94 / Math.PI)) / ((22.06 * 6 ** 2) / 6);
    expect(flanged.value! / ((79.71 * body) / (22 * (40 / 47) ** 0.75))).toBeCloseTo(1, 3);
  });

  it('keeps washers off the middle, and off the nearest edge', () => {
    const wide = { body: { length: 60, width: 60 } };
    const near = { ...wide, holes: { rectangle: [20, 20] } };
    const { bore, chamfer } = holder(BUSH, near).finished;
    // M4 washers of 9 mm, 14.142 mm from the middle
    expect(found('head-room', BUSH, near)!.value).toBeCloseTo(Math.hypot(10, 10) - bore / 2 - chamfer - 4.5, 5);
    const uneven = {
      ...wide,
      holes: {
        rectangle: undefined,
        at: [
          [24, 0],
          [-20, 0],
        ],
      },
    };
    expect(found('head-room', BUSH, uneven)!.value).toBeCloseTo(30 - 24 - 4.5, 5);
  });
});

describe('bending of a located holder', () => {
  const bending = (changes: Tree = {}) => found('body-bending', LOCATED, changes)!;
  // the load comes in around an opening; half of a ring has its middle 2·r/π from the axis
  const middleOf = (opening: number) => opening / Math.PI;
  // two of four bolts at 16 mm, half of the load, turn the plate against half of a ring of 18.5 mm, on 44 × 3 mm at most
  const least = (load: number, thickness: number) => (0.5 * load * (16 - middleOf(18.5))) / ((44 * thickness ** 2) / 6);

  it.each([2, 3, 4])('counts the plate of %d mm over the bearing, no kinder than on its whole width', (cover) => {
    const { value, message } = bending({ body: { cover }, duty: { load: 80 } });
    expect(message).toMatch(/mm² of the plate bend at/);
    expect(value).toBeGreaterThan(least(80, cover));
    expect(value).toBeLessThan(6 * least(80, cover));
  });

  it('is that of the section in the middle, its openings and holes counted', () => {
    // half of 20 N turns 25.5 × 3 mm, 44 less an opening of 18.5, over 16 − 18.5/π mm
    expect(bending().value).toBeCloseTo((10 * (16 - middleOf(18.5))) / ((25.5 * 3 ** 2) / 6), 5);
    expect(bending().message).toMatch(/^77 mm² of the plate bend at 0 mm from the axis; /);

    // a pressed bearing and two bolts: 21.5 mm of body up to its floor at 4 mm, above that less a pocket that opens to
    // 21.94 + 2·0.8·tan 30°, 17.136 mm, up to 11 mm; 10 N over 30 − 18.5/π mm
    const above = 40 - 21.94 - 1.6 * Math.tan(Math.PI / 6);
    const [low, high] = [21.5 * 4, above * 7];
    const middle = (low * 2 + high * 7.5) / (low + high);
    const inertia = (21.5 * 4 ** 3 + above * 7 ** 3) / 12 + low * (middle - 2) ** 2 + high * (7.5 - middle) ** 2;
    const two = {
      rectangle: undefined,
      at: [
        [30, 0],
        [-30, 0],
      ],
    };
    const pressed = bending({ held_by: 'press', body: { length: 80, width: 40 }, holes: two });
    expect(pressed.value).toBeCloseTo((10 * (30 - middleOf(18.5))) / (inertia / Math.max(middle, 11 - middle)), 5);
    expect(pressed.message).toMatch(/^206 mm² of the body bend at 0 mm from the axis; /);

    // a flanged one, pressed in: 44 mm less the bore of 21.94, 6 mm of body; half of 20 N over 16 − 21.94/π mm
    const flanged = found('body-bending', FLANGED_LOCATED, { held_by: 'press' })!;
    expect(flanged.value).toBeCloseTo((10 * (16 - middleOf(21.94))) / (((44 - 21.94) * 6 ** 2) / 6), 5);
    expect(flanged.message).toMatch(/^132 mm² of the body bend/);
  });

  it('tips about its edge on bolts in a line beside the screw', () => {
    const at = [
      [30, 12],
      [30, -12],
    ];
    const beside = { body: { length: 80, width: 70, cover: 3 }, holes: { rectangle: undefined, at, screw: 'M4' } };
    // 20 N at 30 mm, spread from the opening of 18.5 mm to 60 mm, less two holes of 4.5, 3 mm thick
    expect(bending(beside)).toMatchObject({
      value: expect.closeTo((20 * 30) / ((51 * 3 ** 2) / 6), 5),
      message: expect.stringMatching(/^153 mm² of the plate bend at 30 mm from the axis/),
    });
    // 40/(40 − 30) times half of it on each
    expect(found('bolt-clamp', LOCATED, beside)!.message).toMatch(
      /2 of them, 30 mm beside the load, which pries up to 2 times itself on each, against/,
    );
  });

  it('fails by a thin plate where the body would carry', () => {
    const thin = bending({ body: { cover: 2 }, duty: { load: 80 } });
    expect(thin.verdict).toBe('fail');
    expect(thin.message).toMatch(/make the plate thicker \(body\.cover\)/);
    expect(bending({ body: { cover: 14 }, duty: { load: 80 } })).toMatchObject({
      verdict: 'pass',
      message: expect.stringMatching(/of the body bend/),
    });
  });
});

describe('the shoulder of a located holder', () => {
  /**
   * By hand: seat from the opening's edge to the ring's chamfer, a from its middle to the wall, τ = F/(2π·R·t), σb = 6·τ·a/t,
   * σ = 2·√(σb² + 3·τ²)
   */
  const byHand = ({ wall, seat, thickness }: { wall: number; seat: readonly [number, number]; thickness: number }) => {
    const arm = wall - (seat[0] + seat[1]) / 2;
    const shear = 20 / (2 * Math.PI * wall * thickness);
    return 2 * Math.sqrt(((6 * shear * arm) / thickness) ** 2 + 3 * shear ** 2);
  };

  // pockets of 22.03, 16.03 and 47.03 mm, 0.15 mm shallower than 7, 5 and 14 mm; a flange of 25 mm in 25.4, 1.35 mm deep
  it.each([
    [{}, { wall: 11.015, seat: [9.25, 10.7], thickness: 4.15 }],
    [{ body: { thickness: 8 } }, { wall: 11.015, seat: [9.25, 10.7], thickness: 1.15 }],
    [
      { fit: { shoulder: 13 }, body: { thickness: 9 } },
      { wall: 11.015, seat: [6.5, 10.7], thickness: 2.15 },
    ],
    [
      { bearing: 625, body: { thickness: 6.5 } },
      { wall: 8.015, seat: [6.625, 7.7], thickness: 1.65 },
    ],
    [
      { bearing: 6204, body: { thickness: 17 }, holes: { rectangle: [60, 60] } },
      { wall: 23.515, seat: [20.125, 22.5], thickness: 3.15 },
    ],
    [
      { bearing: 'F608', body: { thickness: 7.5 } },
      { wall: 12.7, seat: [11.315, 12.5], thickness: 6.15 },
    ],
    // behind a lip the wall is that of the groove around its ring: 11.015 + 1.8 + 1.2, the pocket 8.1 mm deep or so
    [
      { held_by: 'lip', fit: { lip: 0.2 }, body: { thickness: 12 } },
      { wall: 14.015, seat: [9.25, 10.7], thickness: NaN },
    ],
  ] as const)('bends as the hand calculation of a ledge has it: %j', (changes, hand) => {
    const thickness = Number.isNaN(hand.thickness)
      ? 12 - holder(LOCATED, changes).finished.pocket!.depth
      : hand.thickness;
    expect(found('shoulder-bending', LOCATED, changes)!.value).toBeCloseTo(byHand({ ...hand, thickness }), 3);
  });

  it('fails where it is thin, and a thicker body cures it', () => {
    const thin = { body: { thickness: 8, cover: 8 }, duty: { load: 60 } };
    const row = found('shoulder-bending', LOCATED, thin)!;
    expect(row.verdict).toBe('fail');
    expect(row.message).toMatch(
      /^the outer ring presses 1 mm from the pocket's wall, on 1\.[12]\d* mm of plastic with a sharp/,
    );
    expect(row.message).toMatch(/; make the body thicker behind the bearing$/);
    expect(found('shoulder-shear', LOCATED, thin)!.verdict).toBe('pass');
    expect(found('body-bending', LOCATED, thin)!.verdict).toBe('pass');
    expect(found('shoulder-bending', LOCATED, changed(thin, { body: { thickness: 10 } }))!.verdict).toBe('pass');
  });

  it('stands a crash with the rest: under a thick plate the thin shoulder is the weakest', () => {
    const crash = { body: { thickness: 8, cover: 10 }, duty: { motor: { torque: '0.02 N m' } } };
    const row = found('end-stop', LOCATED, crash)!;
    const [wall, thickness] = [11.015, 1.15];
    const stress = (79.71 / 20) * byHand({ wall, seat: [9.25, 10.7], thickness });
    // PETG at 30 °C bears 0.5 · 44 · (40/47)^0.75 for a moment
    expect(row.value! / (stress / (22 * (40 / 47) ** 0.75))).toBeCloseTo(1, 2);
  });
});
