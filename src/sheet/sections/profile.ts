import * as z from 'zod';
import { map, orShort, word } from '../fields.js';

/** States of a material that takes up moisture: from the dryer, after days in room air, soaked. */
export const STATES = ['dry', 'room', 'wet'] as const;
export type State = (typeof STATES)[number];

/** What a slicer may correct by itself. */
export const SLICER_ANSWERS = ['no', 'shrink', 'holes', 'both'] as const;
export type SlicerAnswer = (typeof SLICER_ANSWERS)[number];

/** How profiles are called, so that they are files on every disk. */
export const PROFILE_NAME = /^[a-z0-9][a-z0-9.-]{0,63}$/;

const profileFields = map({
  name: z.string('must be the name of a profile').min(1, 'must be the name of a profile').max(64),
  state: word(STATES, 'of the part in use').optional(),
});

/** A measured profile, in place of material and printer. */
export const profileSection = orShort(profileFields, (short) => ({ name: String(short) }), 'string');
export type ProfileSheet = z.output<typeof profileSection>;
