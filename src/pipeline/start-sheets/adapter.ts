/** An adapter plate to start from: what is measured on nut and carriage, with what it means beside it. */
export const ADAPTER_START = adapterStart({
  name: 'my-adapter',
  kind: `# kind: floating                # joined, floating (the nut stays free to move a little), blank (no nut, only a bore)
#                               # floating takes float: {sideways: 0.3 mm, along: 0.05 mm}, on sleeves longer than its flange`,
  flange: '22 mm',
  circle: '16 mm',
  hole: '3.5 mm',
});

/** The same for a nut that stays free: its holes are drilled to what its sleeves and the float want. */
export const FLOATING_ADAPTER_START = adapterStart({
  name: 'my-floating-adapter',
  kind: `kind: floating                  # the nut stays free to move a little; joined: it is screwed tight
float: {sideways: 0.35 mm, along: 0.05 mm, sleeve: 5.2 mm}    # on sleeves, longer than its flange by the play along`,
  flange: '26 mm',
  circle: '18 mm',
  hole: '5.9 mm',
});

function adapterStart({
  name,
  kind,
  flange,
  circle,
  hole,
}: {
  readonly name: string;
  readonly kind: string;
  readonly flange: string;
  readonly circle: string;
  readonly hole: string;
}): string {
  return `# A plate that carries a bought nut on a carriage it does not fit. Change the readings to your own, then:
# leadwright check FILE, leadwright make FILE. Bare numbers are mm, degrees, N and N·m.
# A line that is commented out is put in place by taking its # and the blank behind it away.

part: adapter
name: ${name.padEnd(26)}# letters, digits, - and _; it becomes a folder
${kind}

screw: Tr8x2                    # what the nut runs on: tells what a stalled motor pushes with, and whether the axis falls

# The bought nut, measured:
nut:
  body: 10.2 mm                 # diameter of the body
  length: 15 mm                 # over all
  flange: {diameter: ${flange}, thickness: 3.5 mm}     # or shape: square, rectangular with size: [24 mm, 24 mm]; flats: 18 mm
  holes: {count: 4, circle: ${circle}, start: 45 deg, diameter: ${hole}, screw: M3}   # or rectangle: [20 mm, 14 mm], or at: [[8, 0], [-3, 7]]
  # joint: insert               # what the plate offers: through, counterbore, hexagon, insert, tapped; left out: what finds room
  # seat: outside               # the face of the plate the flange lies on: outside, carriage
  # stands: through             # the body goes through the plate, or away from it

# The carriage, measured:
carriage:
  bore: 10.8 mm                 # or slot: [20 mm, 12 mm]
  thickness: 8 mm
  holes: {count: 4, circle: 29 mm, start: 0 deg, diameter: 3.4 mm, screw: M3}
  # thread: tapped              # where the carriage's own holes are tapped
  # offset: [0, 2 mm]           # from the axis of the screw to the middle of its pattern
  # room: [[-25, -20], [25, -20], [25, 20], [-25, 20]]     # what the plate must stay within

plate:
  thickness: 7 mm               # left out: what the joints need
  outline: {shape: hull, rim: 3 mm}       # hull, round, square, rectangular, polygon
  # flats: [{angle: 90 deg, distance: 17 mm}]
  # cutouts: [{at: [18, 0], diameter: 8 mm}]

material: petg                  # leadwright presets material lists them
printer: {nozzle: 0.4 mm, layer: 0.2 mm, hole_offset: 0.15 mm, compensation: file}

duty:
  axis: vertical
  load: 25 N
  temperature: 25 C
  motor: {torque: 0.06 N m}     # holding torque: what hits the end of travel, and pulls on the plate when the axis jams
  # pull: away                  # where the load goes: away (the plate off its carriage), onto; untold, the worse is judged

# The rest, for those who want it:
# clocking: 30 deg              # left out: the turn of the nut that leaves most between all holes
# register: {carriage: rim, depth: 2 mm}  # a rim enters the carriage's bore
# calipers: 0.02 mm             # half-width of a reading, where it does not say its own
`;
}
