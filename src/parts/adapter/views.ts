import { plain } from '../../units/format.js';
import { pocketWords } from '../common/drawn/pocket-words.js';
import { roofWords } from '../common/drawn/roof-words.js';
import { noted, notedSize, roundedUp } from '../common/drawn/spread.js';
import { boreOf } from '../common/joints.js';
import type { HoleRow, PartViews, Point, SizeChoice } from '../part-views.js';
import type { AdapterDesign } from './dimensions.js';
import type { PatternHoles } from './plan.js';
import { opensOnBed } from './print-advice.js';
import type { Disc } from './turn-terms.js';
import { adapterCompanions } from './views/companions.js';
import { faceView, hasOwnCarriageFace } from './views/end.js';
import { holeDiameter, inSight, type PlateInSight, patternsOf, placed } from './views/in-sight.js';
import { sideView } from './views/side.js';

/** What a drawing and the page show of a plate: a section through both patterns, its faces, and nut and screw on it. */
export function adapterViews(design: AdapterDesign, choice: SizeChoice): PartViews {
  const sight = inSight(design, choice);
  return {
    side: sideView(sight),
    end: faceView(sight, 'high'),
    ...(hasOwnCarriageFace(sight) ? { other: faceView(sight, 'low') } : {}),
    holes: [
      ...patternsOf(sight.plate).flatMap(([letter, holes]) => rowsOf(letter, holes, sight)),
      ...roundCutouts(sight),
    ],
    notes: notesOf(sight),
    material: design.material.name,
    companions: adapterCompanions(design),
    cutTowards: sight.cut[0],
  };
}

function rowsOf(letter: string, holes: PatternHoles, { print }: PlateInSight): HoleRow[] {
  return holes.centres.map((centre, i) => ({
    label: `${letter}${i + 1}`,
    at: placed(centre, print),
    diameter: holeDiameter(holes, print),
    note: jointWords(holes),
  }));
}

/** `M3, insert, 7 deep` */
function jointWords({ hole: { screw, joint }, blind }: PatternHoles): string {
  const words = joint === 'through' ? 'through' : joint;
  return [screw ?? 'no listed screw', words, ...(blind === undefined ? [] : [`${noted(blind)} deep`])].join(', ');
}

function roundCutouts({ plate, print }: PlateInSight): HoleRow[] {
  return plate.cutouts.flatMap(({ at, diameter }, i): HoleRow[] =>
    diameter === undefined
      ? []
      : [{ label: `X${i + 1}`, at: placed(at, print), diameter: print.inside(diameter), note: 'cut-out' }],
  );
}

function notesOf(sight: PlateInSight): string[] {
  const { plate, design, relief } = sight;
  const { layout, nut, seatHeight, carriage } = design;
  const [x, y] = carriage.offset;
  return [
    [
      ...(nut
        ? [
            `Nut pattern turned ${plain(layout.clocking.turn, 2)}°, its seat ${noted(seatHeight)} from the carriage's face`,
          ]
        : []),
      ...(x === 0 && y === 0 ? [] : [`middle of the carriage's pattern at x ${noted(x)}, y ${noted(y)}`]),
      `least wall ${noted(layout.ligament.gap)}: ${layout.ligament.what}`,
    ]
      .join('; ')
      .replace(/^[lm]/, (first) => first.toUpperCase()),
    ...patternsOf(plate).flatMap(([letter, holes]) => [
      ...pocketNote(letter, holes, sight),
      ...roofNote(letter, holes, sight),
    ]),
    ...cornerNote(sight),
    ...middleNotes(sight),
    ...(relief > 0 ? [`Edges on the bed broken ${noted(relief)} × 45°`] : []),
  ];
}

function pocketNote(letter: string, { hole, pocket, opens }: PatternHoles, sight: PlateInSight): string[] {
  if (!pocket) return [];
  const from = opens === 'high' ? 'from the outer face' : "from the carriage's face";
  return [`${letter}: ${pocketWords(hole.joint, pocket, sight)} ${from}`];
}

/** The finished part shows no roof, so a note says what the file has. */
function roofNote(letter: string, holes: PatternHoles, { design, bed }: PlateInSight): string[] {
  const { hole, roof } = holes;
  if (!roof || !opensOnBed(holes, bed)) return [];
  return [`${letter}: ${roofWords({ kind: roof, layer: design.printer.layer }, boreOf(hole))}`];
}

