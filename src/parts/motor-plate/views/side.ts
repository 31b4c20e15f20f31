import { reachOf } from '../../../solid/convex.js';
import { beyond, line } from '../../common/drawn/strokes.js';
import type { AskedView } from '../../part-views.js';
import { motorGrip } from '../plan.js';
import { plateOutline } from '../solid.js';
import { type PlateInSight, planesOf } from './in-sight.js';

/** The section through the axis, +Z to the left. */
export function sideView({ plan, design, shapes, spread }: PlateInSight): AskedView {
  const { thickness, pilot, motor } = plan;
  const planes = planesOf(plan);
  const reach = reachOf(plateOutline(plan, design.printer.chordError), planes[1]);
  const middle = motor.square * Math.SQRT1_2;
  const { sunk } = motor;
  const grip = motorGrip(plan);
  return {
    title: 'Section A–A',
    solid: {
      bodies: shapes,
      sight: { kind: 'section', planes },
    },
    strokes: [
      line('centre', [beyond(thickness), 0], [-thickness - beyond(thickness), 0]),
      ...(sunk ? [line('centre', [beyond(thickness), middle], [-thickness - beyond(thickness), middle])] : []),
    ],
    sizes: [
      {
        name: 'thickness',
        value: thickness,
        ...spread(thickness, 'along'),
        from: [0, -reach],
        to: [-thickness, -reach],
        side: 'below',
      },
      {
        name: 'pilot_hole',
        value: pilot,
        sign: '⌀',
        ...spread(pilot, 'inside'),
        from: [0, -pilot / 2],
        to: [0, pilot / 2],
        side: 'right',
      },
      ...(sunk
        ? [
            {
              name: 'head_pocket_diameter',
              value: sunk.diameter,
              sign: '⌀',
              ...spread(sunk.diameter, 'inside'),
              from: [-thickness, middle - sunk.diameter / 2] as const,
              to: [-thickness, middle + sunk.diameter / 2] as const,
              side: 'left' as const,
            },
            {
              name: 'head_pocket_depth',
              value: sunk.depth,
              ...spread(sunk.depth, 'along'),
              from: [-thickness, middle + sunk.diameter / 2] as const,
              to: [-grip, middle + sunk.diameter / 2] as const,
              side: 'above' as const,
            },
          ]
        : []),
    ],
    letters: [],
  };
}
