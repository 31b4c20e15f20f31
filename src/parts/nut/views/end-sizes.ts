import { polar } from '../../common/hole-pattern.js';
import type { SizeMark } from '../../part-views.js';
import { directionOf, type NutInSight } from './in-sight.js';

/** Outer sizes that are not round, and the holes. */
export function endSizes(nut: NutInSight): SizeMark[] {
  const { sizes } = nut;
  const { body, flange, holes } = sizes;
  const marks: SizeMark[] = [];
  if (flange && flange.shape !== 'round') {
    const [x, y] = [flange.size[0] / 2, flange.size[1] / 2];
    const sign = flange.shape === 'square' ? '□' : '';
    marks.push({ ...mark('flange_diameter', flange.size[0], sign), from: [-x, -y], to: [x, -y], side: 'below' });
    if (flange.shape !== 'square')
      marks.push({ ...mark('flange_width', flange.size[1]), from: [x, -y], to: [x, y], side: 'right' });
  }
  if (flange?.flats !== undefined) {
    const y = flange.flats / 2;
    marks.push({
      ...mark('flange_flats', flange.flats),
      from: [flange.size[0] / 2, -y],
      to: [flange.size[0] / 2, y],
      side: 'right',
    });
  }
  if (body.flats !== undefined) {
    const y = body.flats / 2;
    marks.push({
      ...mark('body_flats', body.flats),
      from: [body.across / 2, -y],
      to: [body.across / 2, y],
      side: 'right',
    });
  }
  if (body.shape !== 'round') {
    const half = body.across / 2;
    marks.push({
      ...mark('body_diameter', body.across, body.shape === 'square' ? '□' : ''),
      from: [-half, half],
      to: [half, half],
      side: 'above',
    });
  }
  const first = holes?.centres[0];
  if (holes && first) {
    const count = holes.centres.length;
    const last = holes.centres[count - 1]!;
    const angle = directionOf(last);
    const edge = polar(nut.holes[0]!.diameter / 2, angle);
    marks.push({
      name: 'hole_diameter',
      value: holes.diameter,
      sign: `${count} × ⌀`,
      ...nut.spread(holes.diameter, 'inside'),
      from: last,
      to: [last[0] + edge[0], last[1] + edge[1]],
      side: 'leader',
    });
    const spacing = 2 * Math.hypot(...first);
    marks.push({
      ...mark('hole_circle', spacing, '⌀'),
      from: [0, 0],
      to: polar(spacing / 2, angle + 24),
      side: 'leader',
    });
  }
  return marks;

  function mark(name: string, value: number, sign = '') {
    return { name, value, sign, ...nut.spread(value, 'outside') };
  }
}
