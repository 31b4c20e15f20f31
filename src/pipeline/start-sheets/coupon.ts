/** A coupon to start from. */
export const COUPON_START = `# A coupon: print it once, type back what the calipers say, and every later part of that material fits.
# leadwright make FILE, print; leadwright new results FILE --to results.yaml, fill it in; leadwright calibrate results.yaml
# Bare numbers are mm; a unit may be written: 0.313 in, 5/16 in, 0.8 %.
# A line that is commented out is put in place by taking its # and the blank behind it away.

part: coupon
name: my-coupon                 # letters, digits, - and _; it becomes a folder

# What it is for: scale (shrink in X, Y and along Z), bores (holes and posts), thread (short nuts), pockets.
purposes: [scale, bores, thread]
screw: Tr8x2                    # the real screw, for the short nuts: a designation, or what was measured

# Material and printer as the later parts will have them; threads and pockets are drawn with these figures.
material: petg
printer: {nozzle: 0.4 mm, layer: 0.12 mm, hole_offset: 0.15 mm, compensation: file}

# Where the usual will not do:
# scale: {span: 50 mm, height: 40 mm}                  # height: 0 leaves the steps out, for speed
# bores: [4, 6, 8, 10]                                 # diameters of bores and posts
# thread: {steps: 5, diametral: 0.3 mm, axial: 0.1 mm, step: 0.05 mm, axial_step: 0.03 mm}
# pockets: {screw: M3, shaft: 5 mm, flat: 4.5 mm, steps: 3, step: 0.05 mm}
`;
