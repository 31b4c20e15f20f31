import { word } from '../../sheet/fields.js';

/** What a sheet tells of who carries a screw along its axis. */
export const THRUST_BEARING = word(['yes', 'no'], 'a bearing and collar carry the screw along its axis').optional();

export const PAIR = word(
  ['yes', 'no'],
  'yes: a second collar, on a thrust bearing of its own on the other side, holds the screw the other way',
).optional();

export const LOCATING_HOLDER = word(
  ['yes', 'no'],
  'a holder at the other end carries the screw along its axis',
).optional();
