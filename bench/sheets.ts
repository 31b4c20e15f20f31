/** The nut that the figures are about: 15 mm long, for an 8 mm screw, flange and four holes. */
export function benchNut(
  changes: { readonly screw?: string; readonly length?: number; readonly axial?: number } = {},
): object {
  return {
    part: 'nut',
    name: 'bench',
    screw: changes.screw ?? 'Tr8x2',
    body: { diameter: 14, length: changes.length ?? 15 },
    flange: { diameter: 32, thickness: 4 },
    holes: { count: 4, circle: 23, start: 45, screw: 'M3', head: 'flange' },
    // long nuts want more axial play than the class gives, or they are refused
    fit: { diametral: 0.3, axial: changes.axial ?? 0.2 },
    material: 'pla',
    printer: { nozzle: 0.4, layer: 0.12, compensation: 'file' },
  };
}

/** A coupon of all purposes for the same screw. */
export function benchCoupon(): object {
  return {
    part: 'coupon',
    name: 'bench',
    screw: 'Tr8x2',
    purposes: ['scale', 'bores', 'thread', 'pockets'],
    material: 'pla',
    printer: { nozzle: 0.4, layer: 0.12, compensation: 'file' },
  };
}
