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
          .positional('kind', {
            type: 'string',
            describe: 'a kind of part, axis, results or fleet; every kind of part unless given',
          })
          .example('leadwright schema nut', 'for the settings of an editor'),
      ({ kind }) =>
        start(async () => {
          const [{ jsonText }, schema] = await Promise.all([import('../../output/report-json.js'), schemaFor(kind)]);
          io.stdout.write(jsonText(schema));
          return EXIT.done;
        }),
    ),
};

async function schemaFor(kind: string | undefined): Promise<object> {
  if (kind === 'fleet') return (await import('../../fleet/json-schema.js')).fleetJsonSchema();
  if (kind === 'axis') return (await import('../../axis/json-schema.js')).axisJsonSchema();
  if (kind === 'results') return (await import('../../calibrate/json-schema.js')).resultsJsonSchema();
  return (await import('../../pipeline/sheet-schema.js')).sheetSchema(kind, undefined, ['axis', 'results', 'fleet']);
}
