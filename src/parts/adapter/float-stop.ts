import { exactly } from '../../units/measured.js';
import { type FloatStop, floatIn } from '../common/float.js';
import type { AdapterDesign } from './dimensions.js';

/** Where a floating nut is stopped: by what stands in its holes, or by the ends of its keys. */
export function floatStop({ nut, float, spacers, input }: AdapterDesign): FloatStop {
  const [key] = input.keys;
  if (key) return { sideways: exactly(float!), radius: key.size[0] / 2 };
  const { diameter, screwDiameter, centres } = nut!.pattern;
  return {
    sideways: floatIn(diameter, spacers?.pin ?? screwDiameter),
    radius: Math.max(...centres.map((centre) => Math.hypot(...centre))),
  };
}

/** Sideways, each way, until anything is met, at the sizes in use. */
export function finishedFloat(design: AdapterDesign): number {
  const { nut, layout } = design;
  const { bore, outerStep } = layout.plate;
  return Math.min(
    floatStop(design).sideways.likely,
    nut!.stands === 'through' ? (bore - nut!.body.likely) / 2 : Infinity,
    outerStep && nut!.seat === 'outside' ? (outerStep.diameter - nut!.flange.size[0]) / 2 : Infinity,
  );
}
