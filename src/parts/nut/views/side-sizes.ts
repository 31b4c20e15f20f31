import { reachOf } from '../../../solid/convex.js';
import type { Outline } from '../../../solid/outline.js';
import type { SizeMark } from '../../part-views.js';
import type { NutInSight } from './in-sight.js';
import type { Member } from './member.js';

/** Whether both planes of a section reach the round of an outline: where a flat is cut, its diameter is not seen. */
export function showsRound(outline: Outline, planes: Member['planes'], diameter: number): boolean {
  return planes.every((angle) => reachOf(outline, angle) > diameter / 2 - OFF_ROUND);
}

/** A chord is off its arc by no more, mm. */
const OFF_ROUND = 0.02;

/** Sizes along the axis and diameters over the round, of the nut itself. */
export function sideSizes(nut: NutInSight, { planes, isSlit = false }: Member): SizeMark[] {
  const { sizes, bottom, top, spread } = nut;
  const { body, flange, length } = sizes;
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
  const along = (name: string, value: number, z: number): SizeMark => {
    return { name, value, ...spread(value, 'along'), from: [-(z + value), above], to: [-z, above], side: 'above' };
  };
  // over all, each end from where the part ends
  const foot = -reachOf(nut.body, planes[1]);
  const overall: SizeMark = {
    name: 'length',
    value: length,
    ...spread(length, 'along'),
    from: [-top, foot],
    to: [-bottom, flange && flange.offset > 0 ? foot : -below],
    side: 'below',
  };
  const stub = (): SizeMark => ({
    name: 'flange_offset',
    value: -bottom,
    ...spread(-bottom, 'along'),
    from: [0, above],
    to: [-bottom, reachOf(nut.body, planes[0])],
    side: 'above',
  });
  return [
    overall,
    ...(flange ? [along('flange_thickness', flange.thickness, 0)] : []),
    ...(flange && flange.offset > 0 ? [stub()] : []),
    ...(body.shape === 'round' && !isSlit && showsRound(nut.body, planes, body.across)
      ? [over('body_diameter', body.across, top, 'left', 'outside')]
      : []),
    ...(flange?.shape === 'round' && nut.plate && showsRound(nut.plate, planes, flange.size[0])
      ? [over('flange_diameter', flange.size[0], 0, 'right', 'outside')]
      : []),
  ];
}
