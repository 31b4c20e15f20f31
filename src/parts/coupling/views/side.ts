import type { Outline } from '../../../solid/outline.js';
import { boreFaces, setScrewFaces } from '../../common/drawn/carved-faces.js';
import { clampSeenAcross } from '../../common/drawn/clamp-seen.js';
import { faceBox } from '../../common/drawn/cut-face.js';
import { flatArea } from '../../common/drawn/flat-area.js';
import { beyond, box, line, loop, ring } from '../../common/drawn/strokes.js';
import type { DrawnView, Letter, Point, Stroke } from '../../part-views.js';
import type { HubPlan } from '../hub-plan.js';
import { boreLevels } from '../hub-plan.js';
import { rowLabels } from './holes.js';
import { sideSizes } from './side-sizes.js';
import type { CouplingInSight, Standing } from './standing.js';

/**
 * Both hubs and the insert put together, cut through slits, flats and one jaw of each hub: the planes in which these
 * lie are turned into one. The walls of the slits are looked at, not cut.
 */
export function sideView(coupling: CouplingInSight): DrawnView {
  const { hubs, floor, insert, from } = coupling;
  const cut = hubs.map((hub) => hubCut(hub));
  const cutInsert = insertRing(coupling);
  const ends = hubs.map(({ end }) => end);
  const [low, high] = [Math.min(floor, from, ...ends), Math.max(from + insert.height, ...ends)];
  const reach = beyond(high - low);
  return {
    title: 'Section A–A, put together',
    strokes: [
      ...cut.flatMap(({ loops, seen }) => [...loops.map((points) => loop('outline', points)), ...seen]),
      ...cutInsert.map((points) => loop('outline', points)),
      ...padStrokes(coupling),
      line('centre', [reach - low, 0], [-high - reach, 0]),
      line('centre', ...acrossTrace(coupling, 1)),
    ],
    hatched: cut.map(({ loops }) => loops),
    crossHatched: [cutInsert],
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

/** Material of a hub as loops, and what is seen behind the cut. */
function hubCut(standing: Standing): { readonly loops: Point[][]; readonly seen: Stroke[] } {
  const { plan, onPaper } = standing;
  const { slit, clamp } = plan;
  const whole = (['near', 'far'] as const).map((side) => hubHalf(plan, side));
  const gap = slit ? [faceBox([-1, slit.to], [0, plan.outside])] : [];
  const [near, far] = [flatArea(whole[0]!.added, [...whole[0]!.cut, ...gap]), flatArea(whole[1]!.added, whole[1]!.cut)];
  const wall = slit ? flatArea(whole[0]!.added, [...whole[0]!.cut, faceBox([slit.to, 1000], [0, plan.outside])]) : [];
  const up = (points: readonly Point[]) => points.map(onPaper);
  const down = (points: readonly Point[]) => points.map(([z, r]) => onPaper([z, -r]));
  return {
    loops: [...near.map(up), ...far.map(down)],
    seen: [
      ...wall.map((points) => loop('outline', up(points))),
      ...(clamp ? clampSeenAcross(clamp, ([x, z]) => onPaper([z, x]), 'nut') : []),
      ...edgesAcross(standing),
      ...screwLine(standing),
    ],
  };
}

/** What a hub is made of on one side of its axis: a jaw on the slit's side, a gap between two on the other. */
export function hubHalf(plan: HubPlan, side: 'near' | 'far'): { readonly added: Outline[]; readonly cut: Outline[] } {
  const { outside, length, chamfer, bore, stop, setScrew, jaws } = plan;
  const r = outside / 2;
  const top = length + jaws.height;
  const tip: Outline =
    side === 'near'
      ? [
          [top - jaws.bevel, r],
          [top, r - jaws.bevel],
          [top, 0],
        ]
      : [
          [length, r],
          [length, 0],
        ];
  const end = length - jaws.recess;
  return {
    added: [[[0, 0], [0, r - chamfer], [chamfer, r], ...tip]],
    cut: [
      ...boreFaces(bore, boreLevels(plan), stop ? stop.from : end, side),
      faceBox([end, top + 1], [0, jaws.inner]),
      ...(setScrew && side === 'far' ? setScrewFaces(setScrew) : []),
    ],
  };
}

/** Edges of bore and room that run straight across behind the cut. */
function edgesAcross({ plan, onPaper }: Standing): Stroke[] {
  const { bore, chamfer, stop, length, jaws } = plan;
  const [near] = boreFaces(bore, boreLevels(plan), 0, 'near');
  const [far] = boreFaces(bore, boreLevels(plan), 0, 'far');
  const reachAt = (face: Outline, z: number) => face.findLast(([at]) => at === z)?.[1];
  const at = (z: number, up: number, down: number) => line('outline', onPaper([z, up]), onPaper([z, -down]));
  const places = [chamfer, ...(stop ? [stop.from, stop.from + stop.drop] : [])].flatMap((z): Stroke[] => {
    const [up, down] = [reachAt(near!, z), reachAt(far!, z)];
    return up === undefined || down === undefined ? [] : [at(z, up, down)];
  });
  const mouth = bore.diameter / 2 + chamfer;
  const floor = length - jaws.recess;
  return [at(0, mouth, mouth), ...places, at(floor, jaws.inner, jaws.inner), at(length, jaws.inner, jaws.inner)];
}

function screwLine({ plan: { setScrew, outside }, onPaper }: Standing): Stroke[] {
  if (!setScrew) return [];
  const r = outside / 2;
  return [line('centre', onPaper([setScrew.height, -r - beyond(r)]), onPaper([setScrew.height, 0]))];
}

/** Cut ring of the insert, or its solid centre. */
function insertRing({ insert, from }: CouplingInSight): Point[][] {
  const [right, left] = [-from, -from - insert.height];
  if (insert.hole === 0) return [faceBox([left, right], [-insert.ring, insert.ring])].map((face) => [...face]);
  const hole = insert.hole / 2;
  return [1, -1].map((side) =>
    faceBox([left, right], [side * hole, side * insert.ring]).map(([x, y]): Point => [x, y]),
  );
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
