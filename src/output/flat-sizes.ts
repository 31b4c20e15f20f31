import type { Sizes } from '../parts/part-kind.js';

/**
 * Sizes with their groups' names before them, in order.
 * @example flatSizes({ hub: { bore: 8 } }) // [['hub: bore', 8]]
 */
export function flatSizes(sizes: Sizes, before = ''): [string, number][] {
  return Object.entries(sizes).flatMap(([name, size]): [string, number][] =>
    typeof size === 'number' ? [[`${before}${name}`, size]] : flatSizes(size, `${before}${name}: `),
  );
}
