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
  /** jaws that would break are lowered down to this: their foot bears less, their lobes more, which carry far below what they may */
  leastHeightShare: 0.25,
  /**
   * Fillet at the foot of a jaw as a share of half the lobe between, at most of the jaw's height. Tried were 0.45, 0.8, 1.0,
   * 1.2 and 1.5 mm on an outside of 20 mm, whose jaws are 4.95 mm wide and 7.5 high and half a lobe 1.8: the notch is 1.95, 1.66,
   * 1.55, 1.48 and 1.39, and the jaw is the stronger the rounder its foot. But the insert stands off both floors by it: lobes carry
   * 5, 9, 13 and 19 % more than at 0.45 mm, and the coupling grows by 0.7, 1.1, 1.5 and 2.1 mm, which the shafts must reach
   * through. A half (0.9 mm there, 1.35 on 31 mm) takes 0.35 of the notch; as much length again would take 0.2.
   */
  fillet: { ofHalfLobe: 0.5, ofHeight: 0.125 },
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
