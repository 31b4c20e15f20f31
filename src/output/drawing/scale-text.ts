import { plain } from '../../units/format.js';

/** `2:1`, `1:5` */
export function scaleText(scale: number): string {
  return scale >= 1 ? `${plain(scale)}:1` : `1:${plain(1 / scale)}`;
}
