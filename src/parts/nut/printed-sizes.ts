import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import { printSizes } from '../common/print-sizes.js';
import { threadInFile } from '../common/thread-in-file.js';
import type { NutSizes } from './nut-sizes.js';

/** Every finished size as it must stand in the file. */
export function printedSizes(finished: NutSizes, material: Material, printer: Printer): NutSizes {
  const { inside, outside, along, across } = printSizes(material, printer);
  const { body, flange, holes, thread } = finished;
  return {
    thread: threadInFile(thread, finished.lead, { material, printer }),
    lead: along(finished.lead),
    body: {
      ...body,
      across: outside(body.across),
      ...(body.flats === undefined ? {} : { flats: outside(body.flats) }),
    },
    length: along(finished.length),
    ...(flange
      ? {
          flange: {
            ...flange,
            size: [outside(flange.size[0]), outside(flange.size[1])] as const,
            corner: across(flange.corner),
            ear: flange.ear > 0 ? outside(flange.ear) : 0,
            thickness: along(flange.thickness),
            offset: along(flange.offset),
            ...(flange.flats === undefined ? {} : { flats: outside(flange.flats) }),
          },
        }
      : {}),
    ...(holes
      ? {
          holes: {
            ...holes,
            diameter: inside(holes.diameter),
            centres: holes.centres.map(([x, y]) => [across(x), across(y)] as const),
          },
        }
      : {}),
    leadIn: across(finished.leadIn),
    relief: across(finished.relief),
    fillet: across(finished.fillet),
  };
}
