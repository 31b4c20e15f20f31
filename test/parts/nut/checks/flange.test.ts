import { describe, expect, it } from 'vitest';
import { rootNotch } from '../../../../src/mechanics/strength/notch.js';
import type { NutDesign } from '../../../../src/parts/nut/dimensions.js';
import { bendFlange } from '../../../../src/parts/nut/flange-bending.js';
import { design } from '../../../../src/pipeline/design.js';
import { FAMILY_BASE, METAL } from '../../../support/family-sheet.js';
import { changed, nutSheet } from '../../../support/nut-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

/** Two ears of 46 × 14.5 × 3.6 mm on a body of 14 mm, two M4 on 32 mm, PETG at 23 °C, a motor of 0.4 N·m on Tr8x2. */
const NARROW = {
  part: 'nut',
  name: 'narrow',
  screw: 'Tr8x2',
  body: { diameter: 14, length: 15 },
  flange: { shape: 'rectangular', size: [46, 14.5], thickness: 3.6 },
  holes: { count: 2, circle: 32, screw: 'M4', head: 'flange' },
  fillet: 0,
  carriage: { bore: '14.4 ± 0 mm' },
  material: 'petg',
  printer: { compensation: 'file' },
  duty: { axis: 'horizontal', load: 5, temperature: 23, pull: 'onto', motor: { torque: '0.4 N m' } },
};
const crash = (changes: Record<string, unknown> = {}) => findingOf({ ...NARROW, ...changes }, 'end-stop')!;

describe('a crash at the end of travel, by hand', () => {
  // 797 N of stall at friction 0.05, twice that; PETG bears half of 44 MPa for a moment
  const force = 2 * 797;

  it('bends a flange the way that is worse: off its carriage 9 mm of arm, where the edge of the bore leaves 0.2', () => {
    const row = crash({ material: { preset: 'petg', tensile_across: '500 MPa' } });
    expect(row.value! / ((force * 0.5 * 9 * 6) / (14.5 * 3.6 ** 2) / 22)).toBeCloseTo(1, 2);
    expect(row.message).toContain('the flange may break at');
  });

  it('shears teeth that are weak in shear before it bends them', () => {
    // a body without a flange: nothing but body and teeth
    const bare = { flange: undefined, holes: undefined, body: { diameter: 24, length: 15 } };
    const row = crash({ ...bare, material: { preset: 'petg', shear: '2 MPa' } });
    // nut's major 8.8, tooth there 2 − (1.1 − 1.5·tan 15°) = 1.302 mm wide, half of (15 − 2·(0.5 + 0.825))/2 = 6.175 turns; 2 MPa, half of it for a moment
    const shear = force / (Math.PI * 8.8 * 1.302 * 6.175 * 0.5);
    expect(row.value! / (shear / 1)).toBeCloseTo(1, 2);
    expect(row.message).toContain('the teeth may break at');
  });

  it('parts a slim body across its layers at its sharp root, which (14.2² − 10.8²) · π/4 mm² of half of 21 MPa at 30 °C hold', () => {
    // a wall of 1.7 mm around 6.25 mm, 7.25 mm inside the screws, under 16 mm of flange
    const turned = 1 + (2.2 * Math.sqrt(7.25 * 6.25)) / 16;
    const slim = { fillet: 0, flange: { thickness: 16 }, body: { diameter: 14.2, length: 60 } };
    const { message } = findingOf(nutSheet({ ...slim, duty: { motor: { torque: '5 N m' } } }), 'end-stop')!;
    const [, force] = /the body beside its flange may break at (\d+) N/.exec(message)!;
    expect(Number(force) / ((66.76 * 0.5 * 21 * Math.exp(-7 / 85)) / (2 * turned))).toBeCloseTo(1, 1);
  });

  it('presses the plastic under a bought nut, and no teeth', () => {
    const held = {
      ...FAMILY_BASE,
      family: { kind: 'holder', nut: METAL },
      body: { diameter: 32, length: 12 },
      flange: undefined,
      holes: undefined,
    };
    const duty = { axis: 'horizontal', load: 15, temperature: 25, motor: { torque: '2 N m' } };
    expect(findingOf({ ...held, duty }, 'end-stop')!.message).toContain('the plastic under the nut may break at');
  });

  it('breaks whatever nothing may be asked of, without a figure', () => {
    expect(crash({ material: 'pla', duty: { ...NARROW.duty, temperature: 60 } })).toMatchObject({
      verdict: 'caution',
      value: null,
      message: expect.stringContaining('may break at 0 N'),
    });
  });
});

