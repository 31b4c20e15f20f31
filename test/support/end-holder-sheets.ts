const COMMON = {
  part: 'end-holder',
  name: 'end',
  screw: { designation: 'Tr8x2', major: '7.85 ± 0.03 mm' },
  holes: { rectangle: [32, 32], screw: 'M4' },
  frame: { thickness: 5 },
  mounting: 'horizontal',
  coupling: 'flexible',
  thrust_bearing: 'yes',
  nut: 'rigid',
  runout: 0.04,
  nut_gap: 70,
  end_room: 3,
  material: 'petg',
  printer: { compensation: 'file' },
  duty: { load: 20, span: 500, feed: 10, temperature: 30 },
};

/** A ball bearing under a plate, for the far end of a screw that lies. */
export const GUIDED = { ...COMMON, role: 'guiding', bearing: 608, held_by: 'plate' };

/** The same, pressed in. */
export const PRESSED = { ...GUIDED, held_by: 'press' };

/** A bearing that carries the screw along its axis. */
export const LOCATED = { ...GUIDED, role: 'locating', thrust_bearing: 'no' };

/** A plain bush. */
export const BUSH = { ...COMMON, role: 'guiding' };

/** A guard ring around the end of a short screw that stands. */
export const RING = { ...COMMON, role: 'free', mounting: 'motor-below', duty: { ...COMMON.duty, span: 250 } };

/** A bearing that snaps in past a lip. */
export const LIPPED = { ...GUIDED, held_by: 'lip', material: 'pa12' };

/** Flanged bearings: pressed in up to the flange, and under a plate. */
export const FLANGED = { ...PRESSED, bearing: 'F608' };
export const FLANGED_LOCATED = { ...LOCATED, bearing: 'F608' };

/** Holders of every form, for drawings and solids. */
export const END_HOLDERS: Readonly<Record<string, object>> = {
  guided: GUIDED,
  pressed: PRESSED,
  located: LOCATED,
  bush: BUSH,
  ring: RING,
  lipped: LIPPED,
  flanged: FLANGED,
  'flanged, under a plate': FLANGED_LOCATED,
  'small bearing, holes on a circle': {
    ...PRESSED,
    screw: 'Tr8x2',
    turned_end: 5,
    bearing: { designation: '685', width: 5 },
    holes: { count: 3, circle: 26, start: 90, screw: 'M3' },
  },
  'two holes in a row': {
    ...GUIDED,
    bearing: '6900',
    screw: 'Tr10x2',
    holes: {
      at: [
        [22, 0],
        [-22, 0],
      ],
      screw: 'M5',
    },
  },
  'large bearing of measured size': {
    ...PRESSED,
    screw: 'Tr20x4',
    bearing: { bore: 20, outside: 47, width: 14 },
    holes: { rectangle: [60, 44], screw: 'M6' },
  },
};
