import { beforeAll, describe, expect, it } from 'vitest';
import { adapterKind } from '../../../src/parts/adapter/index.js';
import { adapterViews } from '../../../src/parts/adapter/views.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { measureMesh } from '../../../src/solid/measure.js';
import { ADAPTERS } from '../../support/odd-sheets.js';
import { sharedKernel } from '../../support/shared-kernel.js';
import { expectSoundDrawing } from '../../support/sound-drawing.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

describe.each(Object.keys(ADAPTERS))('what is drawn of: %s', (name) => {
  const made = adapterKind.design(adapterKind.schema.parse(ADAPTERS[name]), SHIPPED);
  const views = adapterViews(made, 'printed');

  it.each(['finished', 'printed'] as const)('draws its sizes between its lines, %s sizes', (sizes) => {
    const views = adapterViews(made, sizes);
    expectSoundDrawing(kernel, { part: 'adapter', sizes, views, dimensions: made.dimensions[sizes] });
  });

  it('numbers every hole of the table in a view', () => {
    const letters = [views.end, views.other].flatMap((view) => view?.letters.map(({ text }) => text) ?? []);
    for (const { label } of views.holes.filter((hole) => !hole.label.startsWith('X'))) expect(letters).toContain(label);
  });

  it('shows its nut as closed meshes, the flange on its seat', () => {
    for (const { mesh } of views.companions) expect(measureMesh(mesh).openEdges).toBe(0);
  });
});

describe('the notes of a plate', () => {
  const notes = (plate: object, choice: 'finished' | 'printed' = 'finished') => {
    const sheet = {
      part: 'adapter',
      name: 'a',
      nut: {
        body: 10.2,
        length: 15,
        flange: { diameter: 22, thickness: 3.5 },
        holes: { count: 4, circle: 16, diameter: 3.5, screw: 'M3' },
        joint: 'tapped',
      },
      carriage: {
        bore: 10.8,
        thickness: 8,
        holes: { count: 4, circle: 30, diameter: 3.4, screw: 'M3' },
        joint: 'through',
      },
      plate: { thickness: 8, ...plate },
      material: 'petg',
      printer: { layer: 0.2, compensation: 'file' },
      duty: { load: 20, temperature: 25, axis: 'horizontal' },
    };
    const made = adapterKind.design(adapterKind.schema.parse(sheet), SHIPPED);
    return adapterViews(made, choice).notes;
  };

  it('give each corner of a free polygon its place, and how far off it may lie', () => {
    const corners = [
      [-25, -22],
      [25, -22],
      [24, 23],
      [-25, 22],
    ];
    expect(notes({ outline: { shape: 'polygon', corners } })).toContainEqual(
      expect.stringMatching(
        /^Corners \(x, y\), each within ±\d\.\d\d mm: 1 \(-25\.00 mm, -22\.00 mm\), 2 \(25\.00 mm, -22\.00 mm\), 3 \(24\.00 mm, 23\.00 mm\), 4 \(-25\.00 mm, 22\.00 mm\)$/,
      ),
    );
    expect(notes({ outline: { shape: 'polygon', corners } }, 'printed').join()).not.toContain('±');
  });

  it('state flats and cut-outs with ±', () => {
    const found = notes({
      outline: { shape: 'round', diameter: 56 },
      flats: [{ angle: 90, distance: 24 }],
      cutouts: [{ at: [0, -24], size: [6, 3] }],
    });
    expect(found).toContainEqual(expect.stringMatching(/^Flat at 90°, 24\.00 ±\d\.\d\d mm from the axis$/));
    expect(found).toContainEqual(
      expect.stringMatching(/^X1: cut-out 6\.00 ±\d\.\d\d mm × 3\.00 ±\d\.\d\d mm at x 0 mm, y -24 mm, turned 0°$/),
    );
  });

  it('say what a band is drawn around', () => {
    const [band] = notes({ outline: { shape: 'hull', rim: 6 } }).filter((note) => note.startsWith('Outline'));
    expect(band).toMatch(/^Outline: a band around R \d+\.\d\d ±\d\.\d\d mm about (?:C\d, )*C\d/);
  });
});
