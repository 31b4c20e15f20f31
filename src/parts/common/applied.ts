import type { Material } from '../../presets/material.js';
import type { OffsetLine, Printer } from '../../presets/printer.js';
import { plain } from '../../units/format.js';

/** What was done to the sizes in the file, so that nobody does it again. */
export function appliedWords(material: Material, printer: Printer): string {
  const { shrink, holes } = printer.compensation;
  const percent = (share: number) => `${plain(100 * share, 2)} %`;
  const scale =
    shrink === 'file'
      ? `shrink already applied: in the plane ${percent(material.shrink.plane.likely)}, along the axis ${percent(material.shrink.axial.likely)}`
      : `shrink not applied (${shrink === 'slicer' ? 'left to the slicer' : 'switched off'})`;
  const offset =
    holes === 'file'
      ? `hole offset ${offsetWords(printer.holeOffset)} already applied`
      : `hole offset not applied (${holes === 'slicer' ? 'left to the slicer' : 'switched off'})`;
  return `${scale}; ${offset}`;
}

function offsetWords({ at_zero, per_mm }: OffsetLine): string {
  return per_mm === 0 ? `${plain(at_zero)} mm` : `${plain(at_zero)} mm + ${plain(per_mm, 4)} mm per mm of diameter`;
}