describe('a flange pressed on the edge of a bore, by hand', () => {
  const quiet = { axis: 'horizontal', load: 150, temperature: 23 };
  const bent = (changes: Record<string, unknown>, pull = 'onto') =>
    findingOf({ ...NARROW, ...changes, duty: { ...quiet, pull } }, 'flange-bending')!;

  it('bends where the edge lies under it: two of four places of a bore of 20 mm, each with 3 mm of arm', () => {
    const even = (150 * 0.5 * 3 * 6) / (14.5 * 3.6 ** 2);
    const at = (fillet: number, wide = 14.5) =>
      bent({ carriage: { bore: '20 ± 0 mm' }, flange: { ...NARROW.flange, size: [46, wide] }, fillet });
    // the body is drawn out of its flange: K = 1.222 at a fillet of half the thickness, D/d = 3, and 2 for a sharp corner
    expect(at(0).value).toBeCloseTo(2 * even, 2);
    expect(at(1.8, 20).value! / at(0, 20).value!).toBeCloseTo(1.222 / 2, 3);
    expect(at(0).message).toMatch(/2 times that at its root \(fillet 0 mm\)/);
  });

  it('bears nothing more at its root where the corner is pressed, or the arm was taken to the screws', () => {
    // 9 mm from the screws to the body, as the load pulls the flange off a carriage that the body enters
    const even = (150 * 0.5 * 9 * 6) / (14.5 * 3.6 ** 2);
    expect(bent({ carriage: { bore: '20 ± 0 mm' }, fillet: 0 }, 'away').value).toBeCloseTo(even, 2);
    expect(bent({ fillet: 0, carriage: undefined }).value).toBeCloseTo(even, 2);
    // and where it stands away, the corner is drawn
    const away = {
      stands: 'away',
      carriage: { bore: '10 ± 0 mm' },
      fillet: 0,
      holes: { ...NARROW.holes, head: 'body' },
    };
    expect(bent(away, 'away').value).toBeCloseTo(2 * even, 2);
    // pressed on the edge of a bore 3 mm out it is not
    const pressed = bent({ ...away, carriage: { bore: '20 ± 0 mm' } });
    expect(pressed.value).toBeCloseTo(even / 3, 2);
    expect(pressed.message).not.toContain('at its root');
  });

  it('bends nowhere where nothing is bolted', () => {
    const { holes, ...unbolted } = NARROW;
    expect(bendFlange(design(unbolted) as NutDesign, 'away')).toBeUndefined();
  });

  it('bends nowhere where it lies on nothing', () => {
    expect(bent({ carriage: { bore: '60 ± 0 mm' } })).toMatchObject({ verdict: 'pass' });
    expect(findingOf({ ...NARROW, carriage: { bore: '60 ± 0 mm' } }, 'seat-pressure')!.verdict).toBe('fail');
  });

  it('is a ring only where it is round and whole', () => {
    // 44 mm on a body of 22, four screws 16 mm out: as a ring 13.92 MPa of 800 N, as strips less
    const wide = {
      screw: 'Tr12x3',
      body: { diameter: 22, length: 20 },
      holes: { count: 4, circle: 32, screw: 'M4', head: 'flange' },
    };
    const words = (flange: object) => bent({ ...wide, flange }, 'away').message;
    expect(words({ diameter: 44, thickness: 6 })).toContain('as a loose ring');
    expect(words({ shape: 'rectangular', size: [44, 44], thickness: 6 })).toContain('of arm on a section');
    expect(words({ diameter: 44, flats: 43.9, thickness: 6 })).toContain('of arm on a section');
  });
});

describe('the seat of a flange, by hand', () => {
  // 37 mm, less four holes of 3.6 mm: 1034.5 mm²
  const seat = (changes: Record<string, unknown>) =>
    Number(
      /on a seat of ([\d.]+) mm²/.exec(
        findingOf(nutSheet({ lead_in: 0.5, duty: { pull: 'onto' }, ...changes }), 'seat-pressure')!.message,
      )![1],
    );
  const around = (opening: number) => (Math.PI / 4) * (37 ** 2 - 4 * 3.6 ** 2 - opening ** 2);

  it('lies around the body, or around the bore that it goes into', () => {
    expect(seat({})).toBeCloseTo(around(17), -1);
    expect(seat({ carriage: { bore: '20 ± 0 mm' } })).toBeCloseTo(around(20), -1);
  });

  it('lies around the mouth of its thread, 10.8 + 2 · 0.5 mm, where its body stands away', () => {
    const away = { stands: 'away', mounting: 'flange-down', holes: { head: 'body' } };
    expect(seat(away)).toBeCloseTo(around(11.8), -1);
    // a stub of 17 mm below the flange
    expect(seat({ ...away, flange: { offset: 3 } })).toBeCloseTo(around(17), -1);
    expect(seat({ ...away, carriage: { bore: '11 ± 0 mm' } })).toBeCloseTo(around(11.8), -1);
    expect(seat({ ...away, carriage: { bore: '15 ± 0 mm' } })).toBeCloseTo(around(15), -1);
  });
});

it('a flange whose screws stand within its body bends by nothing', () => {
  const within = { body: { diameter: 30 }, holes: { circle: 22, head: 'none' }, fillet: 0 };
  expect(findingOf(nutSheet(within), 'flange-bending')).toMatchObject({
    verdict: 'pass',
    message: 'its screws stand within the body: nothing bends',
  });
});

