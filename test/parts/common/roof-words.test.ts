import { describe, expect, it } from 'vitest';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { kindOfDesign } from '../../../src/pipeline/find-kind.js';
import { KINDS } from '../../../src/pipeline/kinds.js';

const NUT = {
  part: 'nut',
  name: 'roofed',
  screw: 'Tr8x2',
  body: { diameter: 16, length: 20 },
  flange: { diameter: 48, thickness: 8 },
  holes: { count: 4, circle: 32, screw: 'M4', joint: 'counterbore', head: 'flange', diameter: 4.6 },
  material: 'petg',
  printer: { compensation: 'file', layer: 0.16 },
};
const PLATE = {
  part: 'adapter',
  name: 'roofed',
  nut: {
    body: 10.2,
    length: 15,
    flange: { diameter: 22, thickness: 3.5 },
    holes: { count: 4, circle: 16, diameter: 3.5, screw: 'M3' },
    joint: 'tapped',
  },
  register: { nut: 'recess', carriage: 'rim' },
  carriage: {
    bore: 24,
    thickness: 8,
    holes: { count: 4, circle: 40, diameter: 3.4, screw: 'M3' },
    joint: 'counterbore',
  },
  plate: { thickness: 12, outline: { shape: 'round', diameter: 54 } },
  material: 'petg',
  printer: { compensation: 'none', layer: 0.2 },
};

function notesOf(sheet: { readonly printer: object }, bridging: string, choice: 'finished' | 'printed' = 'finished') {
  const made = design({ ...sheet, printer: { ...sheet.printer, bridging } });
  return kindOfDesign(KINDS, made)
    .views(made, choice)
    .notes.filter((note) => note.includes('roofed'));
}

const isOfRoofs = (caution: string) => /^(Each pocket|The pockets) on the bed/.test(caution);

describe('what a drawing says of roofs', () => {
  it.each(['finished', 'printed'] as const)('names layer and drill of a nut, %s sizes', (choice) => {
    expect(notesOf(NUT, 'membrane', choice)).toEqual([
      'Holes: roofed as printed by a membrane 0.16 mm: drill through ⌀4.6 mm after printing',
    ]);
    expect(notesOf(NUT, 'steps', choice)).toEqual([
      'Holes: roofed as printed in 3 steps of 0.16 mm around ⌀4.6 mm: nothing to drill',
    ]);
  });

  it('says nothing without roofs, and where pockets open upwards', () => {
    expect(notesOf(NUT, 'none')).toEqual([]);
    expect(notesOf({ ...NUT, holes: { ...NUT.holes, head: 'body' } } as typeof NUT, 'membrane')).toEqual([]);
  });

  it('names the pattern of a plate whose pockets lie on the bed, and no other', () => {
    expect(notesOf(PLATE, 'none')).toEqual([]);
    expect(notesOf(PLATE, 'membrane')).toEqual([
      'C: roofed as printed by a membrane 0.2 mm: drill through ⌀3.4 mm after printing',
    ]);
  });

  // M4: a head of 4 mm on a washer of 0.8 mm
  it.each([
    ['membrane', 5.15, false],
    ['membrane', 5.25, true],
    ['steps', 5.5, false],
    ['steps', 5.65, true],
  ] as const)(
    '%s in a flange of %s mm: a layer of 0.2 mm wants 0.4 mm of floor, steps 0.8',
    (bridging, thickness, has) => {
      const sheet = {
        ...NUT,
        flange: { diameter: 48, thickness },
        printer: { compensation: 'none', layer: 0.2, bridging },
      };
      const made = design(sheet);
      const kind = kindOfDesign(KINDS, made);
      const row = check(made).checks.find(({ id }) => id === 'print-support')!;
      expect(notesOf(sheet, bridging).length).toBe(has ? 1 : 0);
      expect(kind.particulars(made).cautions.some(isOfRoofs)).toBe(has);
      expect(row.verdict).toBe(has ? 'pass' : 'caution');
      // half of the 9.5 mm that a washer of M4 takes, less half of the hole
      expect(row.value).toBe(has ? 0 : (9.5 - 4.6) / 2);
      if (!has) expect(row.message).toMatch(/leave more over them: too little stands there for that roof/);
    },
  );

  it.each([
    [3.85, false],
    [3.95, true],
  ])('asks the same of a plate of %s mm: M3 takes a head of 3 mm on a washer of 0.5 mm', (thickness, has) => {
    const sheet = { ...PLATE, plate: { ...PLATE.plate, thickness } };
    const made = design({ ...sheet, printer: { ...sheet.printer, bridging: 'membrane' } });
    expect(notesOf(sheet, 'membrane').length).toBe(has ? 1 : 0);
    expect(kindOfDesign(KINDS, made).particulars(made).cautions.some(isOfRoofs)).toBe(has);
  });

  it.each([
    ['counterbore', 'flange', /drill it through, then put a washer under each head there, and tighten again/],
    ['hexagon', 'body', /drill it through, then tighten again the next day/],
  ] as const)('puts washers under heads and none into pockets of nuts: %s', (joint, head, words) => {
    const made = design({
      ...NUT,
      holes: { ...NUT.holes, joint, head },
      printer: { layer: 0.16, bridging: 'membrane' },
    });
    const { cautions } = kindOfDesign(KINDS, made).particulars(made);
    expect(cautions.find(isOfRoofs)).toMatch(words);
  });
});
