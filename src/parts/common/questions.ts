import type { Question } from '../../judge/question.js';

/** Questions that several kinds ask, in the same words. */
export const GOES_ON: Question = { id: 'goes-on', title: 'Goes on?' };
export const TURNS: Question = { id: 'turns', title: 'Turns?' };
export const HOLDS: Question = { id: 'holds', title: 'Holds?' };
export const PRINTS: Question = { id: 'prints', title: 'Prints?' };

/** Asked where duty tells of it, so that the others are about the part. */
export const AXIS: Question = { id: 'axis', title: 'The axis?', onlyWhereTold: true };
