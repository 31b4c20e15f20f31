import { nutSheet } from './nut-sheets.js';

/** A fleet of short nuts that take little time: so many distinct ones, each in two machines. */
export function smallFleet(distinct: number): string {
  const parts = Array.from({ length: distinct }, (_, i) => [
    `n${i}`,
    {
      part: nutSheet({ name: `nut-${i}`, body: { length: 14 + i / 10 }, flange: { thickness: 5 }, screw: 'Tr10x3' }),
      quantity: 2,
    },
  ]);
  const machine = { parts: Object.fromEntries(parts) };
  return JSON.stringify({ fleet: 'small', machines: { one: machine, two: machine } });
}
