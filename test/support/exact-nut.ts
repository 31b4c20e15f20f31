/** A Tr10x2 of which every size was read exactly. */
export const EXACT_SCREW = {
  designation: 'Tr10x2',
  major: '10 ± 0 mm',
  pitch: '2 ± 0 mm',
  pitch_diameter: '9 ± 0 mm',
  minor: '7.5 ± 0 mm',
} as const;

/** All that spreads a fit left out; what layers take off a flank is counted still. */
export const LAYERS_ALONE = {
  shrink: 'off',
  hole_offset: 'off',
  facets: 'off',
  layers: 'on',
  first_layer: 'off',
  moisture: 'off',
  temperature: 'off',
} as const;

/** A nut for that screw, 0.3 and 0.1 mm of room, no effect but that of the layers: a play of 0.1 + 0.3 · tan 15° = 0.18038 mm. */
export const EXACT_NUT = {
  screw: EXACT_SCREW,
  material: { shrink: { plane: '0 ± 0 %', axial: '0.6 ± 0 %' } },
  effects: LAYERS_ALONE,
} as const;
