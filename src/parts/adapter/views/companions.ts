import { loftConvex } from '../../../solid/convex-loft.js';
import type { Mesh } from '../../../solid/mesh.js';
import type { Outline } from '../../../solid/outline.js';
import { screwBar } from '../../common/drawn/screw-bar.js';
import { turned } from '../../common/hole-pattern.js';
import type { Companion } from '../../part-views.js';
import type { AdapterDesign } from '../dimensions.js';
import { flangeShape } from '../seated-nut.js';
import { disc } from './in-sight.js';

/** How far a nut's body of unknown length reaches past the plate, and the screw past nut and plate [mm]. */
const BEYOND = { body: 4, screw: 15 };

/** The bought nut on its seat, and the screw through it. */
export function adapterCompanions(design: AdapterDesign): Companion[] {
  const { screw, printer, layout } = design;
  const nut = nutSpan(design);
  const [low, high] = [Math.min(0, nut?.from ?? 0), Math.max(layout.plate.thickness, nut?.to ?? 0)];
  return [
    ...(nut ? [{ name: 'nut', mesh: nutMesh(design, nut) }] : []),
    ...(screw
      ? [screwBar(screw, { from: low - BEYOND.screw, to: high + BEYOND.screw, chordError: printer.chordError })]
      : []),
  ];
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/** Heights of the nut over all. Its flange lies on the seat, its body through the plate or away from it. */
function nutSpan({ nut, seatHeight, layout }: AdapterDesign): Span | undefined {
  if (!nut) return undefined;
  const { flangeThickness, seat, stands } = nut;
  const length = nut.length ?? flangeThickness + layout.plate.thickness + BEYOND.body;
  const up = (seat === 'outside') === (stands === 'away');
  if (seat === 'outside')
    return up
      ? { from: seatHeight, to: seatHeight + length }
      : { from: seatHeight + flangeThickness - length, to: seatHeight + flangeThickness };
  return up
    ? { from: seatHeight - flangeThickness, to: seatHeight - flangeThickness + length }
    : { from: seatHeight - length, to: seatHeight };
}

function nutMesh({ nut, seatHeight, layout }: AdapterDesign, { from, to }: Span): Mesh {
  const { flange, flangeThickness, seat, body } = nut!;
  const plan = flangeShape(flange).map((corner) => turned(corner, layout.clocking.turn));
  const low = seat === 'outside' ? seatHeight : seatHeight - flangeThickness;
  return together([prism(plan, low, low + flangeThickness), prism(disc(body.likely, [0, 0]), from, to)]);
}

function prism(outline: Outline, from: number, to: number): Mesh {
  return loftConvex(outline, [
    [from, 0],
    [to, 0],
  ]);
}

/** Closed meshes as one. */
function together(meshes: readonly Mesh[]): Mesh {
  let before = 0;
  const triangles = meshes.flatMap((mesh) => {
    const shifted = [...mesh.triangles].map((corner) => corner + before);
    before += mesh.positions.length / 3;
    return shifted;
  });
  return {
    positions: Float64Array.from(meshes.flatMap(({ positions }) => [...positions])),
    triangles: Uint32Array.from(triangles),
  };
}
