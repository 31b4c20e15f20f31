import type { ExactKernel, NamedBody } from './exact-kernel.js';
import type { ExactMeasures } from './kernel/measures.js';
import { lineVolume } from './line-volume.js';
import { type StepAbout, steadyStep } from './step-text.js';

/** Bodies to be written as one STEP file; plain data, so that it can go to a worker. */
export interface ExactRequest extends StepAbout {
  readonly product: string;
  readonly bodies: readonly NamedBody[];
}

/** Writes such a file. */
export type ExactWriter = (request: ExactRequest) => Promise<string>;

/** How far the volume of a body may be off the one that lines find, of itself. */
const CLOSE = 1e-5;

/**
 * Builds bodies, holds each against its gate, writes them, and holds what the file gives back against the same gate.
 *
 * @param kernel   an exact kernel of its own: booleans of threads keep memory
 * @param request  what is written
 * @returns the text of the file, the same for the same request, and what each body measures
 * @throws Error a body is not one closed solid of the volume that lines find, before or after it was written; named
 */
export function exactPart(
  kernel: ExactKernel,
  request: ExactRequest,
): { readonly step: string; readonly measures: readonly ExactMeasures[] } {
  const { bodies, product } = request;
  return kernel.within(bodies, (built) => {
    const volumes = built.bodies.map(({ name, measures }, i) => {
      requireSolid(name, measures);
      const wanted = lineVolume(bodies[i]!.shape).volume;
      requireVolume(name, measures.volume, wanted);
      return wanted;
    });
    const step = steadyStep(built.write(product), request);
    const again = built.readBack(step);
    if (again.length !== bodies.length)
      throw new Error(`the file gives back ${again.length} bodies for ${bodies.length}`);
    for (const [i, measures] of again.entries()) {
      const name = `${bodies[i]!.name} as it was read back`;
      requireSolid(name, measures);
      requireVolume(name, measures.volume, volumes[i]!);
    }
    return { step, measures: built.bodies.map(({ measures }) => measures) };
  });
}

function requireSolid(name: string, { solids, freeEdges, volume }: ExactMeasures): void {
  if (solids === 1 && freeEdges === 0 && volume > 0) return;
  throw new Error(`${name}: ${solids} solids with ${freeEdges} free edges, must be 1 with none`);
}

/** @param wanted the volume that lines find */
function requireVolume(name: string, volume: number, wanted: number): void {
  const off = Math.abs(volume - wanted) / wanted;
  if (off <= CLOSE) return;
  throw new Error(`${name}: its volume is ${off.toExponential(1)} of itself off the one of its sections, at most 1e-5`);
}
