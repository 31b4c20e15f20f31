/** A fleet to start from: two kinds of machine, what they share, and what each measures for itself. */
export const FLEET_START = `# A fleet: one file for a row of machines. Change it to your own, then: leadwright fleet FILE --dry-run, leadwright fleet FILE
# Parts may lie in sheets of their own (sheet: my-nut.yaml) or be written here (part: {...}).

fleet: my-fleet                 # letters, digits, - and _; it becomes a folder

# Fields for every part whose own sheet does not give them.
defaults:
  printer: {nozzle: 0.4 mm, layer: 0.12 mm, hole_offset: 0.15 mm, compensation: file}

# Material and printer by name, for profile: NAME; a measured profile beside this file may be named as well.
profiles:
  sliding:
    material: pa12
    printer: {nozzle: 0.4 mm, layer: 0.12 mm, hole_offset: 0.15 mm, compensation: file}

kinds:
  lift:                         # every machine of this kind gets these parts
    parts:
      nut-left: &nut
        axis: lift              # the nuts of one axis are compared: lead, hand, clearance
        part:
          part: nut
          name: lift-nut          # the name of the part where there is none: nut-left
          screw: Tr8x2
          profile: sliding
          body: {shape: round, diameter: 16 mm, length: 17 mm}
          flange: {shape: round, diameter: 35 mm, thickness: 7 mm}
          holes: {count: 4, circle: 25 mm, start: 45 deg, screw: M3, head: flange}
          mounting: flange-up
          fit: running
          duty:
            axis: vertical
            load: 20 N
            moving: 10 %
            temperature: 25 C
            grease: greased
            feed: 5 mm/s
            motor: {steps: 200, microsteps: 16, torque: 0.15 N m}
            span: 250 mm
            ends: fixed-free
      nut-right: *nut
  press:
    needs: [nut]                # what a machine of this kind must have
    # motor: {shaft: 5 mm}      # the bores of its couplings are compared with it; a frame by name: motor: frame-17

groups:
  hall: {with: {duty: {temperature: 30 C}}}     # replaces fields of every part that has them

machines:
  lift-1: {kind: lift}
  lift-2:
    kind: lift
    group: hall
    parts:
      nut-left: {with: {screw: {major: 7.92 ± 0.02 mm}}}      # this screw was measured
      nut-right: {with: {screw: {major: 7.92 ± 0.02 mm}}}
  press-1:
    kind: press
    parts:
      nut:
        quantity: 2             # one to spare
        part:
          part: nut
          screw: Tr8x2
          material: petg
          body: {shape: square, across_flats: 20 mm, length: 16 mm}

# Machines may also stand in a spreadsheet, one row a part: machine, kind, group, role, sheet, quantity, axis, and
# fields by their paths, such as screw.major. rows: machines.csv
`;
