import { howMany, plain } from '../../../units/format.js';
import { pocketWords } from '../../common/drawn/pocket-words.js';
import { roofWords } from '../../common/drawn/roof-words.js';
import { noted, notedSize } from '../../common/drawn/spread.js';
import { boreOf, pocketOf } from '../pockets.js';
import { pocketRoof } from '../print-advice.js';
import type { NutInSight } from './in-sight.js';

/** Thread, edges, corners and pockets in words. */
export function notesOf(nut: NutInSight, isThreaded: boolean): string[] {
  return [...threadNotes(nut, isThreaded), ...cornerNotes(nut), ...pocketNotes(nut)];
}

function cornerNotes({ sizes: { flange }, spread }: NutInSight): string[] {
  const radius = (words: string, value: number) => [`${words} R ${notedSize(value, spread(value, 'outside'))}`];
  if (!flange || flange.shape === 'round') return [];
  if (flange.shape === 'two-ear') return radius('Ears', flange.ear / 2);
  return flange.corner > 0 ? radius('Corners', flange.corner) : [];
}

function pocketNotes(nut: NutInSight): string[] {
  const { holes } = nut.design;
  const sided = holes && pocketOf(holes);
  if (!sided) return [];
  const from = sided.side === 'flange' ? 'flange face' : 'side of the body';
  return [`Holes: ${pocketWords(holes.joint, sided.pocket, nut)} from the ${from}`, ...roofNote(nut)];
}

/** The finished part shows no roof, so a note says what the file has. */
function roofNote({ design }: NutInSight): string[] {
  const roof = pocketRoof(design);
  return roof ? [`Holes: ${roofWords(roof, boreOf(design.holes!))}`] : [];
}

function threadNotes({ design, sizes }: NutInSight, isThreaded: boolean): string[] {
  const { thread, lead } = sizes;
  const { screw } = design;
  const edges = `edges broken ${noted(sizes.relief)}${sizes.fillet > 0 ? `, fillet R ${noted(sizes.fillet)}` : ''}`;
  if (!isThreaded) return [`For ${screw.designation ?? 'the measured screw'}; ${edges}`];
  return [
    `Thread for ${screw.designation ?? 'the measured screw'}: ${screw.hand}-hand, ${howMany(screw.starts, 'start')}, pitch ${noted(thread.pitch, 3)}, lead ${noted(lead, 3)}`,
    `Flank angle ${plain((Math.atan(thread.flankSlope) * 180) / Math.PI, 1)}°; lead-in ${noted(sizes.leadIn)} × 45° past the thread, ${edges}`,
  ];
}
