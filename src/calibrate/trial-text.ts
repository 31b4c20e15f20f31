import { plain } from '../units/format.js';
import { GOES, SINCE, TIGHT } from './trial.js';

/** What a trial's form knows of the nut that was printed. */
export interface TrialHead {
  readonly nut: string;
  readonly profile?: string;
  readonly material: string;
  readonly printer: { readonly nozzle: number; readonly layer: number };
  readonly applied: { readonly plane: number; readonly axial: number; readonly hole_offset: number };
  readonly doubt: { readonly axial: number };
  readonly pitch: number;
  readonly flank_angle: number;
  readonly fit: { readonly diametral: number; readonly axial: number };
  readonly wanted: { readonly length: number; readonly bore: number; readonly body: number; readonly play: number };
  readonly edges: number;
}

const mm = (value: number) => `${plain(value, 4)} mm`;
const percent = (share: number) => `${plain(100 * share, 4)} %`;

/** A form to fill in beside a finished nut. */
export function blankTrial(head: TrialHead): string {
  const { applied, wanted, fit } = head;
  return [
    '# What you see on the finished nut. Blanks are fine. Then: leadwright calibrate THIS-FILE',
    '# After a change print the next nut, fill in its form too, and give all of them, the oldest first.',
    '',
    `goes:             # on the screw, by hand: ${GOES.join(', ')}`,
    'jams_after:       # turns, where it goes free and then jams',
    'play:             # free play along the axis with the nut wholly on, such as 0.15 ± 0.02 mm; a dial, or push and pull',
    `tight:            # where: ${TIGHT.join(', ')}`,
    `since:            # ${SINCE.join(', ')}`,
    'run_in: no        # yes where the screw has worn the edges of the layers off',
    'length:           # over all',
    'body:             # outside, 3 mm away from the bed',
    'body_at_bed:      # outside, at the end that lay on the bed',
    'bore:             # by calipers, or the largest drill shank that goes in',
    'screw_runout:     # dial at its middle, where it is tight once a turn',
    '',
    '# The nut as it was made:',
    'results: trial',
    `nut: ${head.nut}`,
    ...(head.profile === undefined ? [] : [`profile: ${head.profile}`]),
    `material: ${head.material}`,
    `printer: {nozzle: ${mm(head.printer.nozzle)}, layer: ${mm(head.printer.layer)}}`,
    `applied: {plane: ${percent(applied.plane)}, axial: ${percent(applied.axial)}, hole_offset: ${mm(applied.hole_offset)}}`,
    `doubt: {axial: ${percent(head.doubt.axial)}}`,
    `pitch: ${mm(head.pitch)}`,
    `flank_angle: ${plain(head.flank_angle)} deg`,
    `fit: {diametral: ${mm(fit.diametral)}, axial: ${mm(fit.axial)}}`,
    `wanted: {length: ${mm(wanted.length)}, bore: ${mm(wanted.bore)}, body: ${mm(wanted.body)}, play: ${mm(wanted.play)}}`,
    `edges: ${mm(head.edges)}`,
    '',
  ].join('\n');
}
