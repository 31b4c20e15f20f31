import { type Check, notJudged, told } from '../../../judge/check.js';
import type { AdapterDesign } from '../dimensions.js';

/** Keys keep a nut from turning, and nothing holds it down but its load: a load that pulls takes it off. */
export const nutKept: Check<AdapterDesign> = {
  id: 'nut-kept',
  group: 'mount',
  question: 'holds',
  title: 'The nut on its plate, between keys',
  unit: '',
  source: 'derived: the way of the load through nut and plate',
  moves: 'hold, duty.axis, duty.pull',
  grave: true,
  run: ({ hold, duty, pulls }) => {
    if (hold !== 'keys') return undefined;
    if (duty.axis === 'horizontal')
      return told('fail', 'a level axis pushes both ways, and one way takes it off its keys: use hold: screws');
    if (!pulls.includes('away')) {
      if (duty.axis === undefined) return notJudged('duty.axis');
      return told('pass', 'its load holds it down; a stop or a jam may lift it, and it comes back');
    }
    if (pulls.length > 1) return notJudged('duty.pull');
    return told('fail', 'the load pulls it off its keys: use hold: screws, or mount it so that the load presses it on');
  },
};
