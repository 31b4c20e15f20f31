import type { Options } from 'yargs';
import { type Command, SHARED } from '../command.js';
import { EXIT } from '../exit-codes.js';
import { widthOf } from '../io.js';

const OPTIONS = {
  page: { type: 'string', requiresArg: true, describe: 'write a page with both parts over each other to this file' },
  json: SHARED.json,
} as const satisfies Record<string, Options>;

const REPORT = { type: 'string', demandOption: true } as const;

export const compareCommand: Command = {
  name: 'compare',
  options: OPTIONS,
  add: (cli, io, start) =>
    cli.command(
      'compare <a> <b>',
      'what changed between two made parts: sizes, checks, mass, files',
      (call) =>
        call
          .positional('a', { ...REPORT, describe: 'the earlier report.json, or its folder' })
          .positional('b', { ...REPORT, describe: 'the later one' })
          .options(OPTIONS)
          .example('leadwright new nut --to n.yaml', 'a part to change')
          .example('leadwright make n.yaml --out old', 'as it was')
          .example('leadwright make n.yaml --out out', 'as it is')
          .example('leadwright compare old/my-nut out/my-nut', 'what changed'),
      ({ a, b, page, json }) =>
        start(async () => {
          const [{ readComparedPart }, { compareReports }] = await Promise.all([
            import('../../work/read-compared-part.js'),
            import('../../output/compare/compare-reports.js'),
          ]);
          const [first, second] = [await readComparedPart(a, io.cwd), await readComparedPart(b, io.cwd)];
          const comparison = compareReports(first, second);
          if (page !== undefined) {
            const [{ writeComparePage }, { replaceFile }] = await Promise.all([
              import('../../output/compare/compare-page.js'),
              import('../../work/writer/files.js'),
            ]);
            await replaceFile('--page', page, await writeComparePage(first, second, comparison), io.cwd);
            io.stderr.write(`${page}: written\n`);
          }
          if (json === true) {
            const { jsonText } = await import('../../output/report-json.js');
            io.stdout.write(jsonText(comparison));
          } else {
            const { comparisonText } = await import('../../output/compare/comparison-lines.js');
            io.stdout.write(comparisonText(comparison, widthOf(io)));
          }
          return EXIT.done;
        }),
    ),
};
