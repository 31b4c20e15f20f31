/** A sleeve to start from: a rigid clamp between two shafts; the bush is shown beside it. */
export const SLEEVE_START = `# A sleeve for shafts that do not match. Change the readings to your own, then: leadwright check FILE
# Bare numbers are mm, degrees, N and N·m; a unit may be written: 0.25 in, 1.2 kgf cm, 60 C.

part: sleeve
name: my-sleeve                 # letters, digits, - and _; it becomes a folder
form: clamp                     # clamp: joins two shafts rigidly; bush: fills a bore that is too large

motor:
  shaft: {diameter: 5 mm, flat: 4.5 mm, flat_length: 15 mm}
  torque: 0.3 N m               # holding torque; the sleeve is sized for half as much again
  temperature: 65 C             # of its shaft, after an hour of work

screw: {designation: Tr8x2, major: 7.95 ± 0.03 mm}      # held over its crests; shaft: 8 mm for a plain end
offset: 0.03 mm                 # by which the shafts are out of line; a rigid sleeve takes none of it

# For a bush, in place of motor and screw:
#   form: bush
#   shaft: 5 mm                 # the shaft
#   bore: 8 mm                  # the bore it is to fill
#   length: 12 mm

material: pa12
printer: {nozzle: 0.4 mm, layer: 0.16 mm, hole_offset: 0.15 mm, compensation: file}

duty:
  load: 20 N                    # along the screw
  temperature: 25 C
`;
