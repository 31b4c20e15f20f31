/** A standing screw on its own thread, a pin and a bearing. */
export const THREADED = {
  part: 'collar',
  name: 'carries',
  screw: { designation: 'Tr8x2', major: '7.95 ± 0.03 mm' },
  mounting: 'motor-above',
  bore: 'thread',
  pin: 1.5,
  bearing: 'F8-16',
  material: 'pc',
  motor: { torque: 0.01 },
  duty: { load: 30, upward: 0, span: 300, temperature: 35 },
};

/** A level shaft that is held by friction. */
export const PLAIN = {
  part: 'collar',
  name: 'holds',
  shaft: '9.99 ± 0.01 mm',
  mounting: 'horizontal',
  bearing: '51100',
  pair: 'yes',
  hold: { degreased: 'yes', clamp: { screw: 'M4', washers: 'yes' } },
  retighten: 'yes',
  material: 'pc',
  duty: { load: 40, temperature: 30 },
};

/** Two halves around a level screw. */
export const HALVES = { ...PLAIN, name: 'halved', form: 'halves' };

/** Two halves on a standing screw, by its own thread. */
export const THREADED_HALVES = { ...THREADED, name: 'halved', form: 'halves' };
