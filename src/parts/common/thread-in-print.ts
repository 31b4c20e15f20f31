import { type Check, soft, valued } from '../../judge/check.js';
import { keeps } from '../../judge/judge.js';
import { layersPerPitch, threadDepthInLines } from '../../mechanics/print/resolution.js';
import type { Printer } from '../../presets/printer.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';

/** A thread, and what it is printed with. */
export interface ThreadInPrint {
  readonly screw: Pick<Screw, 'pitch' | 'major' | 'minor'>;
  readonly printer: Pick<Printer, 'layer' | 'lineWidth'>;
}

const about = { group: 'print', question: 'prints', source: 'common practice' } as const;

/** A pitch needs layers to show in. */
export const printLayers: Check<ThreadInPrint> = {
  ...about,
  id: 'print-layers',
  title: 'Layers in one pitch',
  unit: '',
  limits: soft({ min: 10 }, { min: 6 }),
  moves: 'printer.layer',
  run: ({ screw, printer }, { pass }) => {
    const count = layersPerPitch({ pitch: screw.pitch.likely, layer: printer.layer });
    const cure = keeps(count, pass) ? '' : '; use a finer printer.layer';
    return valued(
      exactly(count),
      `layers of ${plain(printer.layer)} mm in a pitch of ${plain(screw.pitch.likely)} mm${cure}`,
    );
  },
};

/** A tooth thinner than a line is not printed. */
export const printThreadDepth: Check<ThreadInPrint> = {
  ...about,
  id: 'print-thread-depth',
  title: 'Depth of the thread, in printed lines',
  unit: '',
  limits: soft({ min: 2 }, { min: 1 }),
  moves: 'printer.nozzle, printer.line_width',
  run: ({ screw, printer }, { pass }) => {
    const depth = (screw.major.likely - screw.minor.likely) / 2;
    const lines = threadDepthInLines({ depth, line: printer.lineWidth });
    const cure = keeps(lines, pass) ? '' : '; use a finer nozzle';
    return valued(exactly(lines), `${plain(depth)} mm deep, lines of ${plain(printer.lineWidth)} mm${cure}`);
  },
};
