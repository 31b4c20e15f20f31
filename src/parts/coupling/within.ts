import { InputError } from '../../units/faults.js';

/**
 * Runs a step that names fields of its own; its faults get the section they stand in.
 * @throws InputError the step's own, with longer paths
 */
export function within<T>(section: string, step: () => T): T {
  try {
    return step();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.faults.map((fault) => ({ ...fault, path: `${section}.${fault.path}` })));
  }
}
