import type { TravelExplanation } from '../../drive/explain-travel.js';
import type { Slip } from '../../drive/slips.js';
import { plain } from '../../units/format.js';
import { beside, WIDTH, wrapped } from './layout.js';
import { type Paint, paint } from './paint.js';

/**
 * Why an axis moves wrongly, for people: the ratio, what may have slipped, and the right figure for what the controller
 * holds; as wide as the terminal where words allow.
 *
 * @param travel the explanation
 * @param about the screw's name, and the steps per mm that the controller holds where known
 * @param options colour, and columns of the terminal
 * @returns lines, a line break after each
 */
export function travelText(
  travel: TravelExplanation,
  about: { readonly screw: string; readonly stepsPerMm?: number | undefined },
  { colour = false, width = WIDTH }: { readonly colour?: boolean; readonly width?: number } = {},
): string {
  const style = paint(colour);
  const { ratio, verdict, reversed, words } = travel;
  const share = `${plain(ratio.likely, 4)} times what was asked (${plain(ratio.least, 4)} to ${plain(ratio.most, 4)})`;
  const blocks = [
    wrapped(`${about.screw} travels ${share}.`, 0, width).map(style.bold),
    ...(verdict === 'slip'
      ? [
          ...(reversed ? [wrapped(words[0]!, 0, width)] : []),
          ...slipBlocks(travel.slips, style, width),
          advice(travel, about.stepsPerMm, width),
        ]
      : [words.flatMap((sentence) => wrapped(sentence, 0, width))]),
    takenLines(travel, width).map(style.dim),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`;
}

/** Slips that leave the controller with the same figure stand together, the likeliest group first. */
function slipBlocks(slips: readonly Slip[], style: Paint, width: number): string[][] {
  const heads = [...new Set(slips.map(headOf))];
  return heads.map((head) => [
    ...wrapped(head, 0, width).map(style.bold),
    ...slips.filter((slip) => headOf(slip) === head).flatMap(({ words }) => beside('  –', 4, words, width)),
  ]);
}

function headOf({ wrong, controller_has, steps_per_mm }: Slip): string {
  if (wrong === 'reading') return 'Or the machine is right, and it was read wrongly:';
  return `If the controller holds ${plain(controller_has)} steps per mm, set ${plain(steps_per_mm)}:`;
}

function advice({ slips, factor, steps_per_mm }: TravelExplanation, held: number | undefined, width: number): string[] {
  if (held !== undefined) {
    return wrapped(
      factor === 1
        ? `Leave the ${plain(held)} steps per mm that it holds.`
        : `It holds ${plain(held)} steps per mm: set ${plain(steps_per_mm ?? held * factor)}.`,
      0,
      width,
    );
  }
  const several = new Set(slips.map(headOf)).size > 1;
  const look = several ? 'Look which figure it holds; --steps-per-mm with it leaves one answer.' : '';
  const multiply =
    factor === 1
      ? ''
      : `${several ? 'Either way, multiply' : 'Multiply'} what the controller holds by ${plain(factor, 4)}.`;
  return wrapped(`${multiply} ${look}`, 0, width);
}

function takenLines({ assumptions }: TravelExplanation, width: number): string[] {
  const told: Readonly<Record<string, string>> = {
    uncertainty: 'mm of error in the reading',
    'duty.motor.steps': 'steps a turn',
    'duty.motor.microsteps': 'microsteps',
    'duty.motor.gear': 'turn of the motor for one of the screw',
  };
  const taken = assumptions.map(({ field, value }) => `${value} ${told[field] ?? field}`);
  return taken.length === 0 ? [] : wrapped(`Taken as given: ${taken.join(', ')}.`, 0, width);
}
