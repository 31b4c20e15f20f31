import { type Check, soft, told, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { leadAngle } from '../../../mechanics/power-screw/lead-angle.js';
import { flankOverhangStep, largestLayer } from '../../../mechanics/print/flank-overhang.js';
import { layersPerPitch, threadDepthInLines } from '../../../mechanics/print/resolution.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { LEDGE } from '../../common/ledge.js';
import type { NutDesign } from '../dimensions.js';
import { hangingLedge, opensOnBed, printAdvice } from '../print-advice.js';

type NutCheck = Check<NutDesign>;
const print = { group: 'print', question: 'prints', source: 'common practice' } as const;
const TAP = 'print a plain pilot hole and tap it with the screw or a tap instead';

/** A layer height that is no higher, to a hundredth. */
function floored(height: number): number {
  return Math.floor(100 * height + 1e-9) / 100;
}

/** A pitch needs layers to show in. */
export const printLayers: NutCheck = {
  ...print,
  id: 'print-layers',
  title: 'Layers in one pitch',
  unit: '',
  limits: soft({ min: 10 }, { min: 6 }),
  moves: 'printer.layer',
  run: ({ screw, printer }, { pass }) => {
    const layers = layersPerPitch({ pitch: screw.pitch.likely, layer: printer.layer });
    const finest = floored(screw.pitch.likely / pass.min!);
    const help = keeps(layers, pass) ? '' : `; use a layer of at most ${plain(finest, 2)} mm, or ${TAP}`;
    return valued(
      exactly(layers),
      `${plain(layers, 1)} layers of ${plain(printer.layer)} mm in a pitch of ${plain(screw.pitch.likely)} mm${help}`,
    );
  },
};

/** A tooth thinner than a line is not printed. */
export const printThreadDepth: NutCheck = {
  ...print,
  id: 'print-thread-depth',
  title: 'Depth of the thread, in printed lines',
  unit: '',
  limits: soft({ min: 2 }, { min: 1 }),
  moves: 'printer.nozzle, printer.line_width',
  run: ({ screw, printer }, { pass }) => {
    const depth = (screw.form === 'metric-v' ? 0.541266 : 0.5) * screw.pitch.likely;
    const lines = threadDepthInLines({ depth, line: printer.lineWidth });
    const help = keeps(lines, pass) ? '' : `; use a finer nozzle, or ${TAP}`;
    return valued(
      exactly(lines),
      `${plain(depth)} mm deep, ${plain(lines, 2)} lines of ${plain(printer.lineWidth)} mm${help}`,
    );
  },
};

/** What hangs over air as the nut lies on the bed: the flange itself, or ceilings of pockets that open downwards. */
export const printSupport: NutCheck = {
  ...print,
  id: 'print-support',
  title: 'Reach over air',
  unit: 'mm',
  limits: soft(LEDGE.pass, LEDGE.fail),
  moves: 'holes.head, holes.joint, flange.offset, mounting',
  run: (design, { pass }) => {
    if (!design.family && printAdvice(design).support === 'needed')
      return told('caution', 'the flange is printed over air and wants support underneath');
    const ledge = hangingLedge(design);
    const cure = keeps(ledge, pass)
      ? ''
      : '; let them open upwards with holes.head, take a joint without pockets, or have them roofed: printer: {bridging: membrane}';
    return ledge > 0
      ? valued(exactly(ledge), `ceilings of the pockets that open on the bed reach ${plain(ledge)} mm over air${cure}`)
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
  title: 'Overhang of the flanks, in lines a layer',
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
    const help = keeps(ratio, pass)
      ? ''
      : `; layers of ${plain(floored(best), 2)} mm give a clean underside, else chase the thread with the screw`;
    return valued(exactly(ratio), `each layer reaches ${plain(step)} mm over the one below${help}`);
  },
};

/** The first turn is where a screw jams. */
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
