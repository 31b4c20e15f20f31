import { describe, expect, it } from 'vitest';
import { floorStress } from '../../../src/parts/common/pocket-floor.js';
import { LOADED } from '../../support/motor-plate-sheets.js';
import { changed, STRONG_NUT as SOUND_NUT } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';
import { PLAIN } from '../adapter/verdict-cases.js';

type Tree = Record<string, unknown>;
const found = (sheet: object, changes: Tree = {}) => findingOf(changed(sheet as Tree, changes), 'floor-bending');

/**
 * By hand: one screw's share on the floor, a from the pocket's wall to the middle of what lies on it, τ = F/(π·D·t), σb = 6·τ·a/t,
 * σ = 2·√(σb² + 3·τ²)
 */
function byHand(
  force: number,
  { pocket, seat, hole, floor }: Readonly<Record<'pocket' | 'seat' | 'hole' | 'floor', number>>,
) {
  const arm = pocket / 2 - (seat + hole) / 4;
  const shear = force / (Math.PI * pocket * floor);
  return 2 * Math.sqrt(((6 * shear * arm) / floor) ** 2 + 3 * shear ** 2);
}

// M3 by ISO 4762 and 4032: head 5.5 × 3, over its knurls 5.68, room 0.5; nut 5.5 across flats, room 0.2
const HEAD = { pocket: 6.18, seat: 5.5, hole: 3.4 };

