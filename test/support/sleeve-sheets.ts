/** Two level shafts, joined so that they stay joined. */
export const CLAMP = {
  part: 'sleeve',
  name: 'joint',
  form: 'clamp',
  motor: { shaft: { diameter: 5, flat: 4.5, flat_length: 15, length: 24 }, torque: 0.25, temperature: 55 },
  shaft: { diameter: 8, length: 30 },
  mounting: 'horizontal',
  retighten: 'yes',
  motor_end: { clamp: { screw: 'M3', washers: 'yes' }, degreased: 'yes' },
  screw_end: { clamp: { screw: 'M3', washers: 'yes' }, degreased: 'yes' },
  material: 'pc',
  duty: { temperature: 30, shock: 'none' },
};

/** A bush for a bore that is too large. */
export const BUSH = { part: 'sleeve', name: 'bush', form: 'bush', shaft: 5, bore: 8, length: 12 };