/** Rounding of a rectangular plate's corners, where those of a free one lie, or what a band is drawn around. */
function cornerNote(sight: PlateInSight): string[] {
  const { plate, print, spread } = sight;
  const { outline } = plate;
  if (outline.shape === 'hull') return [bandNote(sight, outline.discs)];
  if (outline.shape === 'polygon') {
    const corners = outline.corners.map((corner) => placed(corner, print));
    const half = spread(2 * Math.max(...corners.map(([x, y]) => Math.hypot(x, y))), 'outside').spread;
    const within = half === undefined ? '' : `, each within ±${roundedUp(half / 2)} mm`;
    const words = corners.map(([x, y], i) => `${i + 1} (${x.toFixed(2)} mm, ${y.toFixed(2)} mm)`);
    return [`Corners (x, y)${within}: ${words.join(', ')}`];
  }
  if (outline.shape !== 'rectangular' || outline.corner === 0) return [];
  const radius = print.across(outline.corner);
  return [`Corners R ${notedSize(radius, spread(radius, 'outside'))}`];
}

/** `Outline: a band around R 7.50 ±0.03 mm about C1, C2; R 12.00 ±0.04 mm about the axis`; what lies within it is left out. */
function bandNote({ plate, print, spread, outline }: PlateInSight, discs: readonly Disc[]): string {
  const rounds = new Map<string, string[]>();
  for (const { at, radius } of discs) {
    const reach = print.outside(2 * radius) / 2;
    const [x, y] = placed(at, print);
    if (!outline.some((corner) => Math.abs(Math.hypot(corner[0] - x, corner[1] - y) - reach) < 1e-3)) continue;
    const size = notedSize(reach, spread(reach, 'outside'));
    rounds.set(size, [...(rounds.get(size) ?? []), placeWords(at, plate, print)]);
  }
  const words = [...rounds].map(([size, places]) => `R ${size} about ${places.join(', ')}`);
  return `Outline: a band around ${words.join('; ')}`;
}

/** The hole that stands at a place by its number, or the place. */
function placeWords(at: Point, plate: PlateInSight['plate'], print: PlateInSight['print']): string {
  const [x, y] = at;
  for (const [letter, { centres }] of patternsOf(plate)) {
    const i = centres.findIndex((centre) => Math.hypot(centre[0] - x, centre[1] - y) < 1e-6);
    if (i >= 0) return `${letter}${i + 1}`;
  }
  if (Math.hypot(x, y) < 1e-6) return 'the axis';
  const [along, up] = placed(at, print);
  return `(${noted(along)}, ${noted(up)})`;
}

function middleNotes({ plate: { catchPocket, keys, cutouts, flats }, print, spread }: PlateInSight): string[] {
  const inside = (size: number) => notedSize(print.inside(size), spread(size, 'inside'));
  const outside = (size: number) => notedSize(print.outside(size), spread(size, 'outside'));
  const along = (size: number) => notedSize(print.along(size), spread(size, 'along'));
  const place = (at: Point) => {
    const [x, y] = placed(at, print);
    return `at x ${noted(x)}, y ${noted(y)}`;
  };
  return [
    ...(catchPocket
      ? [
          `Catch nut: ${catchPocket.shape} ${inside(catchPocket.acrossFlats)} across flats, ${along(catchPocket.depth)} deep from the outer face`,
        ]
      : []),
    ...(keys[0]
      ? [
          `Keys ${keys[0].size.map(outside).join(' × ')}, ${along(keys[0].height)} high, their middles ${keys.map(({ center, turn }) => `${place(center)}, turned ${plain(turn, 1)}°`).join('; ')}`,
        ]
      : []),
    ...flats.map(({ angle, distance }) => {
      const size = print.outside(2 * distance) / 2;
      return `Flat at ${plain(angle, 1)}°, ${notedSize(size, spread(size, 'outside'))} from the axis`;
    }),
    ...cutouts.flatMap(({ at, size, turn }, i) =>
      size ? [`X${i + 1}: cut-out ${size.map(inside).join(' × ')} ${place(at)}, turned ${plain(turn, 1)}°`] : [],
    ),
  ];
}
