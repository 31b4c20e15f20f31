import { type Check, notJudged, told } from '../../../judge/check.js';
import { PULLS } from '../../../sheet/sections/duty.js';
import { plain } from '../../../units/format.js';
import { thinNut } from '../../common/bought-nut.js';
import type { NutDesign } from '../dimensions.js';
import type { Variant } from './types.js';

type Holder = Variant & { kind: 'holder' };

/** A pocket holds its nut one way only: the other way nothing but a carriage that closes it does. */
export const nutHeld: Check<NutDesign> = {
  id: 'nut-held',
  group: 'family',
  question: 'holds',
  title: 'The metal nut in its pocket',
  unit: '',
  source: 'derived: the way of the load through nut and flange',
  moves: 'mounting, stands, duty.axis, duty.pull, family.pocket, family.nut.height, carriage.bore',
  grave: true,
  run: (design) => {
    const { family, screw } = design;
    if (family?.kind !== 'holder') return undefined;
    const found = heldIn(design, family);
    const thin = thinNut(family.pocket.nut.height, screw.pitch.likely, {
      holds: 'its load',
      field: 'family.nut.height',
    });
    return thin && found.kind === 'told' && found.verdict === 'pass' ? told('caution', thin) : found;
  },
};

/** Whether the load, or the carriage, keeps the nut in its pocket. */
function heldIn(design: NutDesign, family: Holder) {
  const { duty, pulls, stands } = design;
  // the nut bears on the floor of its pocket while the carriage pulls that floor towards it
  const pressed = family.opens === 'end' && stands === 'away' ? 'onto' : 'away';
  const asked = duty.axis === 'horizontal' ? PULLS : pulls;
  if (asked.every((pull) => pull === pressed)) return told('pass', 'the load presses it into its pocket');
  return family.opens === 'face' ? onCarriage(design, family) : openPocket(design);
}

function openPocket({ duty, pulls, mounting }: NutDesign) {
  if (duty.axis === undefined) return notJudged('duty.axis');
  if (duty.axis === 'horizontal')
    return told(
      'caution',
      'a push towards the open end of its pocket takes it out; glue it in, or close the pocket with a plate',
    );
  if (pulls.length > 1) return notJudged(mounting === undefined ? 'mounting' : 'stands');
  return told(
    'fail',
    'the load pulls it out where its pocket is open; turn the mounting over, so that the load presses it in',
  );
}

function onCarriage({ carriage: { bore } }: NutDesign, { pocket: { nut } }: Holder) {
  if (!bore) return notJudged('carriage.bore');
  return bore.most < nut.acrossFlats
    ? told('pass', 'the carriage closes its pocket')
    : told(
        'fail',
        `the carriage, bored ${plain(bore.likely)} mm, lets it through; a bore below its ${plain(nut.acrossFlats)} mm across flats closes the pocket`,
      );
}
