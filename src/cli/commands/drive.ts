import type { Options } from 'yargs';
import { type Command, SHARED, SHEETS } from '../command.js';

const option = (describe: string) => ({ type: 'string', requiresArg: true, describe }) as const;

const OPTIONS = {
  axis: option('vertical or horizontal'),
  load: option('along the screw, N'),
  'layer-heights': option('heights to judge, mm: 0.1,0.15,0.2'),
  feed: option('wanted, mm/s'),
  span: option('free length of the screw, mm'),
  ends: option('fixed-free, supported, fixed-supported, fixed-fixed'),
  fit: option('of the nut: close, running, loose, or 0.3,0.1'),
  moving: option('share of the time in motion: 10%'),
  steps: option('full steps a motor turn, 200 unless given'),
  microsteps: option('microsteps a full step, 16 unless given'),
  gear: option('motor turns a screw turn, 1 unless given'),
  torque: option("the motor's holding torque, N·m"),
  'motor-speed': option('rpm up to which the motor is useful'),
  current: option('rated, per phase, A; with the next two gives that speed'),
  inductance: option('per phase, mH'),
  voltage: option('of the supply, V'),
  purpose: option('rank for: fine-layers, speed, holding'),
  from: option('the screw that is taken out'),
  'old-steps-per-mm': option('what the controller held with it'),
  commanded: option('travel asked for; with --measured names the slip'),
  measured: option('travel that came of it'),
  'steps-per-mm': option('what the controller holds now, for --measured'),
  'end-difference': option('left end less right end of one axis, 0.1 mm unless given'),
  motor: option('above or below, for --end-difference'),
  lifts: option('how many moves; with the next two the time that a swap saves'),
  'lift-height': option('of each, mm'),
  acceleration: option('of the axis, mm/s²'),
  json: SHARED.json,
} as const satisfies Record<string, Options>;

export const driveCommand: Command = {
  name: 'drive',
  options: OPTIONS,
  add: (cli, io, start) =>
    cli.command(
      'drive <screws..>',
      'what screws do to an axis, side by side',
      (call) =>
        call
          .positional('screws', { ...SHEETS, describe: 'Tr8x2, M5 and the like, or sheets with a screw; - is stdin' })
          .options(OPTIONS)
          .example('leadwright drive Tr8x2 M5 --load 25', 'side by side')
          .example('leadwright drive Tr8x2 --from Tr8x8P2', 'after a swap')
          .example('leadwright new nut --to my-nut.yaml', 'a sheet')
          .example('leadwright drive my-nut.yaml', 'its screw and duty'),
      (args) =>
        start(async () => {
          const { driveCall } = await import('../drive-call.js');
          return driveCall(args, io);
        }),
    ),
};
