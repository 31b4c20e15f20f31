import { latheMesh } from '../../solid/lathe-mesh.js';
import { place } from '../../solid/mesh.js';
import { shaftBar } from '../common/drawn/shaft-bar.js';
import { polar } from '../common/hole-pattern.js';
import type { Companion, PartViews, SizeChoice } from '../part-views.js';
import type { CouplingDesign } from './dimensions.js';
import { acrossView, insertView } from './views/across.js';
import { holeRows } from './views/holes.js';
import { hubEnd } from './views/hub-end.js';
import { insertAloneViews } from './views/insert-alone.js';
import { notesOf } from './views/notes.js';
import { sideView } from './views/side.js';
import { type CouplingInSight, inSight, placementOf, type Standing } from './views/standing.js';

/** How far shafts stand out of their hubs in a picture, in diameters. */
const SHAFT_BEYOND = 1.5;
/** Free room between bodies that are pulled apart [mm]. */
const APART = 10;

/**
 * What a drawing and the page show of a coupling: put together, with its shafts. Each hub is seen on its own end; the
 * jaws and the insert stand apart.
 */
export function couplingViews(design: CouplingDesign, choice: SizeChoice): PartViews {
  if (design.hubs.length === 0) return insertAloneViews(design, choice);
  const coupling = inSight(design, choice);
  const { hubs, from } = coupling;
  const { insert, material } = design;
  const [motor, screw] = [hubs.find(({ way }) => way === 1), hubs.find(({ way }) => way === -1)];
  const across = acrossView(coupling);
  const away = insert.printed.height + APART;
  return {
    side: sideView(coupling),
    end: screw ? hubEnd(screw, coupling) : across,
    ...(motor ? { other: hubEnd(motor, coupling) } : {}),
    further: screw ? [across, insertView(coupling)] : [insertView(coupling)],
    holes: holeRows(coupling),
    notes: notesOf(coupling),
    material: [...new Set([material.name, insert.material.name])].join(', '),
    companions: [...hubs.map(shaftOf), ...padOf(coupling)],
    inUse: Object.fromEntries([
      ...hubs.map((standing) => [standing.hub.name, placementOf(standing)]),
      ['insert', { by: [0, 0, from] as const }],
    ]),
    apart: Object.fromEntries(hubs.map(({ hub, way }) => [hub.name, [0, 0, -way * away] as const])),
    cutTowards: 0,
  };
}

/** The shaft at its likely size, from its end in the hub to outside. */
function shaftOf(standing: Standing): Companion {
  const { name, shaft, depth } = standing.hub;
  const words = `${name === 'motor-hub' ? 'motor' : 'driven'} shaft`;
  const bar = shaftBar(words, shaft, -SHAFT_BEYOND * shaft.diameter.likely, depth);
  return { ...bar, mesh: place(bar.mesh, placementOf(standing)) };
}

/** The disc or ball between the shaft ends. */
function padOf({ design, floor }: CouplingInSight): Companion[] {
  const { kind, diameter, thickness } = design.insert.pad;
  const middle = floor + design.gap / 2;
  const radius = diameter / 2;
  const about = { kind: 'lathe', sides: 48, circumscribed: false } as const;
  if (kind === 'disc') {
    const contour = [-1, 1].map((side) => [radius, middle + (side * thickness) / 2] as const);
    return [{ name: 'steel disc', mesh: latheMesh({ ...about, contour }) }];
  }
  if (kind !== 'ball') return [];
  const contour = Array.from({ length: 25 }, (_, i) => {
    const [z, r] = polar(radius, 180 - 7.5 * i);
    return [i % 24 === 0 ? 0 : r, middle + z] as const;
  });
  return [{ name: 'steel ball', mesh: latheMesh({ ...about, contour }) }];
}
