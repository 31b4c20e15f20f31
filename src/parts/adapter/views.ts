import { plain } from '../../units/format.js';
import { pocketWords } from '../common/drawn/pocket-words.js';
import { roofWords } from '../common/drawn/roof-words.js';
import { roundedUp, sizeWords } from '../common/drawn/spread.js';
import { boreOf } from '../common/joints.js';
import type { HoleRow, PartViews, Point, SizeChoice } from '../part-views.js';
import type { AdapterDesign } from './dimensions.js';
import type { PatternHoles } from './plan.js';
import { opensOnBed } from './print-advice.js';
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
  return [screw ?? 'no listed screw', words, ...(blind === undefined ? [] : [`${plain(blind, 2)} deep`])].join(', ');
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
            `Nut pattern turned ${plain(layout.clocking.turn, 2)}°, its seat ${plain(seatHeight, 2)} from the carriage's face`,
          ]
        : []),
      ...(x === 0 && y === 0 ? [] : [`middle of the carriage's pattern at x ${plain(x, 2)}, y ${plain(y, 2)}`]),
      `least wall ${plain(layout.ligament.gap, 2)}: ${layout.ligament.what}`,
    ].join('; '),
    ...patternsOf(plate).flatMap(([letter, holes]) => [
      ...pocketNote(letter, holes, sight),
      ...roofNote(letter, holes, sight),
    ]),
    ...cornerNote(sight),
    ...middleNotes(sight),
    ...(relief > 0 ? [`Edges on the bed broken ${plain(relief, 2)} × 45°`] : []),
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

/** Rounding of a rectangular plate's corners, or where those of a free one lie. */
function cornerNote({ plate: { outline }, print, spread }: PlateInSight): string[] {
  if (outline.shape === 'polygon') {
    const corners = outline.corners.map((corner) => placed(corner, print));
    const half = spread(2 * Math.max(...corners.map(([x, y]) => Math.hypot(x, y))), 'outside').spread;
    const within = half === undefined ? '' : `, each within ±${roundedUp(half / 2)}`;
    const words = corners.map(([x, y], i) => `${i + 1} (${x.toFixed(2)}, ${y.toFixed(2)})`);
    return [`Corners (x, y)${within}: ${words.join(', ')}`];
  }
  if (outline.shape !== 'rectangular' || outline.corner === 0) return [];
  const radius = print.across(outline.corner);
  return [`Corners R ${sizeWords(radius, spread(radius, 'outside'))}`];
}

function middleNotes({ plate: { catchPocket, keys, cutouts, flats }, print, spread }: PlateInSight): string[] {
  const inside = (size: number) => sizeWords(print.inside(size), spread(size, 'inside'));
  const outside = (size: number) => sizeWords(print.outside(size), spread(size, 'outside'));
  const along = (size: number) => sizeWords(print.along(size), spread(size, 'along'));
  const place = (at: Point) => {
    const [x, y] = placed(at, print);
    return `at x ${plain(x, 2)}, y ${plain(y, 2)}`;
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
      return `Flat at ${plain(angle, 1)}°, ${sizeWords(size, spread(size, 'outside'))} from the axis`;
    }),
    ...cutouts.flatMap(({ at, size, turn }, i) =>
      size ? [`X${i + 1}: cut-out ${size.map(inside).join(' × ')} ${place(at)}, turned ${plain(turn, 1)}°`] : [],
    ),
  ];
}