describe('the floor of pockets', () => {
  it.each([
    [4, 1],
    [5, 2],
    [8, 5],
  ])('of an adapter of %d mm bears a quarter of the load under each head', (thickness, floor) => {
    const sunk = { carriage: { joint: 'counterbore' }, plate: { thickness }, duty: { load: 20, pull: 'away' } };
    const row = found(PLAIN, sunk)!;
    expect(row.value).toBeCloseTo(byHand(5, { ...HEAD, floor }), 4);
    expect(row.message).toMatch(
      new RegExp(`^${floor} mm under a head in its pocket, whose corner is sharp; under 20 N`),
    );
    expect(row).toMatchObject({ grave: true, verdict: 'pass' });
  });

  it('of an adapter is pulled on by what its screws carry, the nut’s by the other way where its flange lies on the carriage', () => {
    const sunk = { carriage: { joint: 'counterbore' } };
    const onto = { duty: { load: 20, pull: 'onto' } };
    expect(found(PLAIN, { ...sunk, ...onto })).toBeUndefined();
    // both patterns sunk, the worse of them: a nut of 5.5 in 5.7 mm, a hole of 3.5 mm
    const trapped = { nut: { joint: 'hexagon' }, carriage: { joint: 'through' }, plate: { thickness: 9 } };
    const away = found(PLAIN, { ...trapped, duty: { load: 20, pull: 'away' } })!;
    const floor = Number(/^([\d.]+) mm under a nut/.exec(away.message)![1]);
    expect(away.value).toBeCloseTo(byHand(5, { pocket: 5.7, seat: 5.5, hole: 3.5, floor }), 2);
    expect(found(PLAIN, { ...trapped, ...onto })).toBeUndefined();
    const under = { ...trapped, nut: { joint: 'hexagon', seat: 'carriage' }, carriage: { joint: 'through', bore: 30 } };
    expect(found(PLAIN, { ...under, ...onto })?.value).toBeGreaterThan(0);
    expect(found(PLAIN, { ...under, duty: { load: 20, pull: 'away' } })).toBeUndefined();
    expect(found(PLAIN)).toBeUndefined();
  });

  it('of a nut’s flange bears what stands and what a stalled motor pulls', () => {
    // a nut that nobody drives is no warmer than its air
    const sunk = {
      holes: { joint: 'counterbore', fit: 'medium' },
      flange: { thickness: 6 },
      duty: { feed: undefined },
    };
    const still = { ...sunk, duty: { motor: undefined, pull: 'away' } };
    expect(found(SOUND_NUT, still)!.value).toBeCloseTo(byHand(7.5, { ...HEAD, floor: 3 }), 4);
    // 651 N by the motor; PA12 at 30 °C bears 0.5 · 42 · e^(−7/85)
    const stalled = found(SOUND_NUT, sunk)!;
    expect(stalled.value! / byHand(651 / 4, { ...HEAD, floor: 3 })).toBeCloseTo(1, 2);
    expect(stalled.limit!.max).toBeCloseTo(21 * Math.exp(-7 / 85), 3);
    expect(found(SOUND_NUT, { ...sunk, flange: { thickness: 4.5 } })!.message).toMatch(
      /; take less motor current, leave more plastic under the pocket, or set the heads on the face$/,
    );
    expect(found(SOUND_NUT)).toBeUndefined();
  });

  it('is that of the weaker pattern, and of the screw that bears most', () => {
    const sunk = (nut: string, carriage: string, more: Tree = {}) =>
      found(PLAIN, {
        nut: { joint: nut },
        carriage: { joint: carriage, ...more },
        plate: { thickness: 9 },
        duty: { load: 20, pull: 'away' },
      })!;
    const [both, nut, carriage] = [
      sunk('hexagon', 'counterbore'),
      sunk('hexagon', 'through'),
      sunk('tapped', 'counterbore'),
    ];
    expect(nut.value).toBeGreaterThan(carriage.value!);
    expect(both.value).toBe(nut.value);
    expect(both.message).toContain('under a nut');
    // the other way round where the carriage's screws stand aside: of two, 20 and 12 mm off, the nearer bears 20/32
    const aside = {
      at: [
        [-12, 0],
        [20, 0],
      ],
      screw: 'M3',
      diameter: 3.4,
    };
    const worse = { holes: { count: undefined, circle: undefined, ...aside }, offset: [0, 0] };
    const { value, message } = sunk('hexagon', 'counterbore', worse);
    expect(message).toContain('under a head');
    expect(value).toBeCloseTo(byHand(12.5, { ...HEAD, floor: 6 }), 4);
  });

  it('is without bound where there is none', () => {
    const none = {
      hole: { joint: 'counterbore', screw: 'M3', diameter: 3.4 },
      centres: [[9, 0]],
      pocket: { kind: 'round', diameter: 6.18, depth: 3 },
    } as const;
    for (const floor of [0, -1]) expect(floorStress({ ...none, floor })).toBe(Infinity);
    expect(floorStress({ ...none, floor: 1 })).toBeCloseTo(byHand(1, { ...HEAD, floor: 1 }), 6);
  });

  it('asks for no load where nothing is sunk', () => {
    expect(found(PLAIN, { duty: { load: undefined } })).toBeUndefined();
    expect(found(PLAIN, { carriage: { joint: 'counterbore' }, duty: { load: undefined } })!.word).toBe('not-told');
  });

  it('of a motor plate bears the motor’s screws', () => {
    const sunk = { motor_heads: 'sunk', plate: { thickness: 5 }, mounting: 'horizontal', motor: { weight: 0.001 } };
    // 20 N of load; a motor that weighs next to nothing
    expect(found(LOADED, sunk)!.value).toBeCloseTo(byHand(5, { ...HEAD, floor: 2 }), 2);
    expect(found(LOADED, { ...sunk, motor: { weight: undefined } })!.message).toMatch(/motor\.weight/);
    expect(found(LOADED)).toBeUndefined();
  });

  it('is not asked where a pocket goes through: that is told elsewhere', () => {
    const through = { carriage: { joint: 'counterbore' }, plate: { thickness: 3 } };
    expect(found(PLAIN, through)).toBeUndefined();
    expect(findingOf(changed(PLAIN, through), 'pocket-floor')!.verdict).toBe('fail');
  });

  it('stands a crash with the rest of its part: twice the stall force', () => {
    const crash = (sheet: object, changes: Tree) => findingOf(changed(sheet as Tree, changes), 'end-stop')!;
    const nut = crash(SOUND_NUT, {
      holes: { joint: 'counterbore', fit: 'medium' },
      flange: { thickness: 4 },
      duty: { feed: undefined },
    });
    expect(nut.value! / (byHand(651 / 2, { ...HEAD, floor: 1 }) / (21 * Math.exp(-7 / 85)))).toBeCloseTo(1, 2);
    expect(nut.message).toContain('the floor of its pockets may break at');
    // 797 N stalled by 400 N·mm on Tr8x2; PETG at 25 °C bears 0.5 · 44 · (45/47)^0.75
    const stalled = { screw: 'Tr8x2', duty: { motor: { torque: '0.4 N m' } } };
    const plate = crash(PLAIN, { ...stalled, carriage: { joint: 'counterbore' }, plate: { thickness: 4 } });
    expect(plate.value! / (byHand(797 / 2, { ...HEAD, floor: 1 }) / (22 * (45 / 47) ** 0.75))).toBeCloseTo(1, 2);
    expect(plate.message).toContain('the floor of its pockets may break at');
  });
});
