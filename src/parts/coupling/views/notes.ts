import { noted, notedSize } from '../../common/drawn/spread.js';
import type { CouplingInSight, Standing } from './standing.js';

/** What the views leave to words: the planes, the insert, the shafts, and the seats of heads and nuts. */
export function notesOf(coupling: CouplingInSight): string[] {
  const { hubs, design, insert } = coupling;
  const { fillet } = hubs[0]!.plan.jaws;
  const { hardness, pad, flankClearance } = design.insert;
  const on = {
    disc: ', and stand on a steel disc',
    ball: ', and stand on a steel ball',
    soft: ', and stand on the insert',
  };
  const depths = hubs.map(({ hub, title }) => `${noted(hub.depth)} into the ${title}`).join(', ');
  const seats = hubs.flatMap((hub) => seatWords(hub, coupling));
  return [
    `A–A: planes of slits, flats and a jaw turned into one; B–B midway between the floors, ${noted(design.gap)} apart. M motor hub, S screw hub; jaws${hubs.length > 1 ? ' of both alike' : ''}${fillet > 0 ? `, fillet R ${noted(fillet)}` : ''}`,
    `Insert: ${hardness}, ${insert.lobes} lobes, ${clearanceWords(flankClearance)} at each flank. Shafts go ${depths}${pad.kind === 'none' ? '' : on[pad.kind]}`,
    ...(seats.length > 0 ? [`Seats of clamp screws, from the plane of the axis: ${seats.join('; ')}`] : []),
  ];
}

function seatWords({ plan: { clamp }, title }: Standing, { spread }: CouplingInSight): string[] {
  if (!clamp) return [];
  const stated = (value: number) => notedSize(value, spread.hubs(value, 'outside'));
  return [`${title} head ${stated(clamp.headSeat)}, nut ${stated(clamp.nutSeat)}`];
}

/** Clearance of a lobe at its flank, in words. */
export function clearanceWords(clearance: number): string {
  return clearance < 0 ? `squeezed ${noted(-clearance)}` : `${noted(clearance)} free`;
}
