/** A plain nut with room for every member of the family. */
export const FAMILY_BASE = {
  part: 'nut',
  name: 'n',
  screw: { designation: 'Tr8x2', hand: 'right' },
  body: { diameter: 32, length: 22 },
  flange: { diameter: 52, thickness: 5 },
  holes: { count: 4, circle: 42, start: 45, screw: 'M4', head: 'flange' },
  fit: 'running',
  material: 'petg',
  printer: { layer: 0.1, compensation: 'file' },
};
/** A spring for its anti-backlash pair, and a metal nut to be held or to stand by. */
export const SPRING = { inside: 16, outside: 19, free: 20, solid: 7, rate: 3 };
export const METAL = { across_flats: 13, height: 6.5 };
