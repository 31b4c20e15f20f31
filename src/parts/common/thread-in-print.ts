import { type Check, soft, valued } from '../../judge/check.js';
import { keeps } from '../../judge/judge.js';
import { layersPerPitch, threadDepthInLines } from '../../mechanics/print/resolution.js';
import type { Printer } from '../../presets/printer.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { plain, worked } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import { finerLayer, finerNozzle, oneOf } from './finer-print.js';

/** A thread, and what it is printed with. */
export interface ThreadInPrint {
  readonly screw: Pick<Screw, 'form' | 'pitch' | 'major' | 'minor'>;
  readonly printer: Pick<Printer, 'layer' | 'lineWidth' | 'nozzle' | 'listed'>;
}

const about = { group: 'print', question: 'prints', source: 'common practice' } as const;

/** Height in which two flanks meet, over the pitch. @source iso-965-1: 5/8 H; iso-2904: P/2 */
const HEIGHT = { v: 0.541266, trapezoid: 0.5 };

/** Depth in which the flanks meet, at most the depth that the screw has [mm]. */
function meetingDepth({ form, pitch, major, minor }: ThreadInPrint['screw']): number {
  const height = form === 'metric-v' ? HEIGHT.v : HEIGHT.trapezoid;
  return Math.min(height * pitch.likely, (major.likely - minor.likely) / 2);
}

const NO_LAYER = 'no layer on the list of presets is so fine';
const NO_NOZZLE = 'no nozzle on the list of presets is so fine';

/**
 * A pitch needs layers to show in.
 * @param orElse what else makes such a thread, in words
 */
export const printLayers = (orElse = ''): Check<ThreadInPrint> => ({
  ...about,
  id: 'print-layers',
  title: 'Layers in one pitch',
  unit: '',
  limits: soft({ min: 10 }, { min: 6 }),
  moves: 'printer.layer',
  run: ({ screw: { pitch }, printer }, { pass }) => {
    const layers = layersPerPitch({ pitch: pitch.likely, layer: printer.layer });
    const finer = finerLayer(printer, pitch.likely / pass.min!);
    const cure = oneOf(finer ?? (orElse === '' ? NO_LAYER : ''), orElse);
    return valued(
      exactly(layers),
      `${plain(layers, 1)} layers of ${plain(printer.layer)} mm in a pitch of ${plain(pitch.likely)} mm${keeps(layers, pass) ? '' : cure}`,
    );
  },
});

/**
 * A tooth thinner than a line is not printed.
 * @param orElse as of the layers
 */
export const printThreadDepth = (orElse = ''): Check<ThreadInPrint> => ({
  ...about,
  id: 'print-thread-depth',
  title: 'Thread depth, in lines',
  unit: '',
  limits: soft({ min: 2 }, { min: 1 }),
  moves: 'printer.nozzle, printer.line_width',
  run: ({ screw, printer }, { pass }) => {
    const depth = meetingDepth(screw);
    const lines = threadDepthInLines({ depth, line: printer.lineWidth });
    const finer = finerNozzle(printer, depth / pass.min!);
    const cure = keeps(lines, pass) ? '' : oneOf(finer ?? (orElse === '' ? NO_NOZZLE : ''), orElse);
    return valued(
      exactly(lines),
      `${worked(depth, 'mm')} mm deep, ${plain(lines, 2)} lines of ${worked(printer.lineWidth, 'mm')} mm${cure}`,
    );
  },
});
