import type { Options } from 'yargs';
import { type Command, SHARED, STDIN_MARK } from '../command.js';

const FLEET_FILE = {
  type: 'string',
  demandOption: true,
  describe: 'fleet file: YAML, or CSV or TSV from a spreadsheet',
  coerce: (file: string) => (file === STDIN_MARK ? '-' : file),
} as const;

const SHARED_OPTIONS = {
  out: { type: 'string', requiresArg: true, describe: 'folder to write; out/FLEET unless given' },
  formats: { type: 'string', default: 'stl,page', requiresArg: true, describe: 'files of each part, stl among them' },
  plates: { type: 'string', requiresArg: true, describe: 'lay the parts out on beds of this size, such as 220x220' },
  zip: { type: 'boolean', describe: 'a zip for each machine, with page and drawing, to hand over' },
  labels: { type: 'boolean', describe: 'a sheet of labels for the bags' },
  status: { type: 'boolean', describe: 'begin FLEET-status.csv, where it is not there' },
  accept: {
    type: 'string',
    array: true,
    requiresArg: true,
    describe: 'let a failed check pass: MACHINE.PART.CHECK=REASON, * for all machines',
  },
} as const satisfies Record<string, Options>;

const OPTIONS = {
  ...SHARED_OPTIONS,
  jobs: { type: 'string', requiresArg: true, describe: 'worker threads; one a core unless given' },
  'keep-going': { type: 'boolean', describe: 'leave wrongly given machines out' },
  only: { type: 'string', array: true, requiresArg: true, describe: 'these machines alone, set apart by commas' },
  'dry-run': { type: 'boolean', describe: 'show what would be made, reused and refused' },
  cache: { type: 'string', requiresArg: true, describe: 'folder of parts made before; beside --out unless given' },
  shard: { type: 'string', requiresArg: true, describe: 'one share of the parts, such as 3/16, for merge' },
  json: SHARED.json,
} as const satisfies Record<string, Options>;

export const fleetCommand: Command = {
  name: 'fleet',
  options: OPTIONS,
  add: (cli, io, start) =>
    cli.command(
      'fleet <file>',
      'make every part of every machine, each distinct one once',
      (call) =>
        call
          .positional('file', FLEET_FILE)
          .options(OPTIONS)
          .example('leadwright new fleet --to my-fleet.yaml', 'a fleet to start from')
          .example('leadwright fleet my-fleet.yaml', 'writes out/my-fleet/'),
      (args) =>
        start(async () => {
          const { fleetCall } = await import('../fleet-call.js');
          return fleetCall(args, io);
        }),
    ),
};

const MERGE_OPTIONS = { ...SHARED_OPTIONS, cache: OPTIONS.cache, json: SHARED.json } as const satisfies Record<
  string,
  Options
>;

export const mergeCommand: Command = {
  name: 'merge',
  options: MERGE_OPTIONS,
  add: (cli, io, start) =>
    cli.command(
      'merge <file> <shares..>',
      'put the shares of a fleet together; nothing is made',
      (call) =>
        call
          .positional('file', FLEET_FILE)
          .positional('shares', {
            type: 'string',
            array: true,
            demandOption: true,
            describe: 'folders of fleet --shard',
          })
          .options(MERGE_OPTIONS)
          .example('leadwright new fleet --to f', 'a fleet to start from')
          .example('leadwright fleet f --shard 1/1 --out a', 'one share')
          .example('leadwright merge f a', 'writes out/my-fleet/'),
      (args) =>
        start(async () => {
          const { fleetCall } = await import('../fleet-call.js');
          return fleetCall(args, io);
        }),
    ),
};
