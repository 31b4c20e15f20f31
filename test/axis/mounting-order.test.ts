import { expect, it } from 'vitest';
import { inMountingOrder } from '../../src/axis/mounting-order.js';

const parts = (...kinds: readonly string[]) => kinds.map((part, i) => ({ report: { part }, i }));
const kindsOf = (rows: readonly { readonly report: { readonly part: string } }[]) =>
  rows.map(({ report }) => report.part);

it('goes from what the motor sits on to what holds the far end, and leaves the sheet’s own list as it is', () => {
  const given = parts('end-holder', 'sleeve', 'coupling', 'collar', 'adapter', 'twin-nut', 'nut', 'motor-plate');
  const order = ['motor-plate', 'nut', 'twin-nut', 'adapter', 'collar', 'coupling', 'sleeve', 'end-holder'];
  expect(kindsOf(inMountingOrder(given))).toEqual(order);
  expect(given[0]!.report.part).toBe('end-holder');
});

it('puts what nobody knows a place for last, and keeps parts of one kind in their order', () => {
  const sorted = inMountingOrder(parts('gauge', 'nut', 'coupon', 'motor-plate', 'nut'));
  expect(kindsOf(sorted)).toEqual(['motor-plate', 'nut', 'nut', 'gauge', 'coupon']);
  expect(sorted.map(({ i }) => i)).toEqual([3, 1, 4, 0, 2]);
});
