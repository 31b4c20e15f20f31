import type { Options } from 'yargs';
import { type Command, SHARED } from '../command.js';
import { EXIT } from '../exit-codes.js';
import { widthOf } from '../io.js';

const OPTIONS = { json: SHARED.json } as const satisfies Record<string, Options>;

export const presetsCommand: Command = {
  name: 'presets',
  options: OPTIONS,
  add: (cli, io, start) =>
    cli.command(
      'presets [kind]',
      'list what ships, and how a sheet names it',
      (call) =>
        call
          .positional('kind', { type: 'string', describe: 'material, printer, screw, flange or motor' })
          .options(OPTIONS)
          .example('leadwright presets', 'all of them, a line each')
          .example('leadwright presets material', 'one kind, with figures and sources'),
      ({ kind, json }) =>
        start(async () => {
          const [{ shippedPresets }, { presetLines }, { jsonText }] = await Promise.all([
            import('../../pipeline/shipped-presets.js'),
            import('../../output/terminal/preset-lines.js'),
            import('../../output/report-json.js'),
          ]);
          const rows = shippedPresets(kind);
          io.stdout.write(
            json === true ? jsonText(rows) : `${presetLines(rows, kind !== undefined, widthOf(io)).join('\n')}\n`,
          );
          return EXIT.done;
        }),
    ),
};
