import { trapezoidalClearance } from '../../standards/threads/trapezoidal.js';
import { pitchDiameterOverWires, steepLeadDoubt } from '../../standards/three-wire.js';
import { type LeastRoot, leastRoot, leastRootOf } from '../../standards/tolerances/least-root.js';
import { plain } from '../../units/format.js';
import { exactly, type Measured, plusMinus, shifted, widened } from '../../units/measured.js';
import { measured } from '../measured-field.js';
import type { Given } from './given.js';
import type { ScrewForm } from './screw-form.js';
import { toothSpread } from './screw-in-hand.js';

/** What a screw's other diameters are worked out from. */
interface Crest {
  readonly major: Measured;
  readonly pitch: Measured;
  readonly form: ScrewForm;
}

/** As it was read over the crests, or that of the designation. */
export function majorOf({ sheet, named, instrument }: Given): Measured {
  return sheet.major ? measured(sheet.major, instrument) : exactly(named!.major);
}

/** As it was read, over wires or otherwise; that of the designation; or the crest's less what the form says. */
export function pitchDiameterOf(
  given: Given,
  { major, pitch, form, flankAngle, lead }: Crest & { readonly flankAngle: number; readonly lead: number },
): Measured {
  const { sheet, named, instrument, assumptions } = given;
  if (sheet.pitch_diameter) return measured(sheet.pitch_diameter, instrument);
  if (sheet.wires) {
    const { wire, over } = sheet.wires;
    const diameter = pitchDiameterOverWires({ flankAngle, pitch: pitch.likely, lead, wire, over: over.value });
    const { least, likely, most } = plusMinus(diameter, over.half ?? instrument);
    return { least, likely, most: most + steepLeadDoubt({ wire, lead, pitchDiameter: diameter }) };
  }
  if (named) {
    assumptions.note('screw.pitch_diameter', plain(named.pitchDiameter), `basic size of ${named.text}`);
    return exactly(named.pitchDiameter);
  }
  const depth = form === 'metric-v' ? 0.6495 : 0.5;
  const estimate = widened(shifted(major, -depth * pitch.likely), toothSpread(pitch.likely));
  assumptions.note(
    'screw.pitch_diameter',
    plain(estimate.likely),
    `major − ${depth} × pitch, ± ${plain(toothSpread(pitch.likely), 2)} mm since crest and flank are made apart; three wires would tell`,
  );
  return estimate;
}

/** As it was read; that of the designation, where nothing else was read; or the crest's less the form's depth. */
export function minorOf({ sheet, named, instrument, assumptions }: Given, { major, pitch, form }: Crest): Measured {
  if (sheet.minor) return measured(sheet.minor, instrument);
  if (named && !sheet.major && !sheet.pitch && !sheet.crests) {
    assumptions.note('screw.minor', plain(named.minor), `basic size of ${named.text}`);
    return exactly(named.minor);
  }
  const root = shifted(major, -rootDepth(form, pitch.likely));
  assumptions.note('screw.minor', plain(root.likely), 'from the form');
  return root;
}

/** Diametral depth of a screw's thread, crest to root, from its form. */
function rootDepth(form: ScrewForm, pitch: number): number {
  if (form === 'metric-v') return 1.226869 * pitch;
  if (form === 'acme') return pitch + (pitch >= 2.54 - 1e-9 ? 0.508 : 0.254);
  return pitch + 2 * trapezoidalClearance(pitch);
}

/** A root that was measured is as thin as it may be; another is as thin as its class allows. */
export function thinnestRoot(
  { sheet, named }: Given,
  { minor, pitch, form }: { readonly minor: Measured; readonly pitch: Measured; readonly form: ScrewForm },
): LeastRoot {
  if (sheet.minor) return { cut: minor.least, rolled: minor.least };
  if (!named) return leastRootOf({ root: minor.least, pitch: pitch.likely, form });
  const { cut, rolled } = leastRoot(named);
  return { cut: Math.min(cut, minor.least), rolled: Math.min(rolled, minor.least) };
}
