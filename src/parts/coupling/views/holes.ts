import { plain } from '../../../units/format.js';
import { boreReach } from '../../common/bore.js';
import { nextSetScrewLength } from '../../common/screw-length.js';
import type { HoleRow } from '../../part-views.js';
import type { CouplingInSight, Standing } from './standing.js';

/** Labels of a hub's screws: M for the motor hub, S for the screw hub. */
export function rowLabels({ hub, plan }: Standing): { readonly clamps: readonly string[]; readonly set?: string } {
  const first = letterOf(hub);
  const clamps = (plan.clamp?.heights ?? []).map((_, i) => `${first}${i + 1}`);
  return { clamps, ...(plan.setScrew ? { set: `${first}${clamps.length + 1}` } : {}) };
}

function letterOf({ name }: Standing['hub']): string {
  return name === 'motor-hub' ? 'M' : 'S';
}

/** Every hole: bores, clamp screws and set screws of both hubs, places from each hub's own end, and the insert's. */
export function holeRows({ hubs, insert }: CouplingInSight): HoleRow[] {
  return [
    ...hubs.flatMap(hubRows),
    ...(insert.hole > 0 ? [{ label: 'I', at: [0, 0] as const, diameter: insert.hole, note: 'through insert' }] : []),
  ];
}

function hubRows(standing: Standing): HoleRow[] {
  const { hub, plan } = standing;
  const { bore, clamp, setScrew, outside } = plan;
  const { clamps, set } = rowLabels(standing);
  const form = { round: '', d: ', flat', 'double-d': ', 2 flats', keyed: ', key', hexagon: ', hexagon' }[bore.form];
  return [
    { label: letterOf(hub), at: [0, 0], diameter: bore.diameter, note: `shaft${form}${flatFromWords(bore)}` },
    ...(clamp?.heights ?? []).map(
      (height, i): HoleRow => ({
        label: clamps[i]!,
        at: [clamp!.offset, 0],
        height,
        diameter: clamp!.hole,
        note: `${clamp!.screw}x${plain(clamp!.screwLength)}, nut ${clamp!.screw}${clamp!.washers ? ', 2 washers' : ''}`,
      }),
    ),
    ...(setScrew ? [setRow(standing, set!, nextSetScrewLength(outside / 2 - boreReach(bore).far))] : []),
  ];
}

/** Where the flats of a bore begin that is round before them. */
function flatFromWords({ flatFrom }: Standing['plan']['bore']): string {
  return flatFrom === undefined ? '' : ` from ${plain(flatFrom, 2)}`;
}

function setRow({ plan }: Standing, label: string, length: number): HoleRow {
  const { screw, joint, height, hole, bore } = plan.setScrew!;
  const inner = plan.setScrew!.slot?.inner ?? bore?.inner ?? 0;
  return {
    label,
    at: [-inner, 0],
    height,
    diameter: bore ? bore.diameter : hole,
    note: `set ${screw}x${plain(length)}, ${joint}`,
  };
}
