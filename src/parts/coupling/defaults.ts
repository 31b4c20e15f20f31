/** Figures that a coupling starts from where its sheet does not say. Lengths in mm. @source common-practice */
export const COUPLING_DEFAULTS = {
  /** material that the inserts are printed from */
  insertMaterial: 'tpu95a',
  /** at each flank; the lobes are squeezed so that nothing plays */
  flankClearance: -0.03,
  /** between insert and the floor of either hub, at least */
  axialGap: 0.5,
  /** the jaws stay this far from the other hub's floor */
  tipGap: 0.3,
  /** ring of the insert from the jaws, and the insert from the hubs' outline */
  ringGap: 0.3,
  reachGap: 0.3,
  /** wall of the insert's ring */
  ringWall: 1.2,
  /** hole of the ring around the shafts that enter it, on the diameter */
  holeRoom: 0.6,
  /** room inside the jaws as a share of the outside */
  innerShare: 0.48,
  /** lobes as a share of lobe and jaw together, in their middle */
  lobeShare: 0.45,
  /** insert height as a share of the outside */
  heightShare: 0.38,
  /** hollow of a curved flank as a share of the lobe */
  hollowShare: 0.06,
  /** how much deeper the room inside the jaws is */
  recess: 0.4,
  chamfer: 0.4,
  /** what is left over the cone of a stop */
  stopFloor: 0.8,
  /** floor between the slit's end and the jaws */
  slitFloor: 2.4,
  discThickness: 3,
  /** engaged length over the shaft diameter */
  engagement: 1.6,
  /** jaw at its inner end */
  leastJaw: 0.9,
  misalignment: { angular: 0.3, parallel: 0.08, axial: 0.15 },
  /** speed up to which a printed hub with its screws runs quietly, rpm */
  quietSpeed: 1500,
} as const;
