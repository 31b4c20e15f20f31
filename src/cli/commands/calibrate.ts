import type { Options } from 'yargs';
import { type Command, SHARED, SHEETS } from '../command.js';
import { EXIT } from '../exit-codes.js';

const OPTIONS = {
  name: { type: 'string', requiresArg: true, describe: 'name of the profile, where not that of the results' },
  to: { type: 'string', default: 'profiles', requiresArg: true, describe: 'folder of the profiles' },
  refine: { type: 'boolean', describe: 'add the readings to those of the profile that is there' },
  replace: { type: 'boolean', describe: 'write the profile that is there anew' },
  'dry-run': { type: 'boolean', describe: 'show what comes out, write nothing' },
  json: SHARED.json,
} as const satisfies Record<string, Options>;

export const calibrateCommand: Command = {
  name: 'calibrate',
  options: OPTIONS,
  add: (cli, io, start) =>
    cli.command(
      'calibrate <results..>',
      'turn readings of a printed coupon into a profile',
      (call) =>
        call
          .positional('results', { ...SHEETS, describe: 'filled results files; - is stdin' })
          .options(OPTIONS)
          .conflicts('refine', 'replace')
          .example('leadwright new demo-results --to r.yaml', 'invented ones')
          .example('leadwright calibrate r.yaml', 'writes profiles/NAME.yaml'),
      ({ results, name, to, refine, replace, json, 'dry-run': dry }) =>
        start(async () => {
          const [
            { calibrateFiles, FileMistakes },
            { calibrationLines },
            { calibrationJson },
            { jsonText },
            { tellFaults },
          ] = await Promise.all([
            import('../../work/calibrate-files.js'),
            import('../../output/terminal/calibration-lines.js'),
            import('../../output/calibration-json.js'),
            import('../../output/report-json.js'),
            import('../tell-faults.js'),
          ]);
          try {
            const made = await calibrateFiles(results, io, {
              to,
              ...(name === undefined ? {} : { name }),
              whenThere: refine === true ? 'refine' : replace === true ? 'replace' : 'keep',
              writes: dry !== true,
            });
            const { id, revision, path, calibration, believed } = made;
            const told = { profile: id, revision, file: path };
            io.stdout.write(
              json === true
                ? jsonText(calibrationJson(calibration, told))
                : `${calibrationLines(calibration, believed).join('\n')}\n`,
            );
            if (dry !== true)
              io.stderr.write(`${path}: written, revision ${revision}; in a part sheet: profile: ${id}\n`);
            return EXIT.done;
          } catch (error) {
            return tellFaults(error, io, error instanceof FileMistakes ? error.file : undefined);
          }
        }),
    ),
};
