import { fileOf } from '../output/formats.js';
import { VERSION } from '../output/version.js';
import type { SizeChoice } from '../parts/part-views.js';
import type { ExactRequest } from '../solid/exact/exact-part.js';
import { meantShape } from '../solid/exact/meant-shape.js';
import type { Kernel } from '../solid/kernel.js';
import { hasThread } from '../solid/recipe.js';
import type { Design } from './design.js';
import type { KnownKind } from './known-kind.js';

/** How the exact bodies of a part are asked for. */
export interface StepOptions {
  readonly sizes: SizeChoice;
  /** plain leaves threads as the bore */
  readonly threads: 'exact' | 'plain';
}

/**
 * The exact bodies of a design as plain data, for a writer of STEP files. Several stand as they are put together.
 * @throws Error a recipe that no exact body stands for
 */
export function exactRequest(
  made: Design,
  { kind, kernel }: { readonly kind: KnownKind; readonly kernel: Kernel },
  { sizes, threads }: StepOptions,
): ExactRequest {
  const plans = kind.bodies(made, sizes);
  const options = { threads, join: kernel.joined };
  const { inUse } = kind.views(made, sizes);
  const bodies = plans.map(({ recipe: { name, shape: drawn } }) => {
    const shape = meantShape(drawn, options);
    return plans.length === 1 ? { name, shape } : { name: `${made.name}-${name}`, shape, place: inUse?.[name] ?? {} };
  });
  const leaves = threads === 'plain' && plans.some(({ recipe }) => hasThread(recipe.shape));
  const words = leaves ? ', threads left as the bore' : '';
  return {
    file: fileOf('step', made.name),
    product: made.name,
    description: `${made.part} ${made.name}, ${sizes} sizes, mm${words}`,
    writer: `leadwright ${VERSION}`,
    bodies,
  };
}
