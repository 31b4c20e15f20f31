import { offsetAt } from '../../mechanics/print/printed-size.js';
import type { ToothForm } from '../../mechanics/thread/nut-thread.js';
import { printedThread } from '../../mechanics/thread/printed-thread.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';

/** A finished thread as it must stand in the file, by what the file is to compensate; lead in use [mm]. */
export function threadInFile(
  thread: ToothForm,
  lead: number,
  { material, printer }: { readonly material: Material; readonly printer: Printer },
): ToothForm {
  const { shrink, holes } = printer.compensation;
  const { plane, axial } = material.shrink;
  return printedThread(thread, {
    plane: shrink === 'file' ? plane.likely : 0,
    axial: shrink === 'file' ? axial.likely : 0,
    offset: holes === 'file' ? offsetAt(printer.holeOffset, thread.pitchDiameter) : 0,
    leadSlope: lead / (Math.PI * thread.pitchDiameter),
  });
}
