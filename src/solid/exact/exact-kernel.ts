import type { Placement } from '../mesh.js';
import { bodyBuilder } from './kernel/build-shape.js';
import { type ExactMeasures, measured } from './kernel/measures.js';
import { inSession, type OpenCascade, type Session } from './kernel/session.js';
import { solidsOfStep, writtenStep } from './kernel/step-file.js';
import type { MeantShape } from './meant-shape.js';

/** The file of the optional package's script, and that of its WebAssembly, as the package names them. */
export const EXACT_PACKAGE = { name: 'replicad-opencascadejs', wasm: 'replicad-opencascadejs/wasm' } as const;

/** What the optional package's script exports by default. */
export type ExactScript = (options: object) => Promise<unknown>;

/** A named body of a file. */
export interface NamedBody {
  readonly name: string;
  readonly shape: MeantShape;
  /** where it stands in an assembly, default where it is modelled */
  readonly place?: Placement;
}

/** A body in the kernel's memory. */
export interface ExactBody {
  readonly name: string;
  readonly measures: ExactMeasures;
}

/** The exact solid operations. One kernel serves one part: booleans of threads keep memory that is never given back. */
export interface ExactKernel {
  /** Builds bodies, hands them to the work, and frees them. @throws Error a body cannot be built */
  within<T>(bodies: readonly NamedBody[], work: (built: BuiltBodies) => T): T;
}

/** Bodies that are built, while they are. */
export interface BuiltBodies {
  readonly bodies: readonly ExactBody[];
  /** the text of a STEP file of them, as the kernel writes it; an assembly where there are several */
  write(product: string): string;
  /** what a file holds, body by body */
  readBack(step: string): ExactMeasures[];
}

/**
 * Loads the exact kernel.
 *
 * @param script what the package exports by default
 * @param wasm   its WebAssembly, compiled: a `WebAssembly.Module`, whose type not every program knows; kernels of several
 *   threads may share it
 * @throws Error they are no exact kernel
 */
export async function createExactKernel(script: ExactScript, wasm: object): Promise<ExactKernel> {
  const oc = await loaded(script, wasm);
  if (typeof oc?.STEPCAFControl_Writer !== 'function') throw new TypeError('the script is no exact kernel');
  return { within: (bodies, work) => inSession(oc, (session) => work(built(session, bodies))) };
}

/** The script tells nobody where its WebAssembly does not fit. */
function loaded(script: ExactScript, wasm: object): Promise<OpenCascade> {
  const silent = () => undefined;
  return new Promise((resolve, reject) => {
    const instantiateWasm = (imports: WebAssembly.Imports, done: (made: WebAssembly.Instance) => void) => {
      WebAssembly.instantiate(wasm, imports).then(done).catch(reject);
      return {};
    };
    const options = { instantiateWasm, locateFile: (name: string) => name, print: silent, printErr: silent };
    script(options).then(resolve, reject);
  });
}

function built(session: Session, bodies: readonly NamedBody[]): BuiltBodies {
  const build = bodyBuilder(session);
  const solids = bodies.map(({ name, shape, place = {} }) => {
    try {
      return { name, place, solid: build(shape) };
    } catch (error) {
      throw new Error(`${name}: ${reasonOf(session.oc, error)}`);
    }
  });
  return {
    bodies: solids.map(({ name, solid }) => ({ name, measures: measured(session, solid) })),
    write: (product) => writtenStep(session, product, solids),
    readBack: (step) => solidsOfStep(session, step).map((solid) => measured(session, solid)),
  };
}

/** Exceptions of the kernel are no errors of the language. */
function reasonOf(oc: OpenCascade, error: unknown): string {
  if (error instanceof Error) return error.message;
  try {
    const [type, message] = oc.getExceptionMessage(error) as [string, string];
    return `${type} ${message}`.trim();
  } catch {
    return String(error);
  }
}
