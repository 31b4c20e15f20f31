import type { Tunable } from '../../judge/advice.js';
import { BRIDGING_TUNABLE, floatTunables, LAYER_TUNABLE, NOZZLE_TUNABLE } from '../common/tunables.js';
import type { NutDesign } from './dimensions.js';

const mm = { unit: 'mm' } as const;

/** Fields of a nut's sheet that advice may change, each with the range in which it makes sense. */
export const NUT_TUNABLES: readonly Tunable<NutDesign>[] = [
  { ...mm, path: 'fit.diametral', least: 0, most: 1, step: 0.01, grain: 0.1, now: ({ fit }) => fit.diametral },
  { ...mm, path: 'fit.axial', least: 0, most: 0.6, step: 0.01, grain: 0.05, now: ({ fit }) => fit.axial },
  { ...mm, path: 'body.length', least: 4, most: 120, step: 0.5, grain: 3, now: ({ finished }) => finished.length },
  { ...mm, path: 'body.diameter', least: 4, most: 100, step: 0.1, grain: 1, now: (design) => across(design, true) },
  {
    ...mm,
    path: 'body.across_flats',
    least: 4,
    most: 100,
    step: 0.1,
    grain: 1,
    now: (design) => across(design, false),
  },
  { ...mm, path: 'body.width', least: 4, most: 100, step: 0.1, grain: 1, now: (design) => across(design, false) },
  {
    ...mm,
    path: 'flange.diameter',
    least: 6,
    most: 200,
    step: 0.5,
    grain: 2,
    now: (design) => flange(design, 'round'),
  },
  { ...mm, path: 'flange.width', least: 6, most: 200, step: 0.5, grain: 2, now: (design) => flange(design, 'square') },
  {
    ...mm,
    path: 'flange.thickness',
    least: 1,
    most: 20,
    step: 0.2,
    grain: 1,
    now: ({ finished }) => finished.flange?.thickness,
  },
  {
    ...mm,
    path: 'holes.diameter',
    least: 1,
    most: 14,
    step: 0.05,
    grain: 0.2,
    now: ({ holes }) => holes?.diameter.likely,
  },
  { ...mm, path: 'holes.circle', least: 4, most: 200, step: 0.1, grain: 1, now: ({ holes }) => holes?.spacing.likely },
  { ...mm, path: 'lead_in', least: 0, most: 2, step: 0.05, grain: 0.2, now: ({ finished }) => finished.leadIn },
  { ...mm, path: 'fillet', least: 0, most: 5, step: 0.05, grain: 0.3, now: ({ finished }) => finished.fillet },
  ...floatTunables<NutDesign>(({ float }) => float),
  LAYER_TUNABLE,
  NOZZLE_TUNABLE,
  BRIDGING_TUNABLE,
  { unit: 'mm/s', path: 'duty.feed', least: 1, most: 200, step: 0.5, grain: 5, now: ({ duty }) => duty.feed },
];

function across({ finished: { body } }: NutDesign, round: boolean): number | undefined {
  return (body.shape === 'round') === round ? body.across : undefined;
}

function flange({ finished }: NutDesign, shape: 'round' | 'square'): number | undefined {
  return finished.flange?.shape === shape ? finished.flange.size[0] : undefined;
}
