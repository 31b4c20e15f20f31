/** What may read better though something is harder, each with the reason. */
const ROWS: readonly (readonly [paths: readonly string[], checks: readonly string[], why: string])[] = [
  [
    ['duty.temperature'],
    ['thread-root-gap', 'thread-crest-gap', 'thread-clearance', 'thread-axial', 'moisture'],
    'plastic grows more than the screw in it, and opens what lies between',
  ],
  [['duty.motor.torque', 'motor.torque'], ['drive-torque'], 'a stronger motor raises the load more easily'],
  [
    ['duty.span', 'duty.feed', 'duty.load', 'motor.shaft.length'],
    ['holding-needed'],
    'it tells how much a screw wants the holder that it has',
  ],
  [
    ['duty.grease'],
    [
      'seat-pressure',
      'flange-bending',
      'barrel-pull',
      'bolt-clamp',
      'thread-stall',
      'end-stop',
      'split-hold',
      'nut-seat',
      'twin-pressure',
      'float-pull',
    ],
    'a dry thread turns less of the torque of a stalled motor into force',
  ],
  [['holes.count'], ['seat-pressure', 'hole-spacing'], 'fewer screws press on less than all, and stand further apart'],
  [
    ['carriage.holes.circle'],
    ['carriage-wall', 'head-room', 'bolt-clamp-nut'],
    'screws that stand further out leave more wall and more room, and let the nut be turned anew between them',
  ],
  [
    ['holes.diameter', 'nut.holes.diameter', 'carriage.holes.diameter'],
    ['hole-position', 'hole-position-nut', 'hole-position-carriage', 'hole-size', 'floor-bending'],
    'wide holes let a pattern be off by more, and are to be seen in checks of heads and float',
  ],
  [
    ['carriage.bore'],
    ['mount-bore', 'mount-seat', 'end-stop', 'barrel-pull', 'mount-float'],
    'a wide bore lets the body in, with the fillet that the sheet wants',
  ],
  [['plate.thickness'], ['sleeve-seat'], 'screws that hold in less of a plate are tightened less'],
  [
    ['motor.torque', 'screw_hub.clamp.washers'],
    ['crest-grip'],
    'a hub that is laid out for more, or without washers, bears on more crests or presses them less',
  ],
  [
    ['motor.shaft.flat_length', 'shaft.flat_length'],
    ['flat-pressure'],
    'too short a flat is left out of the bore, and the clamp alone holds',
  ],
  [['machine.opening'], ['heads-clear', 'motor-opening'], 'heads sink into a wide opening, and motor or shaft pass it'],
  [['thrust_bearing'], ['both-ways'], 'it asks what the bearing does not hold; that there is none is told by others'],
  [
    ['motor.shaft.length'],
    ['nut-distance', 'axis-travel', 'plate-bending', 'bolt-clamp', 'bolt-clamp-motor'],
    'a short shaft gives a belt on it less lever, and draws the coupling to the motor',
  ],
];

/** The reason why a check may read better where a path is harder; undefined where there is none. */
export function whyBetter(path: string, check: string): string | undefined {
  const id = check.slice(check.indexOf('/') + 1);
  return ROWS.find(([paths, checks]) => paths.includes(path) && checks.includes(id))?.[2];
}
