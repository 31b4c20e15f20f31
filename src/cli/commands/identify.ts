import type { Options } from 'yargs';
import { type Command, SHARED, STDIN_MARK } from '../command.js';

const reading = (describe: string) => ({ type: 'string', requiresArg: true, describe }) as const;

const OPTIONS = {
  major: reading('over the crests, one reading or several: 7.92,7.94,7.91'),
  crests: reading('N pitches and their length, same edge to same edge: 10=20.05'),
  travel: reading('turns of a nut and how far it went: 10=80.1'),
  starts: reading('grooves that begin at the end of the screw'),
  minor: reading('over the root'),
  'nut-bore': reading('of a nut that ran on it: drill shank that goes and one that does not, 6.0=6.3'),
  'crest-flat': reading('width of a crest along the axis'),
  wires: reading('diameter of three wires and the size over them: 1.0=8.31'),
  crest: reading('what the crests look like: flat, sharp or round'),
  hand: reading('right or left'),
  cannot: reading('what cannot be measured and is not asked for: travel,starts'),
  uncertainty: reading('half-width of the error of every reading, 0.03 unless given'),
  how: { type: 'boolean', describe: 'show how to measure a screw' },
  json: SHARED.json,
} as const satisfies Record<string, Options>;

export const identifyCommand: Command = {
  name: 'identify',
  options: OPTIONS,
  add: (cli, io, start) =>
    cli.command(
      'identify [file]',
      'name a screw from caliper readings',
      (call) =>
        call
          .positional('file', {
            type: 'string',
            describe: 'the same readings as a YAML file; - is stdin',
            coerce: (file: string | undefined) => (file === STDIN_MARK ? '-' : file),
          })
          .options(OPTIONS)
          .example('leadwright identify --how', 'how to measure')
          .example('leadwright identify --crests 10=20.05', 'bare numbers are mm')
          .example('leadwright identify --major 0.3122in', 'units may be written'),
      (args) =>
        start(async () => {
          const { identifyCall } = await import('../identify-call.js');
          return identifyCall(args, io);
        }),
    ),
};
