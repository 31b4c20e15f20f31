/** A motor plate to start from: a common motor under a frame, its screw on a thrust bearing. */
export const MOTOR_PLATE_START = `# What a motor is bolted to. Change the readings to your own, then: leadwright check FILE
# Bare numbers are mm, degrees, N and N·m; a unit may be written: 0.25 in, 1.2 kgf cm, 60 C.
# A line that is commented out is put in place by taking its # and the blank behind it away.

part: motor-plate
name: my-motor-plate            # letters, digits, - and _; it becomes a folder

motor:
  preset: frame-17              # frame-11, 14, 17, 23, 34; or its own square, pilot, screw and thread_depth
  # square: 31 mm               # side of the square on which its holes stand
  # pilot: 22 mm                # over the round of its face
  # thread_depth: 4.5 mm        # of the threads in its face; or flange: its thickness, where bolts go through
  length: 40 mm                 # of its body, without the shaft
  weight: 0.28 kgf
  shaft: {diameter: 5 mm, length: 24 mm}                # length from its face
  torque: 0.4 N m               # from its label
  temperature: 42 C             # of its face, after an hour of work

machine:
  holes: {rectangle: [60 mm, 60 mm], screw: M4}         # or count and circle, or free places: at
  face: motor                   # the face that lies on the machine: that of the motor, or the outer one
  thickness: 6 mm               # of what the bolts go through; gives their length
  # joint: insert               # screws from the machine into inserts
# slots: {along: x, by: 4 mm}   # each way, where a belt is to be set

drive: coupling                 # or belt, with belt_pull
coupling: flexible              # rigid, disc (between the shaft ends), flexible
hub_depth: 14 mm                # of shaft that goes into the coupling
mounting: motor-below           # motor-below, motor-above, horizontal
thrust_bearing: yes             # with a collar: then the load along the screw stays out of the motor
bearing_on: machine             # what that bearing stands in; plate: this one, which then carries the load

material: petg
printer: {nozzle: 0.4 mm, layer: 0.2 mm, hole_offset: 0.15 mm, compensation: file}

duty:
  load: 30 N                    # along the screw
  temperature: 25 C
`;
