import { boreSizes } from '../../common/drawn/bore-sizes.js';
import { clampAxesAlong } from '../../common/drawn/clamp-axes.js';
import { sectionPlanes } from '../../common/drawn/section-planes.js';
import type { SizeWay } from '../../common/drawn/spread.js';
import { beyond, crossing, line } from '../../common/drawn/strokes.js';
import type { AskedView, SizeMark } from '../../part-views.js';
import type { CouplingInSight, Standing } from './standing.js';

/** A hub seen on its plain end, its slit to the left. */
export function hubEnd({ plan, group, title, alone }: Standing, { spread }: CouplingInSight): AskedView {
  const { outside, bore, slit, clamp, setScrew } = plan;
  const r = outside / 2;
  const far = r + beyond(r);
  return {
    title: `End of the ${title}`,
    solid: { bodies: [alone], sight: { kind: 'end', from: -1 }, hidden: ['clamp', 'set-screw'] },
    strokes: [
      ...(clamp ? clampAxesAlong(clamp, r, -1) : []),
      ...(setScrew ? [line('centre', [0, 0], [r + 2, 0])] : []),
      ...crossing([0, 0], far),
    ],
    sizes: [
      over('outside_diameter', outside, 'outside'),
      ...(bore.form === 'hexagon' ? [] : [over('bore_diameter', bore.diameter, 'inside')]),
      ...boreSizes(bore, { before: `${group}.`, spread: spread.hubs, flipped: true }),
      ...gripSizes(),
    ],
    planes: sectionPlanes([0, 180], () => r, -1),
    letters: [],
  };

  function over(name: string, value: number, way: SizeWay): SizeMark {
    return {
      name: `${group}.${name}`,
      value,
      sign: '⌀',
      ...spread.hubs(value, way),
      from: [-value / 2, 0],
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
