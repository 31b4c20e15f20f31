import { SOLID_GROUP } from '../../judge/accept.js';
import { type Finding, hard, valued } from '../../judge/check.js';
import { finding } from '../../judge/run-checks.js';
import type { Kernel } from '../../solid/kernel.js';
import { NO_COMMON_VOLUME } from '../../solid/mate.js';
import { sidesFor } from '../../solid/outline.js';
import { cylinder, type Shape } from '../../solid/recipe.js';
import { exactly } from '../../units/measured.js';
import { barIn, largestBar } from '../common/bar-mate.js';
import { carvedShapes } from '../common/carved.js';
import type { SleeveDesign } from './dimensions.js';
import { carvedSleeve } from './plan.js';

const LOOSE = 0.01;
const CHORD = 0.05;

/** Tries both shafts in the sleeve at finished sizes, up to their stops, round where their flats end, and a bush in the bore it fills. */
export function mateSleeve(design: SleeveDesign, kernel: Kernel): Finding[] {
  const { finished, ends, shaft, fills } = design;
  const { base, cutters } = carvedShapes(carvedSleeve(finished, CHORD));
  const sleeve: Shape = { kind: 'difference', of: [base, ...cutters] };
  const [lower, upper] = finished.bores;
  const diameters =
    ends.length > 0 ? ends.map((end, i) => largestBar(end.shaft, finished.bores[i]!.bore)) : [shaft.diameter.most];
  const bars = [
    barIn(lower.bore, diameters[0]!, -5, ends.length > 0 ? lower.depth - LOOSE : finished.length + 5),
    ...(upper ? [barIn(upper.bore, diameters[1]!, finished.length - upper.depth + LOOSE, finished.length + 5)] : []),
  ];
  const behind = finished.bores.flatMap(({ bore: { diameter, flatFrom } }, i): Shape[] => {
    if (flatFrom === undefined) return [];
    const reach = flatFrom - LOOSE;
    const [from, to] = i === 0 ? [-5, reach] : [finished.length - reach, finished.length + 5];
    return [barIn({ form: 'round', diameter }, diameters[i]!, from, to)];
  });
  const around: Shape[] = fills === undefined ? [] : [ringAround(fills, finished.length)];
  const volumes = [...bars, ...behind, ...around].flatMap((other) => kernel.commonVolumes(sleeve, other, [{}]));
  /**
   * Sleeve and shafts must not stand in each other.
   *
   *     V = greatest common volume of the sleeve with one shaft, of a bush also with the bore that it fills
   */
  const about = {
    id: 'solid-mate',
    group: SOLID_GROUP,
    question: 'prints',
    title:
      fills === undefined
        ? 'Common volume of the sleeve and both shafts'
        : 'Common volume of the bush with shaft and bore',
    unit: 'mm³',
    source: 'derived: the solids themselves',
    limits: hard({ max: NO_COMMON_VOLUME }),
    moves: 'shaft, bore, motor_end.bore_clearance, screw_end.bore_clearance',
  };
  return [
    finding(
      about,
      valued(
        exactly(Math.max(...volumes)),
        'at finished sizes, the shafts at their largest, as far as no slit opens for them, up to their stops',
      ),
    ),
  ];
}

function ringAround(bore: number, length: number): Shape {
  const radius = bore / 2;
  const sides = sidesFor(radius, CHORD);
  const hole = cylinder({ radius, sides, circumscribed: true, from: -2, to: length + 2 });
  return {
    kind: 'difference',
    of: [cylinder({ radius: radius + 5, sides, circumscribed: false, from: -1, to: length + 1 }), hole],
  };
}
