/** An axis to start from: what the parts share, the lengths along the screw, and a section for each part. */
export const AXIS_START = `# An axis: one screw, its motor, and the parts that go with them. What is said here holds for all; each part has a section
# of its own, as in its own sheet, and what that says goes before. Change the readings to your own, then: leadwright check FILE
# Bare numbers are mm, degrees, N and N·m; a unit may be written: 0.25 in, 1.2 kgf cm, 60 C.
# A line that is commented out is put in place by taking its # and the blank behind it away.

part: axis
name: my-axis                   # letters, digits, - and _; it becomes a folder, with one in it for each part

screw: {designation: Tr8x2, major: 7.95 ± 0.03 mm}      # as leadwright identify names it
motor:
  shaft: {diameter: 5 mm, flat: 4.5 mm, flat_length: 15 mm, length: 24 mm}   # length: what stands out and can enter the hub
  torque: 0.15 N m
  axial_limit: 40 N             # what its bearing may carry along the shaft, from its data
  temperature: 55 C             # of its shaft, after an hour of work
  steps: 200                    # full steps a turn
  microsteps: 16                # as the driver is set
mounting: motor-below           # motor-below, motor-above, horizontal
# thrust_bearing: yes           # a bearing and a collar at the motor end carry the screw along its axis

lengths:                        # along the screw, from the face that the motor's shaft stands out of
  clear: 300 mm                 # to the nearest face at the far end: of the end holder, or of the frame before it
  far_face: holder              # which of both that is: holder, frame
  moving: 17 mm                 # of all that moves, from its first face to its last: carriage, nut and plate
  travel: 200 mm                # that the machine must keep
  beyond: 20 mm                 # free behind the end holder
  # screw: 290 mm               # of one that is there; left out, the length to order is worked out
  # start: 60 mm                # where the nut may come first, where more than the coupling is in its way

old: {screw: Tr8x8(P2), steps_per_mm: 400}              # what the controller is set for now

material: pc
printer: {nozzle: 0.4 mm, layer: 0.12 mm, hole_offset: 0.15 mm, compensation: file}

duty:
  load: 20 N                    # along the screw; on an upright axis its weight
  upward: 0 N                   # with which the work lifts a standing screw
  moving: 10 %
  on_time: 6 s
  cycle: 60 s
  temperature: 25 C
  grease: greased               # dry, greased
  feed: 6 mm/s

parts:                          # a section a part, by the name that its folder gets; part: where the name is no kind
  nut:
    body: {shape: round, diameter: 16 mm, length: 17 mm}
    flange: {shape: round, diameter: 35 mm, thickness: 7 mm}
    holes: {count: 4, circle: 25 mm, start: 45 deg, screw: M3, diameter: 3.9 mm, head: flange}
    carriage: {bore: 18 mm, thickness: 6 mm}
    mounting: flange-up
    fit: running
    material: pa12              # in place of that above
    printer: {nozzle: 0.4 mm, layer: 0.08 mm, hole_offset: 0.15 mm, compensation: file}
  coupling:
    retighten: yes
    motor_hub: {clamp: {screw: M3, count: 1, washers: yes}, bore_clearance: 0.02 mm, degreased: yes}
    screw_hub: {clamp: {screw: M3, count: 1, washers: yes}, degreased: yes}
    insert: {material: tpu95a, hardness: 95 Shore A, pad: disc}
    duty: {starts: 60, shock: light}
  end-holder:
    role: free                  # a guard ring; guiding: carries sideways; locating: along the screw too
    holes: {rectangle: [36 mm, 36 mm], screw: M4, fit: coarse}
    frame: {thickness: 6 mm}
    runout: 0.2 mm              # half of what a dial shows in a turn
`;
