/** A jaw coupling to start from: two shafts, a torque and a mounting are enough; the rest replaces what is worked out. */
export const COUPLING_START = `# A jaw coupling: two hubs and the rubber between them. Change the readings to your own, then: leadwright check FILE
# Bare numbers are mm, degrees, N and N·m; a unit may be written: 0.25 in, 1.2 kgf cm, 60 C.
# A line that is commented out is put in place by taking its # and the blank behind it away.

part: coupling
name: my-coupling               # letters, digits, - and _; it becomes a folder

motor:
  shaft: {diameter: 5 mm, flat: 4.5 mm, flat_length: 15 mm}   # flat: over the flat of a D shaft; motor: frame-17 has both
  torque: 0.3 N m               # holding torque; a grip that keeps half as much again never slips
  axial_limit: 15 N             # what its bearing may carry along the shaft, from its data
  temperature: 65 C             # of its shaft, after an hour of work
# Other shafts: {diameter: 10 mm, flats: 9 mm}, {form: keyed, diameter: 14 mm}, {across_flats: 8 mm}, 0.25 in

screw: {designation: Tr8x2, major: 7.95 ± 0.03 mm}      # held over its crests
# turned_end: 6 mm              # of the screw, held in place of its crests; shaft: 8 mm for a plain shaft

# motor-below: the screw stands on the motor. motor-above: it hangs, which a jaw coupling never carries.
mounting: motor-below           # motor-below, motor-above, horizontal
thrust_bearing: no              # yes: a bearing and a collar carry the screw along its axis
# locating_holder: yes          # a holder at the other end of the screw carries it along its axis

# Plastic gives under a clamp: washers spread its force, and a second tightening (cold, after the first hot day) brings
# much of it back. yes counts on it, and writes it on the workshop card.
retighten: yes
motor_hub: {clamp: {screw: M3, count: 1, washers: yes}, bore_clearance: 0.02 mm, degreased: yes}     # grip: clamp, set-screw, both
screw_hub: {clamp: {screw: M3, count: 1, washers: yes}, degreased: yes}   # degreased: no grease left where it is held

insert:
  material: tpu95a              # leadwright presets material lists them
  hardness: 95 Shore A
  pad: disc                     # what both shaft ends stand on: disc, ball, soft, none
  flank_clearance: -0.03 mm     # at each flank; below 0 the lobes are squeezed and nothing plays

material: pc                    # of the hubs; nylon loses its grip on a hot motor
printer: {nozzle: 0.4 mm, layer: 0.16 mm, hole_offset: 0.15 mm, compensation: file}

duty:
  load: 12 N                    # along the screw
  upward: 0 N                   # with which the work lifts a standing screw, such as a cutter that pulls
  span: 250 mm                  # free length of the screw: it has a weight too
  temperature: 25 C             # around the coupling
  speed: 300                    # rpm
  starts: 60                    # starts and reversals an hour
  shock: none                   # none, light, medium, heavy
  reversing: yes                # no: it turns one way under load, so that a flat may carry

# The rest, for those who want it:
# A bought hub: leave its shaft out and give outside and jaws as measured; without either shaft only the insert is made.
# hubs: {outside_diameter: 30 mm}
# jaws: {count: 3, flank: straight}                          # straight, curved; height, width, inner, draft, fillet, bevel
# misalignment: {angular: 0.3 deg, parallel: 0.08 mm, axial: 0.15 mm}
`;

/** The rubber alone, between two hubs that were bought. */
export const INSERT_START = `# The rubber between two bought hubs. Change the readings to your own, then: leadwright check FILE
# Bare numbers are mm, degrees, N and N·m; a unit may be written: 0.25 in, 1.2 kgf cm, 60 C.
# A line that is commented out is put in place by taking its # and the blank behind it away.

part: coupling
name: my-insert                 # letters, digits, - and _; it becomes a folder

# The hubs, measured; without either shaft only the insert is made.
hubs: {outside_diameter: 25 mm}  # over the jaws
# count the jaws of one hub; height: with the depth rod, from the tip of a jaw to the floor between jaws; width: across a jaw,
# halfway between its inner end and the outside; inner: the room inside the jaws (docs/coupling.md says how to measure it)
jaws: {count: 3, height: 8 mm, width: 7 mm, inner: 12 mm}

motor:
  torque: 0.4 N m               # holding torque
  temperature: 50 C             # of its shaft, after an hour of work
mounting: horizontal            # motor-below, motor-above, horizontal

insert:
  material: tpu95a              # leadwright presets material lists them
  hardness: 95 Shore A
  # pad: none                   # what both shaft ends stand on: disc, ball, soft, none
  # flank_clearance: -0.03 mm   # at each flank; below 0 the lobes are squeezed and nothing plays

printer: {nozzle: 0.4 mm, layer: 0.16 mm, hole_offset: 0.15 mm, compensation: file}

duty:
  load: 0 N                     # along the screw
  temperature: 25 C             # around the coupling
  speed: 300                    # rpm
  starts: 60                    # starts and reversals an hour
  shock: none                   # none, light, medium, heavy

# misalignment: {angular: 0.3 deg, parallel: 0.08 mm, axial: 0.15 mm}
`;
