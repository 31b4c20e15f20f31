import { COLUMN_SHARE } from '../mechanics/column.js';
import { DRY_PRINT_MOST, FRICTION } from '../mechanics/friction.js';
import { USABLE_TORQUE_SHARE } from '../mechanics/stepper.js';
import { plain } from '../units/format.js';
import { type FullDuty, newtons } from './duty.js';
import type { DriveNumbers, FeedCause } from './numbers.js';

type Figures = Omit<DriveNumbers, 'words'>;

/** What the figures of a screw mean, one sentence a matter, the gravest first. */
export function driveWords(numbers: Figures, duty: FullDuty): readonly string[] {
  return [
    holdingWords(numbers, duty),
    ...torqueWords(numbers, duty),
    feedWords(numbers, duty),
    ...columnWords(numbers, duty),
    ...layerWords(numbers),
    ...playWords(numbers),
  ];
}

function holdingWords(numbers: Figures, duty: FullDuty): string {
  const friction = plain(numbers.self_locking_friction);
  if (duty.axis === 'horizontal') {
    const words = {
      falls: 'without power the carriage can be pushed along by hand',
      'may-creep': 'without power the carriage may be moved by shaking',
      holds: 'without power the carriage normally stays',
    };
    return `Horizontal axis: ${words[numbers.holding]}.`;
  }
  const words = {
    falls: `A vertical axis falls without power: block it before you switch off (the load drives the screw below friction ${friction}).`,
    'may-creep': `A vertical axis may creep without power, most of all once greased or shaken (the load drives the screw below friction ${friction}).`,
    holds: 'A vertical axis normally holds without power; do not rely on it where a fall could hurt.',
  };
  return words[numbers.holding];
}

function torqueWords(numbers: Figures, duty: FullDuty): readonly string[] {
  const words: string[] = [];
  const { torque_raise: raise, motor_share: share, push_force: push } = numbers;
  if (duty.load !== undefined && raise === undefined) {
    words.push(`At friction 0.5 no torque raises ${newtons(duty.load)}: the lead is too steep for a dry nut.`);
  }
  if (raise !== undefined && duty.load !== undefined) {
    words.push(
      `Raising ${newtons(duty.load)} takes ${plain(raise.nominal, 0)} N·mm at the screw, ${plain(raise.high, 0)} with a dry printed nut at friction ${FRICTION.high}; ${dryMost(numbers)}.`,
    );
  }
  if (share !== undefined) {
    const verdict = share.high <= USABLE_TORQUE_SHARE ? 'the motor has enough' : 'the motor may stall with a dry nut';
    words.push(
      `That is ${plain(100 * share.nominal, 0)} % of the motor's holding torque, ${plain(100 * share.high, 0)} % dry; half can be counted on, so ${verdict}.`,
    );
  } else if (push !== undefined) {
    words.push(
      `Half the motor's holding torque pushes with ${newtons(push.nominal)}, ${newtons(push.high)} with a dry nut.`,
    );
  }
  return words;
}

/** Some dry prints rubbed harder than the figure that is judged by. */
function dryMost({ torque_raise_dry_most: most }: Figures): string {
  const end = most === undefined ? 'then no torque raises it' : `then it takes ${plain(most, 0)}`;
  return `dry prints have reached ${DRY_PRINT_MOST}, ${end}`;
}

const CAUSES: Readonly<Record<FeedCause, string>> = {
  motor: 'the motor loses its torque beyond',
  whirl: 'the screw nears its whirl speed beyond',
  sliding: 'the nut rubs too fast beyond',
};

function feedWords(numbers: Figures, duty: FullDuty): string {
  const { value, set_by } = numbers.feed_limit;
  if (value === 0) return 'Half the motor’s holding torque cannot raise this load at all: no feed is left.';
  const limit = `Feed up to ${plain(value, value < 10 ? 1 : 0)} mm/s; ${CAUSES[set_by]}`;
  return duty.feed !== undefined && duty.feed > value ? `${limit}: ${plain(duty.feed)} mm/s is too fast.` : `${limit}.`;
}

function columnWords(numbers: Figures, duty: FullDuty): readonly string[] {
  if (numbers.column_load === undefined || duty.load === undefined) return [];
  const allowed = COLUMN_SHARE * numbers.column_load;
  if (duty.load <= allowed) return [];
  return [
    `Pushed with ${newtons(duty.load)} the screw may buckle: stay under ${newtons(allowed)}, or let the load pull on it.`,
  ];
}

/** An unevenness below this is not seen on a print [mm]. */
const UNSEEN = 0.005;

function layerWords(numbers: Figures): readonly string[] {
  const off = numbers.layers.filter((layer) => !layer.on_grid && layer.worst_off > UNSEEN);
  if (off.length === 0) return [];
  const told = off.map(
    (layer) =>
      `${plain(layer.height)} is ${plain(layer.full_steps, 2)} full steps (${layer.nearest.map((h) => plain(h, 4)).join(' or ')} is whole)`,
  );
  return [`Layers off the full steps may show as bands, less with a well-set driver: ${told.join('; ')}.`];
}

/** What a reversal loses; none where no clearance is known. */
export function playWords(numbers: Pick<Figures, 'play'>): readonly string[] {
  if (numbers.play === undefined) return [];
  return [
    `The nut's play is ${plain(numbers.play.axial)} mm along the axis, ${plain(numbers.play.full_steps, 1)} full steps at each reversal.`,
  ];
}
