import { grooveWidthAt, type ToothForm } from '../../mechanics/thread/nut-thread.js';

/** Where the flanks of a nut's thread meet before its tooth or its groove is whole; undefined where they do not. */
export function flanksMeet(thread: ToothForm): 'tooth' | 'groove' | undefined {
  if (thread.pitch - grooveWidthAt(thread, thread.minor) <= 0) return 'tooth';
  return grooveWidthAt(thread, thread.major) <= 0 ? 'groove' : undefined;
}
