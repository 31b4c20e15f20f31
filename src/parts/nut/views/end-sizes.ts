import type { Outline } from '../../../solid/outline.js';
import { extremes } from '../../common/drawn/extremes.js';
import { type HolePlaces, polar } from '../../common/hole-pattern.js';
import type { SizeMark } from '../../part-views.js';
import { formOf } from './hole-form.js';
import { directionOf, type NutInSight } from './in-sight.js';
import type { Member } from './member.js';
import { showsRound } from './side-sizes.js';

/** How far beside its hole's direction a leader meets the pitch circle, degrees. */
const BESIDE = 24;

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
  return [...marks, ...(holes ? holeSizes(nut, holes) : [])];

  function over(name: string, value: number, outline: Outline, side: 'below' | 'above' | 'right', sign = ''): SizeMark {
    const [from, to] = extremes(outline, side === 'right' ? 1 : 0, side);
    return { ...mark(name, value, sign), from, to, side };
  }

  function mark(name: string, value: number, sign = '') {
    return { name, value, sign, ...nut.spread(value, 'outside') };
  }
}

/** Diameter of the holes, at the one that lies lowest on the right, and where they stand. */
function holeSizes(nut: NutInSight, holes: NonNullable<NutInSight['sizes']['holes']>): SizeMark[] {
  const { centres, diameter } = holes;
  const at = centres.reduce((best, one) => (one[0] - one[1] > best[0] - best[1] + 1e-6 ? one : best));
  const angle = directionOf(at);
  const edge = polar(diameter / 2, angle);
  const drilled: SizeMark = {
    name: 'hole_diameter',
    value: diameter,
    sign: `${centres.length} × ⌀`,
    ...nut.spread(diameter, 'inside'),
    from: at,
    to: [at[0] + edge[0], at[1] + edge[1]],
    alike: centres,
    side: 'leader',
  };
  return [drilled, ...placeSizes(nut, holes, angle)];
}

function placeSizes(nut: NutInSight, holes: HolePlaces, angle: number): SizeMark[] {
  const form = formOf(holes);
  const mark = (name: string, value: number) => ({ name, value, ...nut.spread(value, 'outside') });
  switch (form.kind) {
    case 'rectangle': {
      const [x, y] = [form.along_x / 2, form.along_y / 2];
      return [
        { ...mark('holes_along_x', 2 * x), from: [-x, y], to: [x, y], side: 'above' },
        { ...mark('holes_along_y', 2 * y), from: [-x, -y], to: [-x, y], side: 'left' },
      ];
    }
    case 'pair': {
      const x = form.distance / 2;
      return [{ ...mark('hole_circle', form.distance), from: [-x, 0], to: [x, 0], side: 'above' }];
    }
    case 'circle': {
      const to = polar(form.radius, angle + BESIDE);
      return [{ ...mark('hole_circle', 2 * form.radius), sign: '⌀', from: [0, 0], to, side: 'leader' }];
    }
    case 'free':
      return [];
  }
}
