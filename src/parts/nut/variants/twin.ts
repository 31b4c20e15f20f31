import type { Assumptions } from '../../../sheet/assumptions.js';
import { fault } from '../../../units/faults.js';
import { plain } from '../../../units/format.js';
import type { Recess } from '../../common/thread-bore.js';
import type { NutSizes } from '../nut-sizes.js';
import type { VariantSheet } from './sheet.js';
import type { Twin, Variant, VariantBase } from './types.js';

/** The bore between both threads stands clear of the nut's roots by this, mm. @source common-practice */
const DEEPER = 0.3;

/** Each thread wants so many turns, and the bore between them stays so long at its full width, mm. @source common-practice */
const LEAST_TURNS = 2;
const LEAST_RECESS = 1;

/**
 * Two threads in one body, at a distance from middle to middle; between them the bore is wide.
 * @throws InputError a body in which they do not find place
 */
export function twinOf(sheet: VariantSheet, { finished }: VariantBase, notes: Assumptions): Twin {
  const { thread, length } = finished;
  const apart = sheet.apart!;
  const each = length - apart;
  const least = LEAST_TURNS * thread.pitch;
  if (each < least)
    throw fault(
      'family.apart',
      `${plain(apart)} mm`,
      `must be at most ${plain(length - least)} mm in a body of ${plain(length)} mm, to leave each thread ${LEAST_TURNS} turns`,
    );
  // the cones at the ends of the wide bore stand at 45° and so are as long as it is deep
  const cone = (thread.major - thread.minor) / 2 + DEEPER + 0.2;
  const between = (length + 2 * cone + LEAST_RECESS) / 2;
  if (apart < between)
    throw fault(
      'family.apart',
      `${plain(apart)} mm`,
      `must be at least ${plain(between)} mm in a body of ${plain(length)} mm, or one long nut does the same`,
    );
  const shift = notes.or<number>(sheet.shift, 'family.shift', 0, 'both threads on one helix');
  return {
    kind: 'twin',
    apart,
    each,
    deeper: DEEPER,
    shift,
    ...(sheet.lever === undefined ? {} : { lever: sheet.lever }),
  };
}

/** Play that is taken where one thread is set off the helix of the other, mm. */
export function shiftOf({ family }: { readonly family?: Variant }): number {
  return family?.kind === 'twin' ? family.shift : 0;
}

/** From the screw to where the load acts on a twin nut: on the screw where nobody tells, mm. */
export function leverOf({ family }: { readonly family?: Variant | undefined }): number {
  return family?.kind === 'twin' ? (family.lever ?? 0) : 0;
}

/** Radius of the widest stretch of the bore; sizes of one kind. */
export function widestBore(
  { thread }: Pick<NutSizes, 'thread'>,
  family: { readonly kind: string } | undefined,
): number {
  return thread.major / 2 + (family?.kind === 'twin' ? DEEPER : 0);
}

/** The wide bore of a twin nut as its threads are cut, at sizes of one kind. */
export function recessOf(
  { each, apart, deeper, shift }: Twin,
  { thread }: NutSizes,
  along: (size: number) => number,
): Recess {
  return { from: along(each), to: along(apart), radius: thread.major / 2 + deeper, shift: along(shift) };
}
