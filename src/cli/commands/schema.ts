import type { Command } from '../command.js';
import { EXIT } from '../exit-codes.js';

export const schemaCommand: Command = {
  name: 'schema',
  options: {},
  add: (cli, io, start) =>
    cli.command(
      'schema [kind]',
      'print the JSON Schema of a sheet, for editors',
      (call) =>
        call
          .positional('kind', { type: 'string', describe: 'what for: nut; every kind unless given' })
          .example('leadwright schema nut', 'for the settings of an editor'),
      ({ kind }) =>
        start(async () => {
          const [{ sheetSchema }, { fleetJsonSchema }, { jsonText }] = await Promise.all([
            import('../../pipeline/sheet-schema.js'),
            import('../../fleet/json-schema.js'),
            import('../../output/report-json.js'),
          ]);
          io.stdout.write(jsonText(kind === 'fleet' ? fleetJsonSchema() : sheetSchema(kind)));
          return EXIT.done;
        }),
    ),
};
