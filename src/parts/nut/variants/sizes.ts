import type { NutPocket } from '../../common/bought-nut.js';
import { printedClamp } from '../../common/clamp.js';
import { clampNames } from '../../common/clamp-names.js';
import type { PrintSizes } from '../../common/print-sizes.js';
import type { Sizes } from '../../part-kind.js';
import { pinHoles } from './pin-holes.js';
import type { Variant } from './types.js';

/** A thread that a holder does not have. */
const OF_A_THREAD = /^(thread_|groove_|pitch$|lead$)/;

/** Sizes of a nut under the names of the report, with those that its family adds or takes away. */
export function withVariantSizes(
  plain: Sizes,
  {
    family,
    catchPocket,
    print,
  }: { readonly family: Variant | undefined; readonly catchPocket: NutPocket | undefined; readonly print: PrintSizes },
): Sizes {
  const kept =
    family?.kind === 'holder'
      ? Object.fromEntries(Object.entries(plain).filter(([name]) => !OF_A_THREAD.test(name)))
      : plain;
  return {
    ...kept,
    ...(family ? sizesOf(family, print) : {}),
    ...(catchPocket ? pocketSizes(catchPocket, print) : {}),
  };
}

function sizesOf(family: Variant, print: PrintSizes): Sizes {
  switch (family.kind) {
    case 'split':
      return {
        pin_hole_diameter: 2 * pinHoles(family.pins, print).radius,
        pin_offset: print.across(family.pins.offset),
        pin_height: print.along(family.pins.height),
        ...(family.clamp ? clampNames(printedClamp(family.clamp, print)) : {}),
      };
    case 'clamped':
      return {
        slit_width: print.inside(family.slit.width),
        ...(family.slit.from > 0 ? { slit_start: print.along(family.slit.from) } : {}),
        ...clampNames(printedClamp(family.clamp, print)),
      };
    case 'twin':
      return {
        threads_apart: print.along(family.apart),
        thread_length: print.along(family.each),
        ...(family.shift > 0 ? { thread_shift: print.along(family.shift) } : {}),
      };
    case 'holder':
      return { bore: print.inside(family.bore), ...pocketSizes(family.pocket, print) };
    case 'anti-backlash':
      return {
        follower_length: print.along(family.follower),
        spring_length: print.along(family.spring.working),
        key_width: print.outside(family.tongue.width),
        key_height: print.along(family.tongue.height),
        slot_width: print.inside(family.tongue.width + family.tongue.air),
        slot_depth: print.along(family.tongue.slotDepth),
      };
  }
}

function pocketSizes({ acrossFlats, depth }: NutPocket, print: PrintSizes): Sizes {
  return { pocket_across_flats: print.inside(acrossFlats), pocket_depth: print.along(depth) };
}
