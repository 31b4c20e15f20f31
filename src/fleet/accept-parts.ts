import { nearest } from '../sheet/nearest.js';
import { fault, InputError } from '../units/faults.js';
import type { GivenFleet } from './machines.js';

/** A failed check that is accepted for one part of one machine, or of every machine. */
export interface PartAcceptance {
  /** name of the machine, or `*` */
  readonly machine: string;
  readonly role: string;
  readonly check: string;
  readonly reason: string;
}

const FORM = 'must be MACHINE.PART.CHECK=REASON, with * for every machine';

/**
 * Reads `MACHINE.PART.CHECK=REASON`; names hold no points, and `*` stands for every machine.
 * @throws InputError not of that form
 * @example parsePartAccept('lift-1.nut-left.wall=thin on purpose').role // 'nut-left'
 */
export function parsePartAccept(text: string): PartAcceptance {
  const [, machine, role, check, reason] = /^\s*([^.=\s]+)\.([^.=\s]+)\.([^.=\s]+)\s*=\s*(.*?)\s*$/s.exec(text) ?? [];
  if (!machine || !role || !check || !reason) throw fault('--accept', text, FORM);
  return { machine, role, check, reason };
}

/**
 * The fleet with checks accepted.
 * @throws InputError there is no such machine or part, all at once
 */
export function acceptParts(fleet: GivenFleet, accepted: readonly PartAcceptance[]): GivenFleet {
  if (accepted.length === 0) return fleet;
  const faults = accepted.flatMap((one) => unknownIn(fleet, one));
  if (faults.length > 0) throw new InputError(faults.flatMap((error) => error.faults));
  const machines = fleet.machines.map((machine) => ({
    ...machine,
    parts: machine.parts.map((part) => {
      const own = accepted.filter(
        (one) => (one.machine === '*' || one.machine === machine.name) && one.role === part.role,
      );
      const kept = part.accept.filter(({ check }) => own.every((one) => one.check !== check));
      return { ...part, accept: [...kept, ...own.map(({ check, reason }) => ({ check, reason }))] };
    }),
  }));
  return { ...fleet, machines };
}

function unknownIn({ machines }: GivenFleet, { machine, role }: PartAcceptance): InputError[] {
  const named = machines.filter(({ name }) => machine === '*' || name === machine);
  const told = (what: string, word: string, known: readonly string[]) => {
    const near = nearest(word, known);
    return [
      fault('--accept', word, near ? `no ${what} of this name; did you mean ${near}?` : `no ${what} of this name`),
    ];
  };
  if (named.length === 0)
    return told(
      'machine',
      machine,
      machines.map(({ name }) => name),
    );
  const roles = [...new Set(named.flatMap(({ parts }) => parts.map((part) => part.role)))];
  return roles.includes(role) ? [] : told('part', role, roles);
}
