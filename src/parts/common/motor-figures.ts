/** Angle between shafts that a coupling takes, by how it gives, degrees. @source common-practice */
export const COUPLING_ANGLE = { flexible: 1, disc: 0.5, rigid: 0.1 } as const;
