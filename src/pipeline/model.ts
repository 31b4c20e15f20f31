import { createKernel, type Kernel } from '../solid/kernel.js';
import type { Body } from '../solid/mesh.js';
import type { Design } from './design.js';
import { kindOfDesign } from './find-kind.js';
import { fuseBody } from './fuse-body.js';
import { KINDS } from './kinds.js';
import type { KnownKind } from './known-kind.js';

/** What a solid is built with. */
export interface ModelOptions {
  /** a kernel to go on using; one is created otherwise */
  readonly kernel?: Kernel;
  /** part kinds, in place of those that ship */
  readonly kinds?: readonly KnownKind[];
}

/**
 * Builds the solid of a design: one mesh a body, rounded to float32 as it will be written.
 *
 * @param design what `design` gave
 * @param options a kernel in use
 * @returns the bodies, each with its name and material
 */
export async function model(design: Design, { kernel, kinds = KINDS }: ModelOptions = {}): Promise<Body[]> {
  const fuser = kernel ?? (await createKernel());
  return kindOfDesign(kinds, design)
    .bodies(design)
    .map(({ recipe }) => fuseBody(fuser, recipe));
}
