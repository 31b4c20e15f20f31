import { type Check, soft, told, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { leadAngle } from '../../../mechanics/power-screw/lead-angle.js';
import { flankOverhangStep, largestLayer } from '../../../mechanics/print/flank-overhang.js';
import { plain, worked } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { finerLayer, oneOf } from '../../common/finer-print.js';
import { LEDGE } from '../../common/ledge.js';
import { printLayers, printThreadDepth } from '../../common/thread-in-print.js';
import type { NutDesign } from '../dimensions.js';
import { hangingLedge, opensOnBed, printAdvice } from '../print-advice.js';

type NutCheck = Check<NutDesign>;
const print = { group: 'print', question: 'prints', source: 'common practice' } as const;
const TAP = 'print a plain pilot hole and tap it with the screw or a tap instead';

/** The thread's own, as a nut can also be made. */
export const threadInPrint: readonly NutCheck[] = [printLayers(TAP), printThreadDepth(TAP)];

/** What hangs over air as the nut lies on the bed: the flange itself, or ceilings of pockets that open downwards. */
export const printSupport: NutCheck = {
  ...print,
  id: 'print-support',
  title: 'Reach over air',
  unit: 'mm',
  limits: soft(LEDGE.pass, LEDGE.fail),
  moves: 'holes.head, holes.joint, flange.offset, mounting, printer.bridging',
  run: (design, { pass }) => {
    if (!design.family && printAdvice(design).support === 'needed')
      return told('caution', 'the flange is printed over air and wants support underneath');
    const ledge = hangingLedge(design);
    const cure = keeps(ledge, pass)
      ? ''
      : `; let them open upwards with holes.head, take a joint without pockets, or ${design.holes?.roof ? 'leave more over them: too little stands there for that roof' : 'have them roofed (printer.bridging: membrane)'}`;
    return ledge > 0
      ? valued(
          exactly(ledge),
          `ceilings of the pockets that open on the bed reach ${worked(ledge, 'mm')} mm over air${cure}`,
        )
      : valued(
          exactly(0),
          opensOnBed(design) ? 'pockets that open on the bed are roofed' : 'no pocket of the holes opens on the bed',
        );
  },
};

/** The underside of every tooth is printed over air. */
export const printOverhang: NutCheck = {
  ...print,
  id: 'print-overhang',
  title: 'Flank overhang, lines a layer',
  unit: '',
  limits: soft({ max: 0.75 }),
  moves: 'printer.layer, printer.line_width',
  run: ({ screw, printer, finished }, { pass }) => {
    const angles = {
      flankAngle: screw.flankAngle,
      leadAngle: leadAngle({ lead: finished.lead, meanDiameter: screw.pitchDiameter.likely }),
    };
    const step = flankOverhangStep({ ...angles, layer: printer.layer });
    const best = largestLayer({ ...angles, step: pass.max! * printer.lineWidth });
    const ratio = step / printer.lineWidth;
    const help = keeps(ratio, pass) ? '' : oneOf(finerLayer(printer, best), 'chase the thread with the screw');
    return valued(exactly(ratio), `each layer reaches ${worked(step, 'mm')} mm over the one below${help}`);
  },
};

/**
 * The first turn is where a screw jams.
 *
 *     chamfer = lead_in, at 45° on both ends of the bore
 */
export const threadLeadIn: NutCheck = {
  ...print,
  id: 'thread-lead-in',
  question: 'goes-on',
  title: 'Lead-in chamfer at both ends',
  unit: 'mm',
  limits: soft({ min: 0.3 }),
  moves: 'lead_in',
  trifle: true,
  run: ({ finished: { leadIn } }, { pass }) => {
    const cure = keeps(leadIn, pass) ? '' : `; the first turn starts easier from lead_in: ${plain(pass.min!)} mm on`;
    return valued(exactly(leadIn), `${plain(leadIn)} mm at 45° at both ends of the bore${cure}`);
  },
};
