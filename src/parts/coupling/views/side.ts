import { clampAxesAcross } from '../../common/drawn/clamp-axes.js';
import { beyond, box, line, ring } from '../../common/drawn/strokes.js';
import type { AskedView, Letter, Point, Stroke } from '../../part-views.js';
import { rowLabels } from './holes.js';
import { sideSizes } from './side-sizes.js';
import type { CouplingInSight, Standing } from './standing.js';

/**
 * Both hubs and the insert put together, cut through slits, flats and one jaw of each hub: the hubs are turned so that
 * the planes in which these lie are one. The walls of the slits are looked at, not cut.
 */
export function sideView(coupling: CouplingInSight): AskedView {
  const { hubs, floor, insert, from } = coupling;
  const ends = hubs.map(({ end }) => end);
  const [low, high] = [Math.min(floor, from, ...ends), Math.max(from + insert.height, ...ends)];
  const reach = beyond(high - low);
  return {
    title: 'Section A–A, put together',
    solid: {
      bodies: [hubs[0]!.shape, coupling.insertShape, ...hubs.slice(1).map(({ shape }) => shape)],
      sight: { kind: 'section', planes: [0, 180] },
      hidden: ['clamp'],
    },
    strokes: [
      ...hubs.flatMap(screwAxes),
      ...padStrokes(coupling),
      line('centre', [reach - low, 0], [-high - reach, 0]),
      line('centre', ...acrossTrace(coupling, 1)),
    ],
    sizes: sideSizes(coupling),
    letters: [
      ...screwNumbers(coupling),
      ...acrossTrace(coupling, 0).map((at, i) => ({ at, text: 'B', away: [0, i === 0 ? -1 : 1] as const })),
    ],
  };
}

/** Ends of the plane that section B–B is cut in. */
function acrossTrace({ hubs, floor, design }: CouplingInSight, past: 0 | 1): [Point, Point] {
  const reach = Math.max(...hubs.map(({ plan }) => plan.outside / 2));
  const [x, y] = [-(floor + design.gap / 2), reach + past * beyond(reach)];
  return [
    [x, -y],
    [x, y],
  ];
}

/** Centre lines of clamp and set screws. */
function screwAxes({ plan: { clamp, setScrew, outside }, onPaper }: Standing): Stroke[] {
  const r = outside / 2;
  return [
    ...(clamp ? clampAxesAcross(clamp, ([x, z]) => onPaper([z, x])) : []),
    ...(setScrew ? [line('centre', onPaper([setScrew.height, -r - beyond(r)]), onPaper([setScrew.height, 0]))] : []),
  ];
}

/** The disc or ball that both shaft ends stand on. */
function padStrokes({ design, floor }: CouplingInSight): Stroke[] {
  const { kind, diameter, thickness } = design.insert.pad;
  const middle = -(floor + design.gap / 2);
  if (kind === 'ball') return [ring('thin', [middle, 0], diameter / 2)];
  if (kind !== 'disc') return [];
  return [box('thin', [middle - thickness / 2, -diameter / 2], [middle + thickness / 2, diameter / 2])];
}

/** Numbers of the screws beside their holes, as in the hole table. */
function screwNumbers({ hubs }: CouplingInSight): Letter[] {
  return hubs.flatMap((hub): Letter[] => {
    const { clamp, setScrew, outside } = hub.plan;
    const { clamps, set } = rowLabels(hub);
    const place = (z: number, x: number, text: string): Letter => ({ at: hub.onPaper([z, x]), text, away: [0, 0] });
    // on either side in turn, so that numbers of neighbours keep apart
    const aside = (i: number) =>
      clamp ? clamp.offset + (i % 2 === 0 ? -1 : 1) * (clamp.head / 2 + Math.max(1.6, 0.05 * outside)) : 0;
    return [
      ...(clamp?.heights.map((z, i) => place(z, aside(i), clamps[i]!)) ?? []),
      ...(setScrew ? [place(setScrew.height + setScrew.hole, -outside / 2 - 1.5, set!)] : []),
    ];
  });
}
