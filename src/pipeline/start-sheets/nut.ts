/** A drive nut to start from: everything that is usually measured, with what it means beside it. */
export const NUT_START = `# A drive nut. Change the readings to your own, then: leadwright check FILE, leadwright make FILE
# Bare numbers are mm, degrees, N and N·m; a unit may be written: 0.313 in, 5/16 in, 20 kgf, 0.8 %.

part: nut
name: my-nut                    # letters, digits, - and _; it becomes a folder

# The screw: a designation is enough (Tr8x2, Tr8x8(P2), Tr10x2-LH, Acme 3/8-10, M8); what you measure replaces its own.
screw:
  designation: Tr8x2
  major: 7.95 ± 0.03 mm         # over the crests, with calipers
  hand: right                   # right: it climbs to the right, seen from the side
# With no designation, give these instead:
#   form: trapezoidal           # trapezoidal 30°, acme 29°, metric-v 60°; or flank_angle: 15 deg
#   crests: {count: 10, length: 20.05 mm}    # ten pitches, from one edge to the same edge; or pitch: 2 mm
#   starts: 1                   # or travel: {turns: 10, length: 20 mm}, what ten turns move; or lead: 2 mm

body: {shape: round, diameter: 14 mm, length: 15 mm}            # square, hexagon: across_flats; length with the flange
flange: {shape: round, diameter: 32 mm, thickness: 5 mm}        # none, round, square, rectangular, two-ear
holes: {count: 4, circle: 23 mm, start: 45 deg, screw: M3, fit: coarse, head: flange}    # head: the side of the screw heads

# What it is mounted to, when known:
# carriage: {bore: 14.4 mm, thickness: 6 mm}
mounting: flange-down           # where the flange is on the machine: flange-up, flange-down

# Other kinds of nut (clamped, anti-backlash and split want a wider body):
# family: {kind: split}         # halves to mount without taking the screw out
# family: {kind: clamped}       # a slit and one adjusting screw
# family: {kind: anti-backlash, spring: {inside: 16 mm, outside: 19 mm, free: 20 mm, solid: 7 mm, rate: 3}}    # rate in N/mm
# family: {kind: holder, nut: {across_flats: 13 mm, height: 6.5 mm}}   # a pocket for a bought nut in place of the thread
# catch_nut: {across_flats: 13 mm, height: 6.5 mm}    # a metal nut that stands by, in case the printed thread fails

fit: running                    # close, running, loose; or {diametral: 0.3 mm, axial: 0.1 mm}
material: petg                  # leadwright presets material lists them
printer: {nozzle: 0.4 mm, layer: 0.12 mm, hole_offset: 0.15 mm, compensation: file}

duty:
  axis: vertical                # vertical, horizontal
  load: 25 N                    # along the screw
  on_time: 10 s                 # in motion, in one go
  cycle: 100 s                  # from one start to the next: a nut that rests bears more
  temperature: 25 C             # around the part
  grease: greased               # dry, greased; regrease: yes where it is put on again and again
  dust: no                      # grit, chips or fibres around the screw: yes, no
  feed: 10 mm/s
  motor: {steps: 200, microsteps: 16, torque: 0.4 N m}
  span: 320 mm                  # free length of the screw
  ends: fixed-free              # fixed-free, supported, fixed-supported, fixed-fixed
  layer_heights: [0.1 mm, 0.2 mm]
`;
