import { nutKind } from '../parts/nut/index.js';
import { type KnownKind, knownKind } from './known-kind.js';

/** The part kinds that ship. */
export const KINDS: readonly KnownKind[] = [knownKind(nutKind)];
