/** An end holder to start from: a ball bearing for the far end of a long screw that lies. */
export const END_HOLDER_START = `# What the far end of a screw runs in. Change the readings to your own, then: leadwright check FILE
# Bare numbers are mm, degrees, N and N·m; a unit may be written: 0.25 in, 1.2 kgf cm, 60 C.
# A line that is commented out is put in place by taking its # and the blank behind it away.

part: end-holder
name: my-end-holder             # letters, digits, - and _; it becomes a folder
role: guiding                   # free: a guard ring, touches nothing; guiding: sideways alone; locating: along the screw too

screw: {designation: Tr8x2, major: 7.85 ± 0.03 mm}
# turned_end: 6 mm              # of the screw, held in place of its crests
bearing: 608                    # by ISO 15; F608: with a flange; or {bore: 8 mm, outside: 22 mm, width: 7 mm}; without it a plain bush
held_by: plate                  # press: the pocket alone holds it; plate: a printed plate over it; lip: it snaps in
# fit: {pocket: 21.97 ± 0.02 mm}                        # as measured on the first print

holes: {rectangle: [32 mm, 32 mm], screw: M4}           # to the frame
frame: {thickness: 5 mm}        # what the bolts go through; gives their length

mounting: horizontal            # motor-below, motor-above, horizontal
coupling: flexible              # at the motor: rigid, disc (between the shaft ends), flexible
thrust_bearing: yes             # at the motor end, with a collar: one place carries the screw along its axis, no more
nut: rigid                      # rigid on its carriage, or floating
runout: 0.04 mm                 # of the screw at this end: half of what a dial shows in a turn
nut_gap: 70 mm                  # from nut to holder at the end of travel
end_room: 3 mm                  # along the screw, before something stops its end

material: petg
printer: {nozzle: 0.4 mm, layer: 0.2 mm, hole_offset: 0.15 mm, compensation: file}

duty:
  load: 20 N                    # along the screw
  span: 500 mm                  # free length of the screw
  feed: 10 mm/s
  temperature: 30 C
`;
