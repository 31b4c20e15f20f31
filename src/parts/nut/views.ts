import { screwBar } from '../common/drawn/screw-bar.js';
import { threadDetail } from '../common/drawn/thread-detail.js';
import type { HoleRow, PartViews, SizeChoice } from '../part-views.js';
import type { NutDesign } from './dimensions.js';
import { endsOf } from './solid.js';
import { memberOf } from './variants/views/member-of.js';
import { endView } from './views/end.js';
import { inSight, type NutInSight } from './views/in-sight.js';
import type { Member } from './views/member.js';
import { notesOf } from './views/notes.js';
import { sideView } from './views/side.js';

/** How far the screw stands out of the nut at either end, in pitches, and at least [mm]. */
const SCREW_BEYOND = { pitches: 2, least: 7 };

/** What a drawing and the page show of a nut besides its mesh, whatever its family. */
export function nutViews(design: NutDesign, choice: SizeChoice): PartViews {
  const nut = inSight(design, choice);
  const member = memberOf(nut);
  const { bottom } = endsOf(design.printed);
  const past = Math.max(SCREW_BEYOND.least, SCREW_BEYOND.pitches * design.screw.lead);
  const screw = screwBar(design.screw, {
    from: bottom - past,
    to: memberOf(inSight(design, 'printed')).top + past,
    pitch: design.printed.thread.pitch,
    chordError: design.printer.chordError,
  });
  const further = [...(member.threads.length > 0 ? [threadDetail(nut)] : []), ...member.further];
  return {
    side: sideView(nut, member),
    end: endView(nut, member),
    ...(further.length > 0 ? { further } : {}),
    holes: [...holeRows(nut), ...member.rows],
    notes: [...notesOf(nut, member.threads.length > 0), ...bentWords(member), ...member.notes],
    material: design.material.name,
    companions: [screw, ...member.companions],
    ...(member.apart ? { apart: member.apart } : {}),
    cutTowards: member.cutTowards ?? member.planes[0],
  };
}

function holeRows({ design, holes }: NutInSight): HoleRow[] {
  const { screw, joint } = design.holes ?? {};
  const note = screw ? `${screw}, ${joint}` : (joint ?? '');
  return holes.map(({ at, diameter }, i) => ({ label: `${i + 1}`, at, diameter, note }));
}

/** Said where the halves of the section lie in two planes. */
function bentWords({ planes: [up, down] }: Member): string[] {
  return Math.abs(((down - up + 360) % 360) - 180) < 0.05 ? [] : ['Section A–A: its two planes are turned into one'];
}
