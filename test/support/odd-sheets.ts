/** What all sheets here are printed with. */
export const PRINT = { material: 'pa12', printer: { compensation: 'file' } };
const bush = (more: object) => ({ part: 'sleeve', name: 'a', form: 'bush', ...PRINT, ...more });
const clamp = (motor: object, shaft: object | string) => ({
  part: 'sleeve',
  name: 'a',
  form: 'clamp',
  motor: { shaft: motor, torque: '0.3 N m' },
  shaft,
  ...PRINT,
});
const nut = {
  body: 10.2,
  length: 15,
  flange: { diameter: 22, thickness: 3.5 },
  holes: { count: 4, circle: 16, start: 45, screw: 'M3' },
};
const plate = (more: object) => ({
  part: 'adapter',
  name: 'a',
  nut,
  carriage: { bore: 10.8, thickness: 8, holes: { count: 4, circle: 32, screw: 'M3' } },
  ...PRINT,
  ...more,
});

/** Sleeves of all forms, from the smallest to the largest. */
export const SLEEVES: Readonly<Record<string, object>> = {
  'thinnest bush': bush({ shaft: '2 mm', bore: 4 }),
  'widest bush': bush({ shaft: '30 mm', bore: 60, length: 90 }),
  'bush with a flat': bush({ shaft: { diameter: 6, flat: 5.5 }, bore: 10 }),
  'bush with two flats': bush({ shaft: { diameter: 8, flats: 6.5 }, bore: 14 }),
  'bush with a keyway': bush({ shaft: { diameter: 14, form: 'keyed' }, bore: 30 }),
  'hexagonal bush': bush({ shaft: { across_flats: 8 }, bore: 16 }),
  'clamp for keyed and hexagonal shafts': clamp({ diameter: 14, form: 'keyed' }, { across_flats: 12 }),
  'clamp for two flats and a flat': clamp({ diameter: 8, flats: 7 }, { diameter: 6, flat: 5.5 }),
  'clamp for thin shafts': clamp({ diameter: 3 }, '4 mm'),
  'clamp for thick shafts': clamp({ diameter: 25 }, '28 mm'),
};

/** Adapters with everything that a plate may have. */
export const ADAPTERS: Readonly<Record<string, object>> = {
  'adapter with rim and offset': plate({
    carriage: { bore: 34, thickness: 6, offset: [1.5, -1], holes: { count: 4, circle: 52, start: 10, screw: 'M4' } },
    register: { carriage: 'rim', depth: 1.5 },
  }),
  'adapter on a spigot, nut in a recess': plate({
    nut: { ...nut, stands: 'away' },
    screw: 'Tr8x2',
    carriage: { spigot: 20, thickness: 6, holes: { count: 3, circle: 40, screw: 'M4' }, joint: 'insert' },
    register: { carriage: 'recess', nut: 'recess' },
  }),
  'adapter with a catch nut': plate({
    nut: { ...nut, stands: 'away' },
    screw: 'Tr8x2',
    register: { nut: 'none' },
    catch_nut: { across_flats: 13, height: 6.5 },
    carriage: { thickness: 6, holes: { count: 4, circle: 40, screw: 'M4' } },
  }),
  'floating adapter with keys': plate({
    kind: 'floating',
    hold: 'keys',
    nut: { ...nut, flange: { diameter: 22, flats: 16, thickness: 3.5 } },
    carriage: { bore: 14, thickness: 8, holes: { count: 2, circle: 36, screw: 'M3' } },
  }),
  'blank polygon with cut-outs': {
    part: 'adapter',
    name: 'a',
    kind: 'blank',
    carriage: { thickness: 6, holes: { rectangle: [40, 30], screw: 'M4' } },
    plate: {
      bore: 12,
      outline: {
        shape: 'polygon',
        corners: [
          [-30, -25],
          [30, -25],
          [30, 25],
          [0, 40],
          [-30, 25],
        ],
      },
      cutouts: [
        { at: [30, 0], size: [8, 12], turn: 15 },
        { at: [0, 28], diameter: 6 },
      ],
    },
    ...PRINT,
  },
  'adapter with nut traps and many holes': plate({
    nut: { ...nut, joint: 'hexagon', holes: { count: 6, circle: 16, screw: 'M2.5' }, seat: 'carriage' },
    carriage: { bore: 30, thickness: 8, holes: { count: 8, circle: 50, screw: 'M3' } },
    plate: { outline: { shape: 'round', diameter: 64 } },
  }),
  'large square adapter': plate({
    carriage: { bore: 10.8, thickness: 8, holes: { rectangle: [150, 120], screw: 'M5' } },
    plate: { outline: { shape: 'rectangular', size: [180, 150], corner: 8 } },
  }),
};
