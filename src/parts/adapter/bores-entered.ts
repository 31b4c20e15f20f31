import { difference, exactly, type Measured, shifted, sum } from '../../units/measured.js';
import { holeResidual } from '../common/residual.js';
import type { AdapterDesign } from './dimensions.js';
import { widest } from './seated-nut.js';

/** A bore that the nut enters, with the room it has there on the diameter. */
export interface BoreEntered {
  readonly of: 'plate' | 'step' | 'carriage';
  /** in words, such as `the plate's bore` */
  readonly where: string;
  readonly room: Measured;
}

/** The bores that body or flange of the nut enter: that of the plate and its step, and that of the carriage where it reaches so far. */
export function boresEntered(design: AdapterDesign): BoreEntered[] {
  const { nut, carriage, layout, registers, seatHeight } = design;
  if (!nut) return [];
  const { bore, outerStep } = layout.plate;
  const printed = sum(exactly(bore), holeResidual(design, bore));
  const beyond = nut.length === undefined ? Infinity : nut.length - nut.flangeThickness;
  const { bore: hole, slot, spigot } = carriage;
  // a ring that is raised around the opening is wider than that
  const opening = hole ?? (slot ? exactly(Math.min(...slot)) : spigot);
  const aside = 2 * Math.hypot(...carriage.offset);
  const inCarriage = (room: Measured): BoreEntered => ({
    of: 'carriage',
    where: opening === spigot ? "the ring around the carriage's opening" : "the carriage's opening",
    room: shifted(room, -aside),
  });
  // a recess is cut to the flange; a step as wide as somebody wants it
  const step = nut.seat === 'outside' && registers.nut !== 'recess' ? outerStep : undefined;
  const bodyReaches = nut.seat === 'outside' && nut.stands === 'through' && beyond > seatHeight;
  return [
    ...(nut.stands === 'through'
      ? [{ of: 'plate' as const, where: "the plate's bore", room: difference(printed, nut.body) }]
      : []),
    ...(step
      ? [
          {
            of: 'step' as const,
            where: "the plate's step, on whose floor the flange is to lie",
            room: shifted(sum(exactly(step.diameter), holeResidual(design, step.diameter)), -widest(nut.flange)),
          },
        ]
      : []),
    ...(opening && bodyReaches ? [inCarriage(difference(opening, nut.body))] : []),
    ...(opening && nut.seat === 'carriage' ? [inCarriage(shifted(opening, -widest(nut.flange)))] : []),
  ];
}
