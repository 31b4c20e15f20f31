/** A sound nut as a plain sheet; every test changes what it is about. */
export const SOUND_NUT = {
  part: 'nut',
  name: 'sound',
  screw: 'Tr10x2',
  body: { shape: 'round', diameter: 17, length: 18 },
  flange: { shape: 'round', diameter: 37, thickness: 5 },
  holes: { count: 4, circle: 27, start: 45, screw: 'M3', fit: 'coarse', head: 'flange' },
  mounting: 'flange-up',
  fit: 'running',
  material: { preset: 'pa12', shrink: { plane: '1 %', axial: '0.6 %' } },
  printer: { nozzle: 0.4, layer: 0.08, hole_offset: 0.15, compensation: 'file' },
  duty: {
    axis: 'vertical',
    load: 30,
    moving: '15 %',
    on_time: '9 s',
    cycle: '60 s',
    temperature: 30,
    grease: 'greased',
    dust: 'no',
    feed: 6,
    motor: { steps: 200, microsteps: 16, torque: '0.12 N m' },
    span: 260,
    ends: 'fixed-free',
    layer_heights: [0.1, 0.2],
  },
} as const;

type Tree = { readonly [key: string]: unknown };

/** A copy of a plain sheet with some fields replaced, map by map; `undefined` takes a field out. */
export function changed(sheet: Tree, changes: Tree): Record<string, unknown> {
  const copy: Record<string, unknown> = { ...sheet };
  for (const [key, value] of Object.entries(changes)) {
    const old = copy[key];
    if (value === undefined) delete copy[key];
    else copy[key] = isTree(old) && isTree(value) ? changed(old, value) : value;
  }
  return copy;
}

function isTree(value: unknown): value is Tree {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The sound nut with changes. */
export function nutSheet(changes: Tree = {}): Record<string, unknown> {
  return changed(SOUND_NUT, changes);
}

/** The sound nut on a motor whose stall force its body does not bear, for checks that are looked at one by one. */
export const STRONG_NUT = changed(SOUND_NUT, { duty: { motor: { torque: '0.36 N m' } } });

/** The same with changes. */
export function strongNut(changes: Tree = {}): Record<string, unknown> {
  return changed(STRONG_NUT, changes);
}
