import type { SizeMark } from '../../part-views.js';
import type { Bore } from '../bore.js';
import type { spreadOf } from './spread.js';

/** What a bore's names start with, and the half-widths of its sizes. */
export interface BoreStated {
  /** such as `upper_` or `motor_hub.` */
  readonly before: string;
  readonly spread: ReturnType<typeof spreadOf>;
  /** true where the view is from −Z, the flat or keyway on the right */
  readonly flipped?: boolean;
}

/** Sizes of a bore that is not round, seen along its axis: over the flat, across flats, or of the keyway. */
export function boreSizes(bore: Bore, { before, spread, flipped = false }: BoreStated): SizeMark[] {
  const { form, diameter, across, key } = bore;
  const radius = diameter / 2;
  const x = (value: number) => (flipped ? -value : value);
  if (across !== undefined) {
    const [from, to] = form === 'd' ? [radius - across, radius] : [-across / 2, across / 2];
    return [
      {
        name: `${before}bore_across_flat`,
        value: across,
        ...spread(across, 'inside'),
        from: [x(from), 0],
        to: [x(to), 0],
        side: 'below',
      },
    ];
  }
  if (!key) return [];
  const out = radius + key.depth;
  return [
    {
      name: `${before}keyway_width`,
      value: key.width,
      ...spread(key.width, 'inside'),
      from: [x(-out), -key.width / 2],
      to: [x(-out), key.width / 2],
      side: flipped ? 'right' : 'left',
    },
    {
      name: `${before}keyway_depth`,
      value: key.depth,
      ...spread(key.depth, 'outside'),
      from: [x(-out), key.width / 2],
      to: [x(-radius), 0],
      side: 'below',
    },
  ];
}
