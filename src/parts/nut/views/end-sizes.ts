import type { Outline } from '../../../solid/outline.js';
import { extremes } from '../../common/drawn/extremes.js';
import { polar, rectangleOf } from '../../common/hole-pattern.js';
import type { SizeMark } from '../../part-views.js';
import { directionOf, type NutInSight } from './in-sight.js';
import type { Member } from './member.js';
import { showsRound } from './side-sizes.js';

/** Half the last figure of a size, mm. */
const SAME = 0.005;

/** Outer sizes that are not round, and the holes. */
export function endSizes(nut: NutInSight, { planes, isSlit = false }: Member): SizeMark[] {
  const { sizes } = nut;
  const { body, flange, holes } = sizes;
  const marks: SizeMark[] = [];
  if (flange && nut.plate && flange.shape !== 'round') {
    const sign = flange.shape === 'square' ? '□' : '';
    marks.push(over('flange_diameter', flange.size[0], nut.plate, 'below', sign));
    if (flange.shape !== 'square') marks.push(over('flange_width', flange.size[1], nut.plate, 'right'));
  }
  if (flange?.shape === 'round' && nut.plate && !showsRound(nut.plate, planes, flange.size[0]))
    marks.push(over('flange_diameter', flange.size[0], nut.plate, 'below', '⌀'));
  if (body.shape === 'round' && !isSlit && !showsRound(nut.body, planes, body.across))
    marks.push(over('body_diameter', body.across, nut.body, 'above', '⌀'));
  if (flange?.flats !== undefined && nut.plate) marks.push(over('flange_flats', flange.flats, nut.plate, 'right'));
  if (body.flats !== undefined) marks.push(over('body_flats', body.flats, nut.body, 'right'));
  if (body.shape !== 'round')
    // a hexagon stands with two corners on the X axis
    marks.push(
      body.shape === 'square'
        ? over('body_diameter', body.across, nut.body, 'above', '□')
        : over('body_diameter', body.across, nut.body, 'right'),
    );
  const first = holes?.centres[0];
  if (holes && first) {
    const count = holes.centres.length;
    const last = holes.centres[count - 1]!;
    const angle = directionOf(last);
    const edge = polar(nut.holes[0]!.diameter / 2, angle);
    // holes for inserts and taps are not those that a screw goes through: the table states them
    const isClear = Math.abs(nut.holes[0]!.diameter - holes.diameter) < SAME;
    if (isClear)
      marks.push({
        name: 'hole_diameter',
        value: holes.diameter,
        sign: `${count} × ⌀`,
        ...nut.spread(holes.diameter, 'inside'),
        from: last,
        to: [last[0] + edge[0], last[1] + edge[1]],
        side: 'leader',
      });
    const rectangle = rectangleOf(holes.centres);
    if (rectangle) {
      const [x, y] = [rectangle.along_x / 2, rectangle.along_y / 2];
      marks.push({ ...mark('holes_along_x', 2 * x), from: [-x, y], to: [x, y], side: 'above' });
      marks.push({ ...mark('holes_along_y', 2 * y), from: [-x, -y], to: [-x, y], side: 'left' });
    } else if (holes.centres.every((at) => Math.abs(Math.hypot(...at) - Math.hypot(...first)) < 1e-6)) {
      const spacing = 2 * Math.hypot(...first);
      marks.push({
        ...mark('hole_circle', spacing, '⌀'),
        from: [0, 0],
        to: polar(spacing / 2, angle + 24),
        side: 'leader',
      });
    }
  }
  return marks;

  function over(name: string, value: number, outline: Outline, side: 'below' | 'above' | 'right', sign = ''): SizeMark {
    const [from, to] = extremes(outline, side === 'right' ? 1 : 0, side);
    return { ...mark(name, value, sign), from, to, side };
  }

  function mark(name: string, value: number, sign = '') {
    return { name, value, sign, ...nut.spread(value, 'outside') };
  }
}
