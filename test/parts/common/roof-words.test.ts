import { describe, expect, it } from 'vitest';
import { roofWords } from '../../../src/parts/common/drawn/roof-words.js';
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

describe('what a drawing says of roofs', () => {
  it.each(['finished', 'printed'] as const)('names layer and drill of a nut, %s sizes', (choice) => {
    expect(notesOf(NUT, 'membrane', choice)).toEqual([
      'Holes: roofed as printed by a membrane 0.16: drill through ⌀4.6 after printing',
    ]);
    expect(notesOf(NUT, 'steps', choice)).toEqual([
      'Holes: roofed as printed in 3 steps of 0.16 around ⌀4.6: nothing to drill',
    ]);
  });

  it('says nothing without roofs, and where pockets open upwards', () => {
    expect(notesOf(NUT, 'none')).toEqual([]);
    expect(notesOf({ ...NUT, holes: { ...NUT.holes, head: 'body' } } as typeof NUT, 'membrane')).toEqual([]);
  });

  it('names the pattern of a plate whose pockets lie on the bed, and no other', () => {
    expect(notesOf(PLATE, 'none')).toEqual([]);
    expect(notesOf(PLATE, 'membrane')).toEqual([
      'C: roofed as printed by a membrane 0.2: drill through ⌀3.4 after printing',
    ]);
  });

  it('says nothing of a floor that is too thin: a membrane of 0.2 mm wants 0.4, steps want 0.8', () => {
    const words = (kind: 'membrane' | 'steps', floor: number) => roofWords({ kind, layer: 0.2 }, { floor, bore: 3.4 });
    expect(words('membrane', 0.39)).toBeUndefined();
    expect(words('membrane', 0.41)).toMatch(/^roofed as printed by a membrane/);
    expect(words('steps', 0.79)).toBeUndefined();
    expect(words('steps', 0.81)).toMatch(/3 steps/);
  });
});