describe('a body pulled out of its flange, by hand', () => {
  const pulled = (pull: string, changes: Record<string, unknown> = {}) =>
    findingOf(
      { ...NARROW, ...changes, fillet: 0, duty: { axis: 'horizontal', load: 150, temperature: 23, pull } },
      'barrel-pull',
    )!;

  it('bears 150 N on (14² − 8.8²) · π/4 = 93.1 mm², turned by two ears of 14.5 mm and twice that at a sharp root that is drawn', () => {
    // each ear turns with half the load, 9 mm beside the body and 1.3 mm more to the middle of its wall, around 5.7 mm, what
    // would come in all round on 14.5 of π·14/2 mm: 1 + 2.2·1.517·√(10.3·5.7)/3.6 = 8.10
    const away = pulled('away');
    expect(away.value! / ((150 / 93.1) * 8.1)).toBeCloseTo(1, 1);
    expect(away.message).toMatch(/on 93 mm² of body beside its bore, 8.1 times that as its flange turns it; /);
    // the edge of the bore, 0.2 mm beside the body, at four quarters: 1 + 2.2·√(1.5·5.7)/3.6 = 2.79
    const onto = pulled('onto');
    expect(onto.value! / ((150 / 93.1) * 2.79 * 2)).toBeCloseTo(1, 1);
    expect(onto.message).toMatch(/2.8 times that as its flange turns it, 2 times at its corner; /);
  });

  it('is turned by no flange that nothing holds', () => {
    const loose = findingOf(nutSheet({ holes: undefined, duty: { motor: undefined } }), 'barrel-pull')!;
    expect(loose.message).toMatch(/mm² of body beside its bore(, [\d.]+ times at its corner)?; under/);
  });

  it('parts where no flange is left between body and screws to turn it', () => {
    expect(pulled('away', { flange: { diameter: 14.6, thickness: 3.6 } })).toMatchObject({
      verdict: 'fail',
      value: null,
    });
  });

  it('has a bore 0.8 mm wider than the screw where a bought nut is held: 8.8 mm, not the 9 mm of a loose thread', () => {
    const area = (changes: Record<string, unknown>) => {
      const sheet = { ...FAMILY_BASE, fit: { diametral: 0.5, axial: 0.2 }, ...changes };
      const duty = { axis: 'horizontal', load: 150, temperature: 23, pull: 'away' };
      return Number(/on (\d+) mm² of body/.exec(findingOf({ ...sheet, duty }, 'barrel-pull')!.message)![1]);
    };
    // ⌀32 within 63 chords of 0.02 mm, 804.25·(1 − (2π/63)²/6) = 802.91, less π/4·8.8² and π/4·9²: 742.1 and 739.3 mm²
    expect([area({ family: { kind: 'holder', nut: METAL } }), area({})]).toEqual([742, 739]);
  });

  it('is asked of bodies with a flange alone, and bending of those with holes', () => {
    expect(findingOf(nutSheet({ flange: undefined, holes: undefined }), 'barrel-pull')).toBeUndefined();
    expect(findingOf(nutSheet({ holes: undefined }), 'flange-bending')).toBeUndefined();
  });
});

describe('a flange whose screws stand on one side, by hand', () => {
  const bent = (pull: 'away' | 'onto', at: number, changes: Record<string, unknown> = {}) => {
    const holes = {
      at: [
        [at, 9],
        [at, -9],
      ],
      count: undefined,
      circle: undefined,
      start: undefined,
      screw: 'M4',
      fit: 'medium',
      diameter: undefined,
    };
    const flange = { shape: 'rectangular', size: [44, 34], diameter: undefined, thickness: 8 };
    const sheet = nutSheet({ fillet: 0, body: { diameter: 18 }, flange, holes, carriage: undefined });
    return bendFlange(design(changed(sheet, changes)) as NutDesign, pull)!;
  };

  it('tips about its edge where it is pulled: 15 mm of arm on (18 + 2 · 6 − 2 · 4.5) × 8 mm', () => {
    const pulled = bent('away', 15);
    expect(pulled.stress).toBeCloseTo(15 / ((21 * 64) / 6), 6);
    expect(pulled.words).toBe('tipped about its edge, 15 mm of arm on a section of 21 × 8 mm');
  });

  it('bends more at the sharp corner of a body that is drawn out: 9 mm of arm on 18 × 8 mm', () => {
    const pulled = bent('away', 15, { stands: 'away', holes: { head: 'body' } });
    const corner = rootNotch({ fillet: 0, thickness: 8 });
    expect(pulled.stress).toBeCloseTo((corner * 9 * 6) / (18 * 64), 3);
    expect(pulled.words).toMatch(
      /^tipped about its edge, 9 mm of arm on a section of 18 × 8 mm, [\d.]+ times that at its root/,
    );
  });

  it('bends as a strip where its screws are so far off that this bears more', () => {
    const far = { stands: 'away', holes: { head: 'body' }, flange: { size: [100, 34] } };
    expect(bent('away', 44, far).words).not.toContain('tipped');
  });

  it('lies where it is pressed on', () => {
    expect(bent('onto', 15).words).not.toContain('tipped');
  });
});
