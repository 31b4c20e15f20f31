import { crowds } from '../axis/one-place.js';
import { isUpright } from '../parts/common/axial-path.js';
import { locatingPlaces } from '../parts/common/locating.js';
import { plain } from '../units/format.js';
import { isNut, mostScrews, type Neighbour, type PairFinding, piecesOf } from './neighbours.js';
import type { Says } from './pair-facts.js';

/** Each place along a screw has room for one part; half a coupling joins nothing by itself. */
export function onePlaceEach(on: readonly Neighbour[]): PairFinding[] {
  const parts = on.map(({ role, pieces = 1, made: { facts } }) => {
    const { joint, ...others } = facts;
    return { role, pieces, facts: joint?.motorBore && joint.screwBore ? facts : others };
  });
  return crowds(parts, mostScrews(on)).map(({ place, roles }) => ({
    id: 'axis-fit',
    verdict: 'fail',
    roles,
    message: `More than one stands ${place}, where one has room.`,
  }));
}

/** One place carries a screw along its axis; of an axis that may have two screws nobody tells which part is on which. */
export function carriedOnce(on: readonly Neighbour[]): PairFinding[] {
  const holders = on.filter(({ made: { facts } }) => facts.holder?.role === 'locating');
  const meant = on.some(({ made: { facts } }) => facts.holder) ? [] : on.filter(saying('locatingHolder')).slice(0, 1);
  const bearings = on.filter((one) => one.made.facts.collar || saying('thrustBearing')(one));
  const joined = on.find(({ made: { facts } }) => facts.joint);
  const joint = joined?.made.facts.joint?.kind;
  const mounting = [...(joined ? [joined] : []), ...on].flatMap(({ made }) => made.facts.says?.mounting ?? [])[0];
  const given = {
    holders: [
      ...holders.map(({ role }) => `the end holder ${role}`),
      ...meant.map(({ role }) => `the end holder that ${role} counts on`),
    ],
    thrustBearing: bearings.length > 0,
  };
  const places = locatingPlaces({ ...given, joint, mounting });
  if (places.length === 0) return [];
  const byJoint = places.length > locatingPlaces(given).length || joint === 'rigid';
  const carriers = [...holders, ...meant, ...bearings, ...(joined && byJoint ? [joined] : [])];
  const roles = [...new Set(carriers.map(({ role }) => role))];
  const found = `The screw is carried by ${places.join(' and ')}`;
  const screws = mostScrews(on);
  // a holder of its own for each screw is one way
  const ways = screws > 1 ? places.length - Math.max(0, holders.length - 1) : places.length;
  if (ways === 1) return [{ id: 'axis-fit', verdict: 'pass', roles, message: `${found}.` }];
  const message = `${found}: they fight each other when it warms, keep one.`;
  return [{ id: 'axis-fit', verdict: screws > 1 ? 'caution' : 'fail', roles, message }];
}

function saying(what: 'locatingHolder' | 'thrustBearing') {
  return ({ made }: Neighbour) => made.facts.says?.[what] === true;
}

/** What parts of one axis say of it in different words: where the motor is, how it runs, and forces that one is judged by less of. */
export function oneStory(on: readonly Neighbour[]): PairFinding[] {
  const told = (field: keyof Says): Told[] =>
    on.flatMap(({ role, made }) => {
      const value = made.facts.says?.[field];
      return value === undefined ? [] : [{ role, value }];
    });
  const mountings = told('mounting');
  const found = [
    ...(differ(mountings)
      ? [{ field: 'mounting', told: mountings }]
      : ofOneRun(on).map((runs) => ({ field: 'duty.axis', told: runs }))),
    ...(['load', 'upward'] as const).flatMap((force) =>
      lighter(on, force) ? [{ field: `duty.${force}`, told: told(force) }] : [],
    ),
  ];
  return found.map(({ field, told: by }) => ({
    id: 'axis-told',
    verdict: mostScrews(on) > 1 ? 'caution' : 'fail',
    roles: by.map(({ role }) => role),
    message: `They do not say the same ${field}: ${by.map(({ role, value }) => `${role} ${shownValue(value)}`).join(', ')}.`,
  }));
}

interface Told {
  readonly role: string;
  readonly value: string | number | true;
}

function differ(told: readonly Told[]): boolean {
  return new Set(told.map(({ value }) => value)).size > 1;
}

function shownValue(value: Told['value']): string {
  return typeof value === 'number' ? `${plain(value)} N` : String(value);
}

/** How each part says that the axis runs, by its motor where it does not say it otherwise; nothing where all say the same. */
function ofOneRun(on: readonly Neighbour[]): Told[][] {
  const runs = on.flatMap(({ role, made: { facts } }): Told[] => {
    const { axis, mounting } = facts.says ?? {};
    const value = axis ?? (mounting && (isUpright(mounting) ? 'vertical' : 'horizontal'));
    return value === undefined ? [] : [{ role, value }];
  });
  return differ(runs) ? [runs] : [];
}

/** Whether any part is judged by less than goes along the screw: at least what a nut bears, and what nuts may bear together. */
function lighter(on: readonly Neighbour[], force: 'load' | 'upward'): boolean {
  const own = ({ made }: Neighbour) => made.facts.says?.[force];
  const nuts = on.filter(isNut);
  const others = on.filter((one) => !isNut(one)).flatMap((one) => own(one) ?? []);
  const borne = nuts.flatMap((one) => own(one) ?? []);
  const whole = Math.max(0, ...others, ...(borne.length > 0 ? [Math.min(...borne)] : []));
  const together = nuts.reduce((sum, one) => sum + piecesOf([one]) * (own(one) ?? whole), 0);
  return others.some((one) => one < whole - 1e-9) || (nuts.length > 0 && together < whole - 1e-9);
}
