import { describe, expect, it } from 'vitest';
import type { EndHolderDesign } from '../../../src/parts/end-holder/dimensions.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import { InputError } from '../../../src/units/faults.js';
import {
  BUSH,
  END_HOLDERS,
  FLANGED,
  FLANGED_LOCATED,
  GUIDED,
  LIPPED,
  LOCATED,
  PRESSED,
  RING,
} from '../../support/end-holder-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { sharedKernel } from '../../support/shared-kernel.js';

type Tree = { readonly [key: string]: unknown };
const rowOf = (sheet: Tree, id: string) => check(design(sheet)).checks.find((row) => row.id === id)!;
const sizesOf = (sheet: Tree) => design(sheet).dimensions.finished as Readonly<Record<string, number>>;

describe('an end holder', () => {
  it.each([...Object.entries(END_HOLDERS), ['start sheet', startSheet('end-holder')]] as const)(
    'of the kind %s comes out closed, sized right and mating',
    async (_, sheet) => {
      const { report } = await makePart(sheet, { kernel: sharedKernel });
      const solid = report.checks.filter(({ id }) => id.startsWith('solid-'));
      expect(solid.length).toBeGreaterThan(3);
      expect(solid.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
      for (const { closed } of report.bodies) expect(closed).toBe(true);
    },
  );

  // common practice: bush 0.15 to 0.30 over the largest outside, 1.0 to 1.5 diameters long; guard ring 1.0 to 2.0 wider
  it('gives a bush and a ring their usual room', () => {
    const bush = sizesOf(BUSH);
    expect(bush.bore! - 7.88).toBeGreaterThanOrEqual(0.15);
    expect(bush.bore! - 7.88).toBeLessThanOrEqual(0.3);
    expect(bush.thickness! / 7.85).toBeGreaterThanOrEqual(1);
    expect(bush.thickness! / 7.85).toBeLessThanOrEqual(1.5);
    const ring = sizesOf(RING);
    expect(ring.bore! - 7.88).toBeGreaterThanOrEqual(1);
    expect(ring.bore! - 7.88).toBeLessThanOrEqual(2);
  });

  // common practice: pocket shallower than the bearing by 0.1 to 0.2 under a plate; pocket of a press fit 0.03 to 0.08
  // under an outside of 14 to 26; wall max(2, 0.3·D) = 6.6 for 22
  it('gives a bearing its usual pocket', () => {
    const guided = sizesOf(GUIDED);
    expect(7 - guided.pocket_depth!).toBeGreaterThanOrEqual(0.1);
    expect(7 - guided.pocket_depth!).toBeLessThanOrEqual(0.2);
    const pressed = sizesOf(PRESSED);
    expect(22 - pressed.pocket_diameter!).toBeGreaterThanOrEqual(0.03);
    expect(22 - pressed.pocket_diameter!).toBeLessThanOrEqual(0.08);
    expect(rowOf(GUIDED, 'bearing-wall').limit).toEqual({ min: 6.6 });
    expect(rowOf(GUIDED, 'bearing-wall').fail_limit!.min).toBeCloseTo(4.4, 9);
  });

  // common practice: bored straight through, at least B − flange + 0.2 deep; a recess of 0.4 on the diameter under a plate
  it('bores straight through for a flanged bearing', () => {
    const flanged = sizesOf(FLANGED);
    expect(flanged.pocket_diameter).toBeUndefined();
    expect(flanged.bore).toBeCloseTo(sizesOf(PRESSED).pocket_diameter!, 9);
    expect(flanged.thickness).toBeGreaterThanOrEqual(7 - 1.5 + 0.2);
    const plated = sizesOf(FLANGED_LOCATED);
    expect(plated.pocket_diameter).toBeCloseTo(25.4, 9);
    expect(1.5 - plated.pocket_depth!).toBeCloseTo(0.15, 9);
    expect(rowOf(FLANGED, 'shoulder')).toBeUndefined();
    expect(rowOf(changed(FLANGED, { role: 'locating' }), 'held-along').verdict).toBe('fail');
  });

  // a pocket 0.1 to 0.2 deeper than the bearing under its lip; 0.8/22 is 3.6 %, too much for a closed ring
  it('snaps a bearing in past a lip', () => {
    const { pocket_diameter, lip_diameter, ring_diameter, groove_diameter } = sizesOf(LIPPED);
    expect(lip_diameter).toBeCloseTo(22 - 2 * 0.2, 9);
    expect((ring_diameter! - pocket_diameter!) / 2).toBeGreaterThan(1.2);
    expect(groove_diameter! - ring_diameter!).toBeGreaterThan(2 * 0.4);
    const wide = changed(LIPPED, { fit: { lip: 0.4 } });
    expect(rowOf(wide, 'lip-strain').value).toBeCloseTo(3.636, 3);
    expect(rowOf(wide, 'lip-strain').verdict).toBe('fail');
  });

  it.each([
    [{ bearing: 'F608', held_by: 'lip' }, 'held_by'],
    [{ bearing: 'F608', fit: { shoulder: 18 } }, 'fit.shoulder'],
    [{ bearing: 'F6000' }, 'bearing.flange.outside'],
    [{ bearing: { designation: '608', flange: { outside: 22.5, thickness: 1 } } }, 'bearing.flange.outside'],
    [{ bearing: { designation: '608', flange: { outside: 25, thickness: 6.5 } } }, 'bearing.flange.thickness'],
    [{ fit: { lip: 0.2 } }, 'fit.lip'],
    [{ held_by: 'lip', fit: { lip: 3 } }, 'fit.lip'],
  ])('refuses %j at %s', (changes, path) => {
    expect(() => design(changed(GUIDED, changes))).toThrow(
      expect.objectContaining({ faults: [expect.objectContaining({ path })] }),
    );
  });

  it('does not show a size that is not there', () => {
    expect(() => design(changed(GUIDED, { bearing: { designation: '688', bore: undefined } }))).toThrow(
      /bearing\.width: is missing/,
    );
  });

  // axial growth of steel: 12e-6 · 500 · (50 − 20) = 0.18 mm
  it('takes the growth of the screw off the room at its end', () => {
    expect(rowOf(changed(GUIDED, { duty: { temperature: 50 } }), 'end-room').value).toBeCloseTo(3 - 0.18, 9);
  });

  // 400 mm of steel, 30 K warmer: 11.5e-6 · 400 · 30 = 0.138 mm; a float of 0.5 mm is enough, and no less is left than by hand
  it('finds half a millimetre of float enough for 400 mm of screw', () => {
    const row = rowOf(changed(GUIDED, { end_room: 0.5 + 0.138, duty: { span: 400, temperature: 50 } }), 'end-room');
    expect(row.value).toBeGreaterThan(0.48);
    expect(row.value).toBeLessThanOrEqual(0.5);
  });

  // 22 + 0.15 of hole offset − 0.05 of interference = 22.10 in the file
  it('prints a pocket wider by the offset and narrower by the fit', () => {
    const pressed = changed(PRESSED, {
      fit: { pocket: undefined, interference: 0.05 },
      material: { preset: 'petg', shrink: { plane: '0 %', axial: '0 %' } },
      printer: { hole_offset: 0.15, compensation: 'file' },
    });
    const { finished, printed } = design(pressed).dimensions as Record<string, Record<string, number>>;
    expect(finished!.pocket_diameter).toBeCloseTo(21.95, 9);
    expect(printed!.pocket_diameter).toBeCloseTo(22.1, 6);
    expect(rowOf(pressed, 'pocket-fit').value).toBeCloseTo(0.05, 9);
  });

  // a bearing at 80 °C in a plastic of 60 to 120e-6: at most 108e-6 · 60 · 22 = 0.1426 mm lost, likely 78e-6: 0.1030
  // Lamé by hand: the plastic around it counts as far as the nearest hole, E of PETG 1850 MPa
  it('says how hard it is pressed in, where it is pressed', () => {
    const told = (changes: Tree) => rowOf(changed(PRESSED, changes), 'pocket-fit').message;
    const { holes, length } = (design(PRESSED) as EndHolderDesign).finished;
    const outside = Math.min(length, 2 * (Math.SQRT2 * 16 - holes.diameter / 2));
    const k = (outside ** 2 + 21.95 ** 2) / (outside ** 2 - 21.95 ** 2);
    const push = ((0.25 * 0.05 * 1850) / (22 * (k + 0.38))) * Math.PI * 22 * 7;
    const said = Number(/pressed in by some (\d+) N/.exec(told({ fit: { pocket: '21.95 ± 0.01 mm' } }))![1]);
    expect(Math.abs(said / push - 1)).toBeLessThan(0.01);
    expect(told({ fit: { pocket: '22.02 ± 0.01 mm' } })).not.toContain('pressed in');
    expect(told({ held_by: 'plate' })).not.toContain('pressed in');
  });

  it('lets a press fit go where it is hot', () => {
    const hot = changed(PRESSED, { duty: { temperature: 80 }, fit: { pocket: '21.94 ± 0 mm' } });
    const row = rowOf(hot, 'press-hot');
    // PETG is soft at 70 °C, and springs back by nothing
    expect(row.value).toBeCloseTo(-0.10296, 4);
    expect(row.least).toBeCloseTo(-0.14256, 4);
    // at 40 °C years leave 0.88·43,800^(−0.0439·47/30) = 0.422 of it; 22 mm may be 9 µm short
    const warm = rowOf(changed(hot, { duty: { temperature: 40 } }), 'press-hot');
    expect(warm.value).toBeCloseTo(0.422 * 0.06 - 78e-6 * 20 * 22, 4);
    expect(warm.least).toBeCloseTo(0.422 * 0.051 - 108e-6 * 20 * 22, 4);
    expect(warm.message).toMatch(/^of 0\.06 mm years leave 42 %, and 40 °C -0\.009 mm/);
    expect(rowOf(changed(hot, { held_by: 'plate' }), 'press-hot')).toBeUndefined();
  });

  it.each([
    [{ coupling: 'flexible', thrust_bearing: 'no' }, 0],
    [{ coupling: 'flexible', thrust_bearing: 'yes' }, 1],
    [{ coupling: 'rigid', thrust_bearing: 'yes' }, 1],
    [{ coupling: 'disc', thrust_bearing: 'no', mounting: 'motor-below' }, 1],
    // a disc holds nothing that hangs from the motor
    [{ coupling: 'disc', thrust_bearing: 'no', mounting: 'motor-above' }, 0],
    [{ role: 'locating', coupling: 'disc', thrust_bearing: 'no', mounting: 'motor-below' }, 2],
    [{ role: 'locating', coupling: 'rigid', thrust_bearing: 'no' }, 2],
  ])('counts what carries the screw along its axis: %j', (changes, count) => {
    expect(rowOf(changed(GUIDED, changes), 'locating-bearings').value).toBe(count);
  });

  it('asks in its first sentence for the load that it carries, which its body may not bear', () => {
    const { sentence, first } = check(
      design(changed(LOCATED, { mounting: 'motor-below', duty: { load: undefined, axis: 'vertical' } })),
    );
    expect(sentence).toMatch(/ if duty\.load allows it|if duty\.load and .* allow it/);
    expect(first[0]).toMatchObject({ word: 'not-told', field: 'duty.load' });
  });

  // rigid nut, rigid coupling and a tight holder are two supports too many
  it('counts supports that are too many', () => {
    const tight = changed(BUSH, { bore: 7.95, coupling: 'rigid' });
    expect(rowOf(tight, 'over-constraint').value).toBe(2);
    expect(rowOf(changed(tight, { nut: 'floating' }), 'over-constraint').value).toBe(1);
    expect(rowOf(changed(tight, { nut: 'floating', coupling: 'flexible' }), 'over-constraint').value).toBe(0);
  });

  it('reads inches', () => {
    const inches = changed(GUIDED, { holes: { rectangle: ['1.26 in', '1.26 in'] }, nut_gap: '2 3/4 in' });
    expect(rowOf(inches, 'nut-distance').value).toBeCloseTo(69.85, 9);
  });

  it('lists bearing, bolts, washers and nuts by length', () => {
    const words = check(design(LOCATED)).hardware.map(({ item, size, count }) => `${count} ${item} ${size}`);
    expect(words[0]).toBe('1 deep-groove ball bearing 608 (8 × 22 × 7)');
    // 11 body + 3 plate + 5 frame + 2 × 0.8 washers + 3.2 nut + 1.05 = 24.85
    expect(words).toContain('4 socket cap screw ISO 4762 M4x25');
  });

  it.each([
    [{ ...GUIDED, bearing: 688 }, 'bearing.width'],
    [{ ...GUIDED, bearing: 999 }, 'bearing.designation'],
    [{ ...GUIDED, bearing: { designation: 608, outside: 24 } }, 'bearing.outside'],
    [{ ...GUIDED, bearing: { bore: 8, width: 7 } }, 'bearing.outside'],
    [{ ...GUIDED, bearing: { bore: 22, outside: 8, width: 7 } }, 'bearing.bore'],
    [{ ...GUIDED, bore: 8.2 }, 'bore'],
    [{ ...RING, bearing: 608 }, 'bearing'],
    [{ ...LOCATED, bearing: undefined, held_by: undefined }, 'bearing'],
    [{ ...BUSH, bore: 7 }, 'bore'],
    [{ ...BUSH, held_by: 'press' }, 'held_by'],
    [{ ...PRESSED, body: { cover: 3 } }, 'body.cover'],
    [{ ...GUIDED, body: { thickness: 5 } }, 'body.thickness'],
    [{ ...GUIDED, body: { length: 20 } }, 'body.length'],
    [{ ...GUIDED, body: { length: 34 } }, 'body'],
    [{ ...GUIDED, holes: { rectangle: [16, 16], screw: 'M4' } }, 'holes'],
    [{ ...GUIDED, fit: { shoulder: 22 } }, 'fit.shoulder'],
  ])('refuses %j at its field', (sheet, path) => {
    try {
      design(sheet);
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      expect((error as InputError).faults.map((fault) => fault.path)).toContain(path);
      return;
    }
    throw new Error('no fault was found');
  });
});
