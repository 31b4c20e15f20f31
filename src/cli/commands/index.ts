import type { Command } from '../command.js';
import { calibrateCommand } from './calibrate.js';
import { checkCommand } from './check.js';
import { compareCommand } from './compare.js';
import { completionCommand } from './completion.js';
import { driveCommand } from './drive.js';
import { fleetCommand, mergeCommand } from './fleet.js';
import { identifyCommand } from './identify.js';
import { liveCommand } from './live.js';
import { makeCommand } from './make.js';
import { newCommand } from './new.js';
import { presetsCommand } from './presets.js';
import { schemaCommand } from './schema.js';

/** Every command, in the order of the help. */
export const COMMANDS: readonly Command[] = [
  makeCommand,
  checkCommand,
  identifyCommand,
  driveCommand,
  liveCommand,
  fleetCommand,
  mergeCommand,
  calibrateCommand,
  compareCommand,
  newCommand,
  presetsCommand,
  schemaCommand,
  completionCommand,
];
