import type { Find } from './compare.js';

/** Facts that may stay untold where checks read better for it, each with the reason. */
const ROWS: readonly (readonly [paths: readonly string[], checks: readonly string[] | 'all', why: string])[] = [
  [['duty.motor.gear', 'motor.gear'], 'all', 'without one the motor turns the screw directly, which is listed'],
  [
    ['duty.motor.speed', 'motor.speed'],
    ['drive-speed', 'axis-feed'],
    '300 rpm are assumed and listed; a motor that does not follow loses steps',
  ],
  [['duty.motor.torque'], ['bolt-clamp'], 'of a locating holder: its bearing and its end of travel ask for it already'],
  [
    ['thrust_bearing', 'locating_holder'],
    ['insert-thrust', 'locating-bearings', 'both-ways'],
    'a disc or a sleeve that is told carries the screw; a second place that does asks for the first in its own sheet',
  ],
  [
    ['thrust_bearing'],
    ['bearing-seat'],
    'a sheet that tells of no bearing has none; nothing that carries the screw is a fail',
  ],
  [['machine.bare'], ['machine-thread'], 'holes without a thread of their own are listed with their nuts'],
  [
    ['duty.upward'],
    [
      'thread-pressure',
      'thread-shear',
      'thread-bending',
      'creep',
      'barrel-pull',
      'flange-bending',
      'floor-bending',
      'seat-pressure',
      'bolt-clamp',
      'bolt-clamp-nut',
      'bolt-clamp-carriage',
      'float-pull',
      'wear-pv',
      'wear-peak',
      'wear-heat',
      'wear-depth',
      'drive-torque',
      'drive-column',
      'split-hold',
      'nut-seat',
      'nut-held',
      'nut-kept',
      'spring-force',
      'twin-pressure',
      'plate-bending',
      'plate-sag',
      'end-stop',
      'thread-pitch-error',
      'thread-running-in',
      'axis-torque',
      'axis-feed',
    ],
    'of a nut or its plate: few works lift, and that none does is listed; an axis that stands or hangs asks, by its column',
  ],
  [
    ['duty.feed'],
    ['thread-pitch-error', 'thread-running-in'],
    'a nut that nobody drives is judged as warm as its air; what friction adds is asked by wear-heat',
  ],
  [['duty.dust'], ['wear-dust'], 'advice to those who tell of grit; what grit costs is asked by wear-depth'],
  [
    ['misalignment.angular', 'misalignment.parallel', 'misalignment.axial', 'offset'],
    ['misalignment', 'insert-squeeze', 'over-constraint'],
    'how well shafts are set is work: what is assumed is listed, and the card says how to set them',
  ],
  [
    ['mounting', 'duty.axis', 'nut.stands'],
    ['print-support', 'pocket-wall'],
    'which side lies on the bed follows from it: the part is judged as it is printed',
  ],
  [
    ['machine.opening'],
    ['motor-opening', 'machine-wall'],
    'what does not pass, or has nothing to hold on to, is seen while mounting',
  ],
  [['family.lever'], 'all', 'whether a twin nut binds under it asks for it already'],
  [['carriage.spigot'], ['spigot-room'], 'a plate that rides on a ring is seen while mounting'],
  [
    ['carriage.bore', 'nut.stands', 'nut.thread', 'carriage.thread'],
    [
      'mount-bore',
      'carriage-wall',
      'mount-float',
      'mount-binding',
      'clocking',
      'screw-length',
      'print-support',
      'pocket-wall',
    ],
    'what does not go in or on is seen while mounting, before anything moves',
  ],
  [
    ['carriage.holes.diameter', 'carriage.holes.fit', 'carriage.thread', 'nut.holes.diameter', 'nut.holes.fit'],
    ['hole-position-carriage', 'hole-position-nut', 'mount-float', 'float-backlash', 'carriage-wall'],
    'holes of the medium series are assumed and listed; a screw that does not go in is seen',
  ],
  [['nut.holes.screw'], ['head-seat'], 'the larger screw that a hole of known size may be for bears on more'],
  [['nut.thread'], ['floor-bending'], 'without a thread its screws have no pocket whose floor would bend'],
  [
    ['carriage.bore'],
    ['barrel-pull'],
    'a fillet is made smaller where the bore is told too close for it; untold the flange would stand off, which is seen',
  ],
  [
    ['screw.pitch_diameter'],
    ['barrel-pull'],
    'a stall pushes up to 2 % more on the thinnest screw of a class, which the least friction outweighs',
  ],
  [
    ['screw.pitch_diameter'],
    ['thread-pitch-error', 'thread-running-in'],
    'the range of the class is counted as spread: 19 of 20 nuts, as the message says',
  ],
];

/** The same of an axis. */
const AXIS_ROWS: typeof ROWS = [
  [['duty.axis'], ['thread-backlash'], 'which way it stands follows from mounting, which an axis has to tell'],
  [
    ['duty.span'],
    'all',
    'it follows from the lengths, by the longest that the readings allow; one that is told beside them must agree',
  ],
  [
    ['thrust_bearing'],
    ['axis-locating', 'locating-bearings'],
    'an axis lists its parts; that no collar is among them is assumed and listed',
  ],
  [
    ['thrust_bearing', ...['axis', 'ends', 'feed', 'load', 'shock', 'speed', 'starts'].map((name) => `duty.${name}`)],
    ['axis-told'],
    'it asks whether what is told agrees: what is not told follows from collar, mounting, holders and feed, or from the axis',
  ],
  [
    ['lengths.screw'],
    ['axis-screw-length', 'end-room'],
    'a screw that is not there yet is cut as long as is worked out',
  ],
  [
    ['motor.shaft.length'],
    ['axis-travel', 'nut-distance'],
    'the coupling asks for it; where the nut starts is told, or follows from the coupling and is listed',
  ],
  [
    ['lengths.start'],
    ['axis-travel', 'nut-distance'],
    'that the coupling is what the nut meets first is assumed and listed; a collar asks',
  ],
  [
    ['old.screw', 'old.steps_per_mm', 'motor.steps', 'motor.microsteps'],
    ['axis-old-steps'],
    'steps that nobody asked after',
  ],
];

/** The reason why a find is none; undefined where there is no reason. */
export function reasonFor(path: string, { check }: Find): string | undefined {
  const id = check.slice(check.indexOf('/') + 1);
  const isOfAxis = path.startsWith('lengths.') || check !== id || check.startsWith('axis-');
  const rows = isOfAxis ? [...ROWS, ...AXIS_ROWS] : ROWS;
  return rows.find(([paths, checks]) => paths.includes(path) && (checks === 'all' || checks.includes(id)))?.[2];
}
