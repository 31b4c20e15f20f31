/** What differs from one start sheet of a nut to the other. */
interface NutStart {
  readonly part?: string;
  /** what it is, and what for */
  readonly what: string;
  readonly name: string;
  readonly body: string;
  readonly flange: string;
  readonly holes: string;
  readonly mounting: string;
  readonly axis: string;
  readonly load: string;
  /** lines that make it one of the family */
  readonly family: string;
  /** line that says what it is mounted to */
  readonly carriage?: string;
  /** line that lets it float */
  readonly float?: string;
  /** whether a name on its flange stays in one piece */
  readonly isMarked?: boolean;
}

const FLANGE_DOWN = 'flange-down           # where the flange is on the machine: flange-up, flange-down';
const PLAIN: NutStart = {
  mounting: FLANGE_DOWN,
  axis: 'vertical',
  load: '25 N',
  what: 'A drive nut.',
  name: 'my-nut',
  body: '{shape: round, diameter: 16 mm, length: 17 mm}            # square, hexagon: across_flats; length with the flange',
  flange: '{shape: round, diameter: 35 mm, thickness: 7 mm}        # none, round, square, rectangular, two-ear',
  holes:
    '{count: 4, circle: 25 mm, start: 45 deg, screw: M3, diameter: 3.9 mm, head: flange}    # head: the side of the screw heads',
  family: `# Others want a wider body and have sheets of their own: leadwright new split-nut, clamped-nut, anti-backlash-nut,
# twin-nut (two threads at a distance), nut-holder (for a bought nut), catch-nut (a metal nut stands by). When to take which: docs/nut.md`,
};
const WIDE = {
  mounting: FLANGE_DOWN,
  axis: 'vertical',
  load: '25 N',
  body: '{shape: round, diameter: 32 mm, length: 22 mm}            # round; length with the flange',
  flange: '{shape: round, diameter: 52 mm, thickness: 6 mm}',
  holes:
    '{count: 4, circle: 42 mm, start: 45 deg, screw: M4, fit: coarse, head: flange}    # head: the side of the screw heads',
};

/** A drive nut to start from: everything that is usually measured, with what it means beside it. */
export const NUT_START = nutStart(PLAIN);

/** Its relatives, each with a body that has room for what it adds. */
export const FAMILY_STARTS = {
  'split-nut': nutStart({
    ...WIDE,
    what: 'A nut in two halves, to be mounted without taking the screw out.',
    name: 'my-split-nut',
    isMarked: false,
    family: `family:
  kind: split
  # closed: ring                # screws, ring: what closes the halves
  # screw: M3                   # that closes them
  # pins: {diameter: 3 mm, length: 10 mm}      # bought pins that place them`,
  }),
  'clamped-nut': nutStart({
    ...WIDE,
    what: 'A nut with a slit and one screw, by which its play is set.',
    name: 'my-clamped-nut',
    family: `family:
  kind: clamped
  # screw: M3                   # that sets the slit`,
  }),
  'anti-backlash-nut': nutStart({
    ...WIDE,
    what: 'A nut and a follower with a bought spring between them: no play while the spring holds.',
    name: 'my-anti-backlash-nut',
    axis: 'horizontal',
    load: '8 N',
    family: `family:
  kind: anti-backlash
  spring: {inside: 16 mm, outside: 19 mm, free: 20 mm, solid: 7 mm, rate: 1}    # measured; rate in N/mm
  # follower: 12 mm             # length of the second nut`,
  }),
  'twin-nut': nutStart({
    ...WIDE,
    part: 'twin-nut',
    what: 'Two nuts at a distance in one block, for a carriage that would tilt on one short nut.',
    name: 'my-twin-nut',
    axis: 'horizontal',
    load: '8 N',
    body: '{shape: round, diameter: 32 mm, length: 50 mm}            # round, square, hexagon; length over all',
    // what a lever bends at the foot of the body
    flange: '{shape: round, diameter: 52 mm, thickness: 10 mm}',
    family: `family:
  apart: 34 mm                  # from the middle of one thread to that of the other
  lever: 15 mm                  # beside the screw, where the load acts
  # shift: 0.1 mm               # one nut set against the other, as by a shim: so much less play`,
  }),
  'nut-holder': nutStart({
    ...WIDE,
    what: 'A printed flange with a pocket for a bought nut in place of a thread.',
    name: 'my-nut-holder',
    carriage: 'carriage: {bore: 33 mm, thickness: 6 mm}',
    isMarked: false,
    mounting:
      'flange-up             # flange-up: the load presses the metal nut into its pocket; flange-down pulls it out',
    family: `family:
  kind: holder
  nut: {across_flats: 13 mm, height: 6.5 mm}   # the bought nut, measured; shape: square where it is not a hexagon
  # pocket: end                 # where it opens: end (of the body), face (where there is no flange)`,
  }),
  'floating-nut': nutStart({
    ...PLAIN,
    what: 'A nut that stays free to move a little sideways, for a screw that is bent or stands askew.',
    name: 'my-floating-nut',
    holes: '{count: 4, circle: 25 mm, start: 45 deg, screw: M3, head: flange}    # sized for sleeves and float',
    body: '{shape: round, diameter: 16 mm, length: 17 mm}            # round; length with the flange',
    carriage: 'carriage: {bore: 17.6 mm, thickness: 6 mm}',
    float:
      'float: {sideways: 0.45 mm, along: 0.03 mm}    # its screws stand on sleeves, longer than the flange by the play along; sleeve: 5 mm, spacer: shoulder, bare',
    isMarked: false,
    family: '# It goes with a screw that both ends hold; what it costs is play: thread-backlash counts it.',
  }),
  'catch-nut': nutStart({
    ...WIDE,
    what: 'A printed nut with a metal one that stands by, in case the printed thread fails.',
    name: 'my-caught-nut',
    body: '{shape: round, diameter: 32 mm, length: 25 mm}            # round; length with the flange',
    mounting: 'flange-up             # flange-up: the metal nut below catches; flange-down',
    family: `catch_nut: {across_flats: 13 mm, height: 6.5 mm}   # the metal nut, measured; gap: 0.8 mm to the printed thread`,
  }),
} as const;

