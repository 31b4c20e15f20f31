import type { Options } from 'yargs';
import { type Command, SHARED, SHEETS } from '../command.js';
import { parseAccept } from '../parse-accept.js';

const OPTIONS = {
  accept: SHARED.accept,
  advise: { type: 'boolean', describe: 'work out the least changes that bring open checks to pass' },
  mate: { type: 'boolean', describe: 'hold the screw in the part as printed, as solids' },
  all: SHARED.all,
  json: SHARED.json,
} as const satisfies Record<string, Options>;

export const checkCommand: Command = {
  name: 'check',
  options: OPTIONS,
  add: (cli, io, start) =>
    cli.command(
      'check <sheets..>',
      'show the fit report of each sheet; nothing is written',
      (call) =>
        call
          .positional('sheets', SHEETS)
          .options(OPTIONS)
          .example('leadwright new nut --to my-nut.yaml', 'a sheet to start from')
          .example('leadwright check my-nut.yaml', 'whether it fits, and what to see to')
          .example('leadwright check my-nut.yaml --all', 'sizes, every check and drive numbers')
          .example('leadwright check my-nut.yaml --advise', 'and what would cure what is open'),
      ({ sheets, accept, advise, mate, all, json }) =>
        start(async () => {
          const acceptances = parseAccept(accept);
          const [{ checkSheets }, { showResults }] = await Promise.all([
            import('../../work/check-sheets.js'),
            import('../show-results.js'),
          ]);
          const results = await checkSheets(sheets, io, {
            accept: acceptances,
            advise: advise === true,
            mate: mate === true,
          });
          return showResults(results, io, { json: json === true, writes: false, all: all === true });
        }),
    ),
};
