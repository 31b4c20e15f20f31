import type { Options } from 'yargs';
import type { Command } from '../command.js';
import { EXIT } from '../exit-codes.js';

const OPTIONS = {
  to: { type: 'string', requiresArg: true, describe: 'a new file to write; one that is there is never overwritten' },
} as const satisfies Record<string, Options>;

export const newCommand: Command = {
  name: 'new',
  options: OPTIONS,
  add: (cli, io, start) =>
    cli.command(
      'new <kind>',
      'print a commented sheet to start from',
      (call) =>
        call
          .positional('kind', { type: 'string', demandOption: true, describe: 'what for: nut' })
          .options(OPTIONS)
          .example('leadwright new nut', 'prints it')
          .example('leadwright new nut --to my-nut.yaml', 'writes it to a new file'),
      ({ kind, to }) =>
        start(async () => {
          const [{ startSheet }, { writeNewFile }] = await Promise.all([
            import('../../pipeline/start-sheets.js'),
            import('../../work/write-new-file.js'),
          ]);
          const text = startSheet(kind);
          if (to === undefined) io.stdout.write(text);
          else {
            await writeNewFile(to, text, io.cwd);
            io.stderr.write(`${to}: written; change it to your readings, then: leadwright make ${to}\n`);
          }
          return EXIT.done;
        }),
    ),
};
