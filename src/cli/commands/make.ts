import type { Options } from 'yargs';
import { type Command, SHARED, SHEETS } from '../command.js';
import { parseAccept } from '../parse-accept.js';
import { pictureCall } from '../picture-call.js';
import { requireFormats } from '../require-formats.js';
import { stepLine } from '../step-line.js';

const OPTIONS = {
  out: { type: 'string', default: 'out', requiresArg: true, describe: 'folder in which each part gets its own' },
  accept: SHARED.accept,
  formats: {
    type: 'string',
    default: 'stl,3mf,drawing,page',
    requiresArg: true,
    describe: 'files to write besides the report',
  },
  drawing: { choices: ['finished', 'printed'], default: 'finished', describe: 'sizes that the drawing states' },
  projection: { choices: ['first', 'third'], default: 'first', describe: 'angle by which the drawing shows its views' },
  sheet: {
    choices: ['a4', 'a3'],
    describe: 'paper of the drawing; else A4, or A3 where A4 would show the part smaller than it is',
  },
  step: {
    choices: ['finished', 'printed'],
    default: 'finished',
    describe: 'sizes of the STEP file, where formats hold step',
  },
  'step-threads': {
    choices: ['exact', 'plain'],
    default: 'exact',
    describe: 'threads of the STEP file as helicoids, or left as the bore',
  },
  picture: { type: 'string', requiresArg: true, describe: 'render the part to this PNG file' },
  show: { choices: ['whole', 'section', 'apart'], describe: 'what the picture shows; whole unless given' },
  all: SHARED.all,
  json: SHARED.json,
} as const satisfies Record<string, Options>;

export const makeCommand: Command = {
  name: 'make',
  options: OPTIONS,
  add: (cli, io, start) =>
    cli.command(
      'make <sheets..>',
      'check, model, verify and write a part from each sheet',
      (call) =>
        call
          .positional('sheets', SHEETS)
          .options(OPTIONS)
          .example('leadwright new nut --to my-nut.yaml', 'a sheet to start from')
          .example('leadwright make my-nut.yaml', 'writes out/my-nut/'),
      ({ sheets, out, accept, formats, drawing, projection, sheet, picture: file, show, all, json, ...call }) =>
        start(async () => {
          const chosen = requireFormats(formats);
          const picture = pictureCall(file, show, sheets);
          const acceptances = parseAccept(accept);
          const step = chosen.includes('step')
            ? {
                sizes: call.step,
                threads: call['step-threads'],
                write: (await import('../../work/exact/exact-writer.js')).exactWriter(io.cwd),
              }
            : undefined;
          // the kernel is compiled beside the main thread while the rest is loaded and the sheets are read
          const kernel = import('../../solid/kernel.js').then(({ createKernel }) => createKernel());
          kernel.catch(() => undefined);
          const [{ makeSheets }, { showResults }] = await Promise.all([
            import('../../work/make-sheets.js'),
            import('../show-results.js'),
          ]);
          const steps = stepLine(io);
          const results = await makeSheets(sheets, io, {
            out,
            accept: acceptances,
            kernel,
            formats: chosen,
            drawing,
            projection,
            ...(sheet ? { paper: sheet } : {}),
            ...(step ? { step } : {}),
            ...(picture ? { picture } : {}),
            onStep: steps.tell,
          }).finally(steps.end);
          return showResults(results, io, { json: json === true, writes: true, all: all === true });
        }),
    ),
};
