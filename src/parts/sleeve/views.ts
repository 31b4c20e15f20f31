import type { Shaft, ShaftForm } from '../common/bore.js';
import { shaftBar } from '../common/drawn/shaft-bar.js';
import { noted, notedReading, notedSize } from '../common/drawn/spread.js';
import type { Companion, HoleRow, PartViews, SizeChoice } from '../part-views.js';
import type { SleeveDesign } from './dimensions.js';
import { endView } from './views/end.js';
import { inSight, type SleeveInSight, sentence } from './views/in-sight.js';
import { sideView } from './views/side.js';

/** How far a shaft stands out of the sleeve in a picture, in its diameters. */
const BEYOND = 1.5;

/** What of a bore is not round. */
const FORM_WORDS: Readonly<Record<ShaftForm, string>> = {
  round: '',
  d: ', flat',
  'double-d': ', two flats',
  keyed: ', keyway',
  hexagon: ', hexagon',
};

/** What a drawing and the page show of a sleeve: a section through its slit, its ends, and the shafts in it. */
export function sleeveViews(design: SleeveDesign, choice: SizeChoice): PartViews {
  const sleeve = inSight(design, choice);
  const joins = sleeve.plan.bores[1] !== undefined;
  return {
    side: sideView(sleeve),
    end: endView(sleeve, 1),
    ...(joins ? { other: endView(sleeve, 0) } : {}),
    holes: [...boreRows(sleeve), ...clampRows(sleeve)],
    notes: notesOf(sleeve),
    material: design.material.name,
    companions: shaftsIn(design),
    cutTowards: 0,
  };
}

function boreRows({ plan, design }: SleeveInSight): HoleRow[] {
  return plan.bores.map(({ bore, depth }, i): HoleRow => {
    const place = design.ends[i] ? `${noted(depth)} deep` : 'through';
    return {
      label: `B${i + 1}`,
      at: [0, 0],
      diameter: bore.diameter,
      note: `${place}${FORM_WORDS[bore.form]}${bore.flatFrom === undefined ? '' : ` from ${noted(bore.flatFrom)}`}`,
    };
  });
}

function clampRows({ plan, design }: SleeveInSight): HoleRow[] {
  return plan.clamps
    .flatMap(({ heights, offset, hole, screw, screwLength }, i) =>
      heights.map((height) => ({ height, offset, hole, note: `${screw}x${screwLength}, ${design.ends[i]!.name}` })),
    )
    .map(({ height, offset, hole, note }, i) => ({ label: `${i + 1}`, at: [offset, 0], height, diameter: hole, note }));
}

function notesOf({
  design: { form, ends, shaft, fills },
  plan: { chamfer, clamps, bores },
  spread,
}: SleeveInSight): string[] {
  const seat = (value: number) => notedSize(value, spread(value, 'outside'));
  const room = (value: number) => notedSize(value, spread(value, 'inside'));
  const edges = `Edges and mouths broken ${noted(chamfer)} × 45°`;
  if (form === 'bush')
    return [
      `Bush between a shaft of ${shaftWords(shaft)} and a bore of ${noted(fills!)}`,
      'The slit stands under the slit of the hub that clamps it',
      edges,
    ];
  return [
    ...ends.map(
      (end, i) => `${sentence(end.name)}: shaft of ${shaftWords(end.shaft)}, in up to ${noted(bores[i]!.depth)}`,
    ),
    ...clamps.map(
      ({ screw, washers, head, headSeat, nut, nutSeat }, i) =>
        `${sentence(ends[i]!.name)}: ${screw} across the slit, head${washers ? ' on a washer' : ''} ⌀${room(head)} from y −${seat(headSeat)}, nut ${washers ? `on a washer ⌀${room(nut)}` : `${room(nut)} across flats`} from y ${seat(nutSeat)}`,
    ),
    edges,
  ];
}

function shaftWords({ form, diameter, across, key }: Shaft): string {
  if (form === 'hexagon') return `${notedReading(across!)} across flats`;
  const flat =
    form === 'd' ? ` with a flat at ${notedReading(across!)}` : across ? ` with flats of ${notedReading(across)}` : '';
  return `⌀${notedReading(diameter)}${flat}${key ? `, key ${noted(key.width)} wide` : ''}`;
}

/** The shafts up to their stops; of a bush, the one that goes through. */
function shaftsIn({ ends, shaft, printed }: SleeveDesign): Companion[] {
  const { length, bores } = printed;
  const beyond = (one: Shaft) => BEYOND * one.diameter.likely;
  if (ends.length === 0) return [shaftBar('shaft', shaft, -beyond(shaft), length + beyond(shaft))];
  return ends.map((end, i) => {
    const depth = bores[i]!.depth;
    const name = `shaft of the ${end.name}`;
    return i === 0
      ? shaftBar(name, end.shaft, -beyond(end.shaft), depth)
      : shaftBar(name, end.shaft, length - depth, length + beyond(end.shaft));
  });
}
