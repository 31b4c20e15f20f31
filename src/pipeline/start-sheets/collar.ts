/** A collar to start from: the screw's own thread and a pin, on a thrust bearing. */
export const COLLAR_START = `# A collar that carries a standing screw on a thrust bearing. Change the readings to your own, then: leadwright check FILE
# Bare numbers are mm, degrees, N and N·m; a unit may be written: 0.25 in, 1.2 kgf, 60 C.
# A line that is commented out is put in place by taking its # and the blank behind it away.

part: collar
name: my-collar                 # letters, digits, - and _; it becomes a folder

screw: {designation: Tr8x2, major: 7.95 ± 0.03 mm}
#                               # shaft: 8 mm in its place for a plain shaft, which is held by friction (bore: plain)
mounting: motor-above           # motor-below, motor-above (the screw hangs), horizontal

# Friction in plastic alone never holds a standing screw: its flanks do, and a pin keeps the collar from turning off.
bore: thread                    # plain holds by friction: for level screws and shafts, or in front of a metal collar
pin: 1.5 mm                     # spring pin through collar and screw, drilled at the bench
# form: halves                  # two halves, put on from the side; slit: pushed on from the end
# fit: close                    # left out: closer still, since the slit opens for the screw and the clamp closes it
# backed_by: metal-collar       # a bought clamp collar behind this one carries what pulls
# pair: yes                     # a second one on a bearing of its own holds a level screw the other way

bearing: F8-16                  # or 51100, AXK0821 ...; or {bore: 8 mm, outside: 16 mm, height: 5 mm}

motor: {torque: 0.2 N m}        # holding torque: it pushes on the collar when the axis jams

material: pc                    # nylon and PETG give sooner where it is warm
printer: {nozzle: 0.4 mm, layer: 0.16 mm, hole_offset: 0.15 mm, compensation: file}

duty:
  load: 30 N                    # along the screw: on a standing axis the weight that hangs on it
  upward: 0 N                   # with which the work lifts the screw, such as a drill that is pushed
  span: 300 mm                  # length of the screw: it has a weight too
  temperature: 35 C             # on a motor plate that of the motor's face
`;
