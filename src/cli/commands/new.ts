import type { Options } from 'yargs';
import { START_KINDS } from '../../sheet/start-kinds.js';
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
      'new <kind> [sheet]',
      'print a commented sheet to start from',
      (call) =>
        call
          .positional('kind', { type: 'string', demandOption: true, describe: START_KINDS.join(', ') })
          .positional('sheet', { type: 'string', describe: 'for results: the coupon’s sheet; for trial: the nut’s' })
          .options(OPTIONS)
          .example('leadwright new nut', 'prints it')
          .example('leadwright new coupon --to coupon.yaml', 'a coupon to calibrate by')
          .example('leadwright new results coupon.yaml', 'what to read off it')
          .example('leadwright new trial', 'what to look at on a printed nut')
          .example('leadwright new nut --to my-nut.yaml', 'writes it to a new file'),
      ({ kind, sheet, to }) =>
        start(async () => {
          const [{ newText }, { writeNewFile }] = await Promise.all([
            import('../../work/new-text.js'),
            import('../../work/writer/files.js'),
          ]);
          const text = await newText(kind, sheet, io);
          if (to === undefined) io.stdout.write(text);
          else {
            await writeNewFile(to, text, io.cwd);
            const next =
              kind.endsWith('results') || kind === 'trial' ? 'calibrate' : kind.endsWith('fleet') ? 'fleet' : 'make';
            io.stderr.write(`${to}: written; change it to your readings, then: leadwright ${next} ${to}\n`);
          }
          return EXIT.done;
        }),
    ),
};
