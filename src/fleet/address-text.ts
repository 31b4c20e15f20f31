import type { Acceptance } from '../judge/accept.js';
import { VERSION } from '../output/version.js';
import { findKind } from '../pipeline/find-kind.js';
import type { KnownKind } from '../pipeline/known-kind.js';
import { DEFAULT_MATERIAL } from '../presets/resolve-material.js';
import type { PresetTexts } from '../presets/texts.js';
import { type Fields, isFields } from '../sheet/fields-map.js';
import { canonicalJson } from './canonical.js';

/** Digest of a text, as hexadecimal digits. */
export type Digest = (text: string) => string;

/** What parts are addressed by, beside their own sheets. */
export interface AddressBase {
  readonly kinds: readonly KnownKind[];
  readonly presets: PresetTexts;
  readonly formats: readonly string[];
  /** digest of the program as it is built: another check or another solid is another part */
  readonly engine: string;
  readonly digest: Digest;
}

/**
 * Gives each sheet the address of all that decides the bytes of its files: the sheet as its kind reads it (`8 mm` and
 * `8` are one part), the checks that are accepted, the texts of the materials, printers and profiles that it names, every
 * other preset, the kinds of file, the version and the digest of the program. A sheet that its kind refuses is addressed as it is written.
 *
 * @param base what all parts share; `digest` is SHA-256
 * @returns the address of a sheet, hexadecimal
 */
export function addresser(base: AddressBase): (sheet: Fields, accept?: readonly Acceptance[]) => string {
  const { kinds, formats, digest } = base;
  const paths = Object.keys(base.presets).sort();
  const digests = new Map(paths.map((path) => [path, digest(base.presets[path] ?? '')]));
  const shared = paths.filter((path) => !/^(?:materials|printers|profiles|sheets|fleets)\//.test(path));
  const always = digest(
    canonicalJson([VERSION, base.engine, formats, shared.map((path) => [path, digests.get(path)])]),
  );
  return (sheet, accept = []) => {
    const named = [...wordsIn(sheet, new Set([DEFAULT_MATERIAL]))].sort();
    const used = named.flatMap((id) =>
      ['materials', 'printers', 'profiles'].flatMap((folder) => digests.get(`${folder}/${id}.yaml`) ?? []),
    );
    return digest(canonicalJson([always, used, asRead(sheet, kinds), accept]));
  };
}

function asRead(sheet: Fields, kinds: readonly KnownKind[]): unknown {
  const result = findKind(kinds, sheet.part)?.schema.safeParse(sheet);
  return result?.success ? ['read', result.data] : ['refused', sheet];
}

/** Every text in a sheet, in small letters, as presets are looked up. */
function wordsIn(value: unknown, words: Set<string>): Set<string> {
  if (typeof value === 'string') words.add(value.trim().toLowerCase());
  else if (Array.isArray(value)) for (const part of value) wordsIn(part, words);
  else if (isFields(value)) for (const part of Object.values(value)) wordsIn(part, words);
  return words;
}