function nutStart({
  part = 'nut',
  what,
  name,
  body,
  flange,
  holes,
  mounting,
  axis,
  load,
  family,
  carriage = '# carriage: {bore: 18.4 mm, thickness: 6 mm}',
  float = '# float: 0.3 mm                # sideways, on sleeves: its screws never clamp it; left out, they do',
  isMarked = true,
}: NutStart): string {
  return `# ${what} Change the readings to your own, then: leadwright check FILE, leadwright make FILE
# Bare numbers are mm, degrees, N and N·m; a unit may be written: 0.313 in, 5/16 in, 20 kgf, 0.8 %.
# A line that is commented out is put in place by taking its # and the blank behind it away.

part: ${part}
name: ${name.padEnd(26)}# letters, digits, - and _; it becomes a folder

# The screw: a designation is enough (Tr8x2, Tr8x8(P2), Tr10x2-LH, Acme 3/8-10, M8); what you measure replaces its own.
screw:
  designation: Tr8x2
  major: 7.95 ± 0.03 mm         # over the crests, with calipers
  hand: right                   # right: it climbs to the right, seen from the side
  # pitch_diameter: 7 ± 0.05 mm # settles the fit best; or wires: {wire: 1 mm, over: 8.45 mm}, over three wires
  # What a screw without a designation is told by:
  # form: trapezoidal           # trapezoidal 30°, acme 29°, metric-v 60°; or flank_angle: 15 deg
  # crests: {count: 10, length: 20.05 mm}      # ten pitches, from one edge to the same edge; or pitch: 2 mm
  # starts: 1                   # or travel: {turns: 10, length: 20 mm}, what ten turns move; or lead: 2 mm

body: ${body}
flange: ${flange}
holes: ${holes}
mounting: ${mounting}
# stands: through               # through, away: whether the body goes through the carriage or stands away from it

# What it is mounted to, when known: its bore, its thickness, which gives the length of its screws, its own holes.
${carriage}

material: petg                  # leadwright presets material lists them
printer: {nozzle: 0.4 mm, layer: 0.12 mm, hole_offset: 0.15 mm, compensation: file}

duty:
  axis: ${axis.padEnd(24)}# vertical, horizontal
  load: ${load.padEnd(24)}# along the screw
  temperature: 25 C             # around the part
  # pull: onto                  # where the standing load goes: away (the flange off its carriage), onto; untold, the worse is judged
  grease: greased               # dry, greased
  # regrease: yes               # grease is put on again and again
  dust: no                      # grit, chips or fibres around the screw: yes, no
  feed: 10 mm/s
  on_time: 10 s                 # in motion, in one go
  cycle: 100 s                  # from one start to the next: a nut that rests bears more
  motor: {steps: 200, microsteps: 16, torque: 0.15 N m}
  span: 300 mm                  # free length of the screw
  ends: fixed-free              # fixed-free, supported, fixed-supported, fixed-fixed
  layer_heights: [0.1 mm, 0.2 mm]

# The rest, for those who want it:
fit: running                    # close, running, loose; or {diametral: 0.3 mm, axial: 0.1 mm}
# lead_in: 0.5 mm               # chamfer past the thread at both ends
# relief: 0.4 mm                # chamfer against the squashed first layer
# fillet: 1 mm                  # between flange and body
${isMarked ? '# mark: LEFT                    # a name raised on the flange\n' : ''}${float}
# calipers: 0.02 mm             # half-width of a reading, where it does not say its own
# limits: {wall: 2 mm}          # a check's limit changed; the report tells

${family}
`;
}
