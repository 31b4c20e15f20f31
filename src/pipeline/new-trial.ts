import { blankTrial } from '../calibrate/trial-text.js';
import { offsetAt } from '../mechanics/print/printed-size.js';
import type { NutDesign } from '../parts/nut/dimensions.js';
import { fitFigures } from '../parts/nut/fit-figures.js';
import { fault } from '../units/faults.js';
import { halfWidth } from '../units/measured.js';
import { type DesignOptions, design } from './design.js';
import { NUT_START } from './start-sheets/nut.js';

/**
 * The form of a trial: what a person sees on a finished nut, with what the nut was made by filled in.
 *
 * @param sheet the nut's sheet, text or plain object; the sheet that `new nut` gives unless said otherwise
 * @param options presets, where not those that ship
 * @returns YAML to be filled in beside the print
 * @throws InputError every mistake of the sheet; a sheet of another part
 */
export function newTrial(sheet: string | object = NUT_START, options: DesignOptions = {}): string {
  const made = design(sheet, options);
  if (!isNut(made)) throw fault('part', made.part, 'must be nut: a trial is of a nut that was printed');
  return blankTrial(trialHead(made));
}

function isNut(made: { readonly part: string }): made is NutDesign {
  return made.part === 'nut' || made.part === 'twin-nut';
}

/** What the form knows of a nut. */
function trialHead(made: NutDesign) {
  const { finished, material, printer, screw, fit } = made;
  const { shrink, holes } = printer.compensation;
  const { play, layers } = fitFigures(made);
  return {
    nut: made.name,
    ...(made.profile ? { profile: made.profile.name } : {}),
    material: material.name,
    printer: { nozzle: printer.nozzle, layer: printer.layer },
    applied: {
      plane: shrink === 'none' ? 0 : material.shrink.plane.likely,
      axial: shrink === 'none' ? 0 : material.shrink.axial.likely,
      hole_offset: holes === 'none' ? 0 : offsetAt(printer.holeOffset, finished.thread.pitchDiameter),
    },
    doubt: { axial: halfWidth(material.shrink.axial) },
    pitch: screw.pitch.likely,
    flank_angle: screw.flankAngle,
    fit: { diametral: fit.diametral, axial: fit.axial },
    wanted: {
      length: finished.length,
      bore: finished.thread.minor,
      body: finished.body.across,
      play: play.likely,
    },
    edges: layers,
  };
}
