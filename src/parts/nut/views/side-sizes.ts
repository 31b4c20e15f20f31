import { reachOf } from '../../../solid/convex.js';
import type { SizeMark } from '../../part-views.js';
import type { NutInSight } from './in-sight.js';
import type { Member } from './member.js';

/** Sizes along the axis and diameters over the round, of the nut itself. */
export function sideSizes(nut: NutInSight, { planes, threads }: Member): SizeMark[] {
  const { sizes, bottom, top, spread } = nut;
  const { thread, body, flange, length } = sizes;
  const [above, below] = planes.map((angle) => reachOf(nut.plate ?? nut.body, angle)) as [number, number];
  const over = (name: string, value: number, z: number, side: 'left' | 'right', way: 'inside' | 'outside') =>
    ({
      name,
      value,
      sign: '⌀',
      ...spread(value, way),
      from: [-z, -value / 2],
      to: [-z, value / 2],
      side,
    }) satisfies SizeMark;
  const along = (name: string, value: number, z: number, side: 'below' | 'above'): SizeMark => {
    const y = side === 'below' ? -below : above;
    return { name, value, ...spread(value, 'along'), from: [-(z + value), y], to: [-z, y], side };
  };
  const [working] = threads;
  return [
    along('length', length, bottom, 'below'),
    ...(flange ? [along('flange_thickness', flange.thickness, 0, 'above')] : []),
    ...(flange && flange.offset > 0 ? [along('flange_offset', flange.offset, bottom, 'above')] : []),
    ...(working
      ? [
          over('thread_minor', thread.minor, working.top, 'left', 'inside'),
          over('thread_major', thread.major, working.bottom, 'right', 'inside'),
        ]
      : []),
    ...(body.shape === 'round' ? [over('body_diameter', body.across, top, 'left', 'outside')] : []),
    ...(flange?.shape === 'round' ? [over('flange_diameter', flange.size[0], 0, 'right', 'outside')] : []),
  ];
}
