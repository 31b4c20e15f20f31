import { type Check, soft, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { flatsOf } from '../../common/bore.js';
import type { CouplingDesign } from '../dimensions.js';

type PadCheck = Check<CouplingDesign>;
const pad = { group: 'mount', source: 'common practice', grave: true } as const;

/** Whether something rigid lies between the shaft ends, in the hole of the insert. */
function isRigid({ insert }: CouplingDesign): boolean {
  return insert.pad.kind === 'disc' || insert.pad.kind === 'ball';
}

/**
 * Both shafts and the pad between them stand in the hole of the insert.
 *
 *     room = insert.hole − the greatest of ⌀pad and the shafts' diameters
 */
export const padRoom: PadCheck = {
  ...pad,
  id: 'pad-room',
  question: 'goes-on',
  title: 'Room of pad and shafts in the hole of the insert',
  unit: 'mm',
  limits: soft({ min: 0.2 }, { min: 0 }),
  moves: 'insert.hole, insert.pad',
  run: (design, { pass }) => {
    const { hubs, insert } = design;
    if (!isRigid(design)) return undefined;
    const { hole } = insert.finished;
    const { kind, diameter } = insert.pad;
    const widest = Math.max(diameter, ...hubs.map(({ shaft }) => shaft.diameter.most));
    const cure = keeps(hole - widest, pass) ? '' : '; widen insert.hole, or leave it out';
    const what = widest > diameter ? 'shaft' : kind;
    return valued(
      exactly(hole - widest),
      `a ${what} of ${plain(widest, 2)} mm in a hole of ${plain(hole, 2)} mm${cure}`,
    );
  },
};

/**
 * A pad that lies aside carries a shaft by its rim, and beyond it lets the screw drop.
 *
 *     share = (insert.hole − ⌀pad)/2 / the least that a shaft's end reaches from its axis
 */
export const padAside: PadCheck = {
  ...pad,
  id: 'pad-aside',
  question: 'carries',
  title: 'How far the pad may lie aside, as a share of the shaft’s end',
  unit: '',
  limits: soft({ max: 0.5 }, { max: 1 }),
  moves: 'insert.hole, insert.pad',
  run: (design, { pass }) => {
    const { hubs, insert } = design;
    const { kind, diameter } = insert.pad;
    const aside = (insert.finished.hole - diameter) / 2;
    if (!isRigid(design) || hubs.length === 0 || aside < 0) return undefined;
    const reach = Math.min(...hubs.map(({ shaft }) => shaft.diameter.likely / 2 - flatsOf(shaft).depth));
    const cure = keeps(aside / reach, pass) ? '' : `; a wider ${kind} (insert.pad.diameter), or a narrower insert.hole`;
    return valued(
      exactly(aside / reach),
      `a ${kind} of ${plain(diameter, 2)} mm lies up to ${plain(aside, 2)} mm aside in its hole, a shaft’s end reaches ${plain(reach, 2)} mm${cure}`,
    );
  },
};
