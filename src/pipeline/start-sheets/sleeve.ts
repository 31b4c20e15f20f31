/** A sleeve to start from: a rigid clamp between two shafts. */
export const SLEEVE_START = `# A sleeve for shafts that do not match. Change the readings to your own, then: leadwright check FILE
# Bare numbers are mm, degrees, N and N·m; a unit may be written: 0.25 in, 1.2 kgf cm, 60 C.
# A line that is commented out is put in place by taking its # and the blank behind it away.

part: sleeve
name: my-sleeve                 # letters, digits, - and _; it becomes a folder
form: clamp                     # joins two shafts rigidly; a bush that fills a bore: leadwright new bush

motor:
  shaft: {diameter: 5 mm, flat: 4.5 mm, flat_length: 15 mm}
  torque: 0.3 N m               # holding torque; a grip that keeps half as much again never slips
  axial_limit: 60 N             # what its bearing may carry along the shaft, from its data
  temperature: 65 C             # of its shaft, after an hour of work

screw: {designation: Tr8x2, major: 7.95 ± 0.03 mm}      # held over its crests
# turned_end: 6 mm              # of the screw, held in place of its crests; shaft: 8 mm for a plain shaft
mounting: motor-above           # motor-below, motor-above (the screw hangs), horizontal
thrust_bearing: yes             # a bearing and a collar carry the screw; no: the sleeve does, and slips when the axis jams
offset: 0.03 mm                 # by which the shafts are out of line; a rigid sleeve takes none of it

# Plastic gives under a clamp: washers spread its force, and a second tightening (cold, after the first hot day) brings
# much of it back. yes counts on it, and writes it on the workshop card.
retighten: yes
length: 34 mm                   # the crests of a screw are a third of its bore: longer, so that they do not sink in
motor_end: {clamp: {screw: M3, count: 1, washers: yes}, bore_clearance: 0.02 mm, degreased: yes}
screw_end: {clamp: {screw: M3, count: 1, washers: yes}, degreased: yes}   # degreased: no grease left where it is held

material: pc                    # nylon loses its grip on a hot motor
printer: {nozzle: 0.4 mm, layer: 0.16 mm, hole_offset: 0.15 mm, compensation: file}

duty:
  load: 20 N                    # along the screw
  upward: 0 N                   # with which the work lifts the screw
  span: 250 mm                  # free length of the screw: it has a weight too
  temperature: 25 C
  shock: none                   # none, light, medium, heavy
`;

/** A bush to start from. */
export const BUSH_START = `# A bush: it fills the bore of a hub that is too large. Change the readings to your own, then: leadwright check FILE
# Bare numbers are mm; a unit may be written: 0.25 in, 60 C.

part: sleeve
name: my-bush                   # letters, digits, - and _; it becomes a folder
form: bush                      # a clamp that joins two shafts: leadwright new sleeve

shaft: 5 mm                     # the shaft
bore: 8 mm                      # the bore it is to fill
length: 12 mm

motor: {temperature: 40 C}      # of the shaft, where a motor turns it
material: petg                  # leadwright presets material lists them
printer: {nozzle: 0.4 mm, layer: 0.16 mm, hole_offset: 0.15 mm, compensation: file}

duty:
  temperature: 25 C
`;
