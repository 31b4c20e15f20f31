import type { Options } from 'yargs';
import { type Command, SHARED, SHEETS } from '../command.js';
import { EXIT } from '../exit-codes.js';
import { widthOf } from '../io.js';

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
      'turn readings of a printed coupon, and what finished nuts show, into a profile',
      (call) =>
        call
          .positional('results', {
            ...SHEETS,
            describe: 'filled results and trials, trials the oldest first; - is stdin',
          })
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
            { partTrials, tryFiles },
            { trialLines },
          ] = await Promise.all([
            import('../../work/calibrate-files.js'),
            import('../../output/terminal/calibration-lines.js'),
            import('../../output/calibration-json.js'),
            import('../../output/report-json.js'),
            import('../tell-faults.js'),
            import('../../work/trial-files.js'),
            import('../../output/terminal/trial-lines.js'),
          ]);
          try {
            const { coupons, trials } = await partTrials(results, io);
            const named = name === undefined ? {} : { name };
            const tellTrials = async (axial?: { readonly value: number; readonly sigma: number }) => {
              if (trials.length === 0) return undefined;
              const tried = await tryFiles(trials, io, {
                to,
                ...named,
                refines: refine === true || coupons.length > 0,
                writes: dry !== true,
                ...(axial ? { axial } : {}),
              });
              if (json !== true) io.stdout.write(`${trialLines(tried, widthOf(io)).join('\n')}\n`);
              const { written, could } = tried;
              if (written) io.stderr.write(`${written.path}: written, revision ${written.revision}\n`);
              else if (could !== undefined && dry !== true)
                io.stderr.write(`--refine puts this into profile ${could}\n`);
              return { estimate: tried.estimate, findings: tried.findings };
            };
            if (coupons.length === 0) {
              const tried = await tellTrials();
              if (json === true) io.stdout.write(jsonText({ trials: tried }));
              return EXIT.done;
            }
            const made = await calibrateFiles(coupons, io, {
              to,
              ...named,
              whenThere: refine === true ? 'refine' : replace === true ? 'replace' : 'keep',
              writes: dry !== true,
            });
            const { id, revision, path, calibration, believed } = made;
            const told = { profile: id, revision, file: path };
            const { axial } = calibration;
            const beside = await tellTrials(axial && { value: axial.likely, sigma: (axial.most - axial.least) / 4 });
            io.stdout.write(
              json === true
                ? jsonText({ ...calibrationJson(calibration, told), ...(beside ? { trials: beside } : {}) })
                : `${calibrationLines(calibration, believed, widthOf(io)).join('\n')}\n`,
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
