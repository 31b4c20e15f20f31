import { loftConvex } from '../../../solid/convex-loft.js';
import type { Companion } from '../../part-views.js';
import { boreOutlines, type Shaft } from '../bore.js';

/** How finely the round of a shaft is drawn [mm]. */
const CHORD = 0.01;

/** A shaft at its likely size, its flat on −X like that of its bore; a key is left out. Heights along the axis [mm]. */
export function shaftBar(name: string, { form, diameter, across }: Shaft, from: number, to: number): Companion {
  const [outline] = boreOutlines(
    {
      form: form === 'keyed' ? 'round' : form,
      diameter: diameter.likely,
      ...(across ? { across: across.likely } : {}),
    },
    CHORD,
  );
  return {
    name,
    mesh: loftConvex(outline, [
      [from, 0],
      [to, 0],
    ]),
  };
}
