import type { RememberedPart } from './made-part.js';

/** Where things lie in the output folder. */
export const FOLDERS = { machines: 'machines', parts: 'parts', plates: 'plates', zips: 'zips' } as const;

/** Files that go to a printer; all others stay with the part. */
const PRINTABLE = /\.(?:stl|3mf)$/;
/** Digits of an address that set parts of one name apart in a folder's name. */
const ADDRESS_DIGITS = 12;

/** The folder of a distinct part: its name, and digits of its address. */
export function partFolder({ name, address }: Pick<RememberedPart, 'name' | 'address'>): string {
  return `${FOLDERS.parts}/${name}-${address.slice(0, ADDRESS_DIGITS)}`;
}

/** A file of a part, and where a machine has it. */
export interface Placement {
  /** name in the part's folder */
  readonly name: string;
  /** path in the output folder */
  readonly from: string;
  readonly to: string;
}

/**
 * The printable files of a part in a machine's folder, named so that they can be told apart on a print server:
 * `MACHINE.ROLE.stl`, a body of several `MACHINE.ROLE.BODY.stl`. Names hold no points, so no two can be alike.
 */
export function placements(made: RememberedPart, machine: string, role: string): Placement[] {
  return made.files
    .filter(({ name }) => PRINTABLE.test(name))
    .map(({ name }) => {
      const tail = name.startsWith(made.name) ? name.slice(made.name.length).replace(/^-/, '.') : `.${name}`;
      return {
        name,
        from: `${partFolder(made)}/${name}`,
        to: `${FOLDERS.machines}/${machine}/${machine}.${role}${tail}`,
      };
    });
}
