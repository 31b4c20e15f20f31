/** Gauge rings to start from. */
export const GAUGE_START = `# Gauge rings to try on a screw before its nut is printed. Change the readings to your own, then: leadwright check FILE
# Bare numbers are mm; a unit may be written: 0.25 in.
# A line that is commented out is put in place by taking its # and the blank behind it away.

part: gauge
name: my-rings                  # letters, digits, - and _; it becomes a folder

screw: {designation: Tr8x2, major: 7.95 ± 0.03 mm}
plays: {from: 0.1 mm, to: 0.4 mm, step: 0.05 mm}        # play along the axis, engraved in hundredths
turns_play: 0.1 mm              # of the ring of two turns, which tells the diameter, and of ten, which tells the pitch

material: pa12                  # what the nut will be printed of, and how
printer: {nozzle: 0.4 mm, layer: 0.12 mm, hole_offset: 0.15 mm, compensation: file}
`;
