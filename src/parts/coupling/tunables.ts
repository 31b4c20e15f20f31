import type { Tunable } from '../../judge/advice.js';
import { boreClearanceTunable, LAYER_TUNABLE, NOZZLE_TUNABLE } from '../common/tunables.js';
import type { CouplingDesign, Hub, HubName } from './dimensions.js';
import { type JawPlan, jawWidth } from './jaws.js';

const mm = { unit: 'mm' } as const;

/** Fields of a coupling's sheet that advice may change, each with the range in which it makes sense. */
export const COUPLING_TUNABLES: readonly Tunable<CouplingDesign>[] = [
  {
    ...mm,
    path: 'hubs.outside_diameter',
    least: 10,
    most: 120,
    step: 0.5,
    grain: 2,
    now: madeJaws(({ outer }) => 2 * outer),
  },
  ...ofHub('motor_hub', 'motor-hub'),
  ...ofHub('screw_hub', 'screw-hub'),
  { ...mm, path: 'jaws.height', least: 2, most: 60, step: 0.5, grain: 1, now: madeJaws(({ height }) => height) },
  {
    ...mm,
    path: 'jaws.width',
    least: 1,
    most: 60,
    step: 0.1,
    grain: 0.5,
    now: madeJaws(widthOf),
  },
  { ...mm, path: 'jaws.fillet', least: 0, most: 5, step: 0.1, grain: 0.3, now: madeJaws(({ fillet }) => fillet) },
  { ...mm, path: 'jaws.bevel', least: 0, most: 5, step: 0.1, grain: 0.3, now: madeJaws(({ bevel }) => bevel) },
  {
    ...mm,
    path: 'insert.flank_clearance',
    least: -0.3,
    most: 1,
    step: 0.01,
    grain: 0.05,
    now: ({ insert }) => insert.flankClearance,
  },
  {
    ...mm,
    path: 'insert.height',
    least: 2,
    most: 60,
    step: 0.5,
    grain: 1,
    now: ({ insert }) => insert.finished.height,
  },
  LAYER_TUNABLE,
  NOZZLE_TUNABLE,
];

function ofHub(section: 'motor_hub' | 'screw_hub', name: HubName): Tunable<CouplingDesign>[] {
  const hub = ({ hubs }: CouplingDesign): Hub | undefined => hubs.find((one) => one.name === name);
  return [
    {
      ...mm,
      path: `${section}.length`,
      least: 4,
      most: 150,
      step: 0.5,
      grain: 2,
      now: (design) => hub(design)?.finished.length,
    },
    boreClearanceTunable(section, (design) => hub(design)?.clearance),
  ];
}

/** At the middle of the jaw, as the sheet gives it. */
function widthOf(plan: JawPlan): number {
  return jawWidth(plan, (plan.inner + plan.outer) / 2);
}

/** Jaws and outside that must fit a bought half are as they are. */
function madeJaws(of: (jaws: JawPlan) => number) {
  return ({ jaws, skipped }: CouplingDesign) => (skipped.length > 0 ? undefined : of(jaws));
}
