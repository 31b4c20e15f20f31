import type { ThreadForm } from '../../standards/threads/form.js';

/** Thread forms a part can be made for; `free` is a trapezoid of any flank angle. */
export type ScrewForm = ThreadForm | 'free';
