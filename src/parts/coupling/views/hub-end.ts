import { boreReach } from '../../common/bore.js';
import { boreSizes } from '../../common/drawn/bore-sizes.js';
import { clampSeenAlong } from '../../common/drawn/clamp-seen.js';
import { flipped } from '../../common/drawn/flipped.js';
import { roundEndSeen } from '../../common/drawn/round-end-seen.js';
import { setScrewSeenAlong } from '../../common/drawn/set-screw-seen.js';
import type { SizeWay } from '../../common/drawn/spread.js';
import { beyond, crossing } from '../../common/drawn/strokes.js';
import type { DrawnView, SizeMark } from '../../part-views.js';
import type { CouplingInSight, Standing } from './standing.js';

/** A hub seen on its plain end, its slit to the left. */
export function hubEnd({ plan, group, title }: Standing, { spread }: CouplingInSight): DrawnView {
  const { outside, chamfer, bore, slit, clamp, setScrew } = plan;
  const r = outside / 2;
  const far = r + beyond(r);
  return {
    title: `End of the ${title}`,
    strokes: flipped([
      ...roundEndSeen({ radius: r, chamfer, bore, slit: slit?.width ?? 0 }),
      ...(clamp ? clampSeenAlong(clamp, r) : []),
      ...(setScrew ? setScrewSeenAlong(setScrew, boreReach(bore).far, r) : []),
      ...crossing([0, 0], far),
    ]),
    hatched: [],
    sizes: [
      over('outside_diameter', outside, 'outside'),
      ...(bore.form === 'hexagon' ? [] : [over('bore_diameter', bore.diameter, 'inside')]),
      ...boreSizes(bore, { before: `${group}.`, spread: spread.hubs, flipped: true }),
      ...gripSizes(),
    ],
    letters: ([1, -1] as const).map((way) => ({ at: [way * far, 0], text: 'A', away: [0.5 * way, 0.86] })),
  };

  function over(name: string, value: number, way: SizeWay): SizeMark {
    const from = [-value / 2, 0] as const;
    return {
      name: `${group}.${name}`,
      value,
      sign: '⌀',
      ...spread.hubs(value, way),
      from,
      to: [value / 2, 0],
      side: 'below',
    };
  }

  function gripSizes(): SizeMark[] {
    return [
      ...(slit
        ? [
            {
              name: `${group}.slit_width`,
              value: slit.width,
              ...spread.hubs(slit.width, 'inside'),
              from: [-r, -slit.width / 2],
              to: [-r, slit.width / 2],
              side: 'left',
            } as const,
          ]
        : []),
      ...(clamp
        ? [
            {
              name: `${group}.clamp_offset`,
              value: clamp.offset,
              ...spread.hubs(clamp.offset, 'outside'),
              from: [-clamp.offset, r],
              to: [0, r],
              side: 'above',
            } as const,
          ]
        : []),
    ];
  }
}
