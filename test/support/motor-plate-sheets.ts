const MOTOR = {
  square: '31 ± 0.02 mm',
  pilot: '22 ± 0.02 mm',
  pilot_height: 2,
  screw: 'M3',
  thread_depth: 4.5,
  body: 42.3,
  length: 40,
  weight: 3,
  shaft: { diameter: 5, length: 24 },
  torque: '0.4 N m',
  axial_limit: 40,
  temperature: 42,
};

/** A common motor under a frame, the screw on a thrust bearing. */
export const MOUNTED = {
  part: 'motor-plate',
  name: 'plate',
  motor: MOTOR,
  machine: { holes: { rectangle: [60, 60], screw: 'M4' }, face: 'motor', thickness: 6 },
  coupling: 'flexible',
  hub_depth: 14,
  mounting: 'motor-below',
  thrust_bearing: 'yes',
  bearing_on: 'machine',
  material: 'petg',
  printer: { compensation: 'file' },
  duty: { load: 30 },
};

/** The same with a screw that stands on the motor's shaft. */
export const LOADED = { ...MOUNTED, coupling: 'disc', coupling_angle: 1, thrust_bearing: 'no', duty: { load: 20 } };

/** From one frame to a larger one, with sunk heads and inserts; the axis lies. */
export const ADAPTED = {
  ...MOUNTED,
  motor: { ...MOTOR, temperature: 60 },
  machine: {
    holes: { rectangle: [47.14, 47.14], screw: 'M4' },
    opening: 38.1,
    face: 'outer',
    joint: 'insert',
    thickness: 6,
  },
  hub_depth: 10,
  mounting: 'horizontal',
  material: 'asa',
};

/** A motor that drives a belt, to be set along slots. */
export const BELTED = {
  ...MOUNTED,
  machine: { holes: { rectangle: [70, 60], screw: 'M5', fit: 'coarse' }, face: 'motor', thickness: 5 },
  slots: { along: 'x', by: 4 },
  drive: 'belt',
  belt_pull: 20,
  coupling: undefined,
  hub_depth: undefined,
  thrust_bearing: undefined,
  mounting: 'horizontal',
};

/** Plates of every form, for drawings and solids. */
export const MOTOR_PLATES: Readonly<Record<string, object>> = {
  mounted: MOUNTED,
  adapted: ADAPTED,
  belted: BELTED,
  'slots along y, on a circle, off the middle': {
    ...BELTED,
    machine: {
      holes: {
        at: [
          [40, 26],
          [-28, 26],
          [-28, -30],
          [40, -30],
        ],
        screw: 'M4',
      },
      face: 'motor',
    },
    slots: { along: 'y', by: 3 },
  },
  'bolts through the face of the motor, holes on a circle': {
    ...MOUNTED,
    motor: { preset: 'frame-23', weight: 7, length: 56, shaft: { length: 24 } },
    machine: { holes: { count: 6, circle: 96, start: 90, screw: 'M5' }, face: 'motor', bare: 'tapped' },
  },
  'smallest motor onto two holes': {
    ...MOUNTED,
    motor: { preset: 'frame-11', weight: 1 },
    machine: {
      holes: {
        at: [
          [0, 26],
          [0, -26],
        ],
        screw: 'M3',
      },
      face: 'motor',
    },
  },
  'largest motor': {
    ...MOUNTED,
    motor: { preset: 'frame-34', weight: 30 },
    machine: { holes: { rectangle: [110, 90], screw: 'M6' }, face: 'outer', opening: 130, thickness: 8 },
  },
};
