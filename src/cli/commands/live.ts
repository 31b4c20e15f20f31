import type { Options } from 'yargs';
import { type Command, STDIN_MARK } from '../command.js';
import { EXIT } from '../exit-codes.js';

const OPTIONS = {
  to: { type: 'string', requiresArg: true, default: 'leadwright.html', describe: 'the file to write' },
} as const satisfies Record<string, Options>;

export const liveCommand: Command = {
  name: 'live',
  options: OPTIONS,
  add: (cli, io, start) =>
    cli.command(
      'live [sheet]',
      'write the whole tool as one page for a browser, phone or computer, offline',
      (call) =>
        call
          .positional('sheet', {
            type: 'string',
            describe: 'what the page opens on; - is stdin',
            coerce: (file: string | undefined) => (file === STDIN_MARK ? '-' : file),
          })
          .options(OPTIONS)
          .example('leadwright live', 'writes leadwright.html: open it in a browser')
          .example('leadwright new nut --to my-nut.yaml', 'a sheet to start from')
          .example('leadwright live my-nut.yaml', 'the same, open on this sheet'),
      ({ sheet, to }) =>
        start(async () => {
          const [{ writeLivePage }, { readInput }] = await Promise.all([
            import('../../work/live-page.js'),
            import('../../work/read-input.js'),
          ]);
          const text = sheet === undefined ? undefined : await readInput(sheet, io);
          await writeLivePage(to, text, io.cwd);
          io.stderr.write(`${to}: written; open it in a browser, it works offline\n`);
          return EXIT.done;
        }),
    ),
};
