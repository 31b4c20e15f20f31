import { exactly, type Measured } from '../../units/measured.js';
import { missRead, playLeft } from '../common/bolting.js';
import { type FloatStop, floatIn } from '../common/float.js';
import { planeResidual } from '../common/residual.js';
import type { AdapterDesign } from './dimensions.js';
import { widest } from './seated-nut.js';

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

/**
 * How far a nut moves in its holes, less what the printed pattern may come out off; keys, and a single hole, have none that
 * could.
 */
export function leftInHoles(design: AdapterDesign): Measured {
  const { nut, input } = design;
  const { sideways } = floatStop(design);
  if (!nut || input.keys.length > 0 || nut.pattern.centres.length < 2) return sideways;
  const { spacing } = nut.pattern;
  return playLeft(sideways, missRead(spacing), planeResidual(design, spacing.likely));
}

/** Sideways, each way, until anything is met, at the sizes in use. */
export function finishedFloat(design: AdapterDesign): number {
  const { nut, layout } = design;
  const { bore, outerStep } = layout.plate;
  return Math.min(
    floatStop(design).sideways.likely,
    nut!.stands === 'through' ? (bore - nut!.body.likely) / 2 : Infinity,
    outerStep && nut!.seat === 'outside' ? (outerStep.diameter - widest(nut!.flange)) / 2 : Infinity,
  );
}
