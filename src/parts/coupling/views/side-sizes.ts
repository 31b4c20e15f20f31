import type { SizeMark } from '../../part-views.js';
import type { CouplingInSight, Standing } from './standing.js';

/** Sizes along the axis. Heights of screws stand in the hole table, those of jaws and insert in their own views. */
export function sideSizes(coupling: CouplingInSight): SizeMark[] {
  return coupling.hubs.flatMap((hub) => hubSizes(hub, coupling));
}

function hubSizes({ plan, group, way, onPaper }: Standing, { spread }: CouplingInSight): SizeMark[] {
  const { outside, length, bore, stop, slit } = plan;
  const r = outside / 2;
  const [slitSide, flatSide] = way === 1 ? (['above', 'below'] as const) : (['below', 'above'] as const);
  const along = (name: string, [start, to]: readonly [number, number], x: number): SizeMark => ({
    name: `${group}.${name}`,
    value: to - start,
    ...spread.hubs(to - start, 'along'),
    from: onPaper([start, x]),
    to: onPaper([to, x]),
    side: x > 0 ? slitSide : flatSide,
  });
  return [
    along('length', [0, length], -r),
    ...(stop ? [along('bore_stop', [0, stop.from], -bore.diameter / 2)] : []),
    ...(slit ? [along('slit_length', [0, slit.to], r)] : []),
  ];
}
