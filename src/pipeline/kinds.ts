import { adapterKind } from '../parts/adapter/index.js';
import { couplingKind } from '../parts/coupling/index.js';
import { nutKind } from '../parts/nut/index.js';
import { type KnownKind, knownKind } from './known-kind.js';

/** The part kinds that ship. */
export const KINDS: readonly KnownKind[] = [knownKind(nutKind), knownKind(adapterKind), knownKind(couplingKind)];
