import type { PresetData } from '../presets/kinds.js';
import { presetIds, readPreset } from '../presets/read-preset.js';
import type { PresetTexts } from '../presets/texts.js';
import type { Fields } from '../sheet/fields-map.js';
import { plain } from '../units/format.js';
import { parseQuantity } from '../units/quantity.js';

/** A field of a sheet that may name a preset. */
export interface NamedField {
  readonly field: string;
  /** the key of its map that may hold a name */
  readonly key: string;
  /** a key under which older sheets say the same by a number, and the name that it stands for */
  readonly older?: { readonly key: string; readonly about: string; readonly name: (number: string | number) => string };
  /** for those who write sheets; none where the field's own words say so */
  readonly about?: string;
  /** fields beside it that the preset gives too */
  readonly gives: readonly string[];
  /** whether a text at the field is a name */
  readonly isName: (text: string) => boolean;
  /**
   * What the sheet would hold if all were typed, and why it is to be listed as assumed.
   * @throws InputError no such preset, at `path`
   */
  readonly resolve: (
    name: string,
    presets: PresetTexts,
    path: string,
  ) => { readonly figures: Fields; readonly why?: string };
}

const any = () => true;

/** A screw preset stands for its designation. Small letters throughout; a designation begins with a capital. */
const SCREW: NamedField = {
  field: 'screw',
  key: 'designation',
  gives: [],
  isName: (text) => /^[a-z0-9.-]+$/.test(text),
  resolve: (name, presets) => ({ figures: { screw: { designation: screwDesignation(name, presets) } } }),
};

/** The designation that the name of a screw preset stands for; any other text as it is. */
export function screwDesignation(name: string, presets: PresetTexts): string {
  return presetIds('screw', presets).includes(name) ? readPreset('screw', name, presets).data.designation : name;
}

/** A nut is printed to the sizes of a flange. */
const FLANGE: NamedField = {
  field: 'flange',
  key: 'preset',
  about: 'a flange that ships, which gives body and holes too; what the sheet says itself replaces its sizes',
  gives: ['body'],
  isName: any,
  resolve: (name, presets, path) => {
    const { title, data } = readPreset('flange', name, presets, path);
    const { body, flange, holes } = data;
    return { figures: { body, flange, ...(holes ? { holes } : {}) }, why: `${title}; customary, no standard` };
  },
};

/** A bought nut has the sizes of a flange only as well as delivered parts keep them. */
const BOUGHT: NamedField = {
  field: 'nut',
  key: 'preset',
  about: 'a flange that ships, for body, flange and holes as far as the sheet does not say them',
  gives: [],
  isName: any,
  resolve: (name, presets, path) => {
    const { title, data } = readPreset('flange', name, presets, path);
    return { figures: { nut: boughtNut(data) }, why: `${title}; delivered parts differ, measure yours` };
  },
};

function boughtNut({ body, flange, holes = {}, seen = {} }: PresetData<'flange'>): Fields {
  const { shape, diameter, thickness, flats } = flange;
  return {
    body: give(body.diameter, seen.body),
    length: body.length,
    flange: {
      shape,
      diameter: give(diameter, seen.flange),
      thickness: give(thickness, seen.thickness),
      ...(flats === undefined ? {} : { flats }),
    },
    holes: { ...holes, circle: give(holes.circle, seen.circle), diameter: give(holes.diameter, seen.hole) },
  };
}

/** A size as typed, with what parts were seen to be off it. */
function give(typed: unknown, seen: number | undefined): unknown {
  const read = parseQuantity(typed, 'length');
  return seen === undefined || !read.ok ? typed : `${plain(read.quantity.value)} ± ${plain(seen)} mm`;
}

/** A frame says nothing of torque: the most that is met in it is what a grip must bear. */
const MOTOR: NamedField = {
  field: 'motor',
  key: 'preset',
  older: { key: 'frame', about: 'its number alone: the same as preset: frame-17', name: (frame) => `frame-${frame}` },
  about: 'a motor frame that ships, for shaft and torque as far as the sheet does not say them',
  gives: [],
  isName: any,
  resolve: (name, presets, path) => {
    const { title, data } = readPreset('motor', name, presets, path);
    const { diameter, flat } = data.shaft;
    const words = flat === undefined ? 'round' : `flat at ${plain(flat)} mm`;
    return {
      figures: {
        motor: {
          shaft: { diameter, ...(flat === undefined ? {} : { flat }) },
          torque: `${plain(data.torque.most)} N mm`,
        },
      },
      why: `${title}: shaft ${plain(diameter)} mm, ${words}, holding torque up to ${plain(data.torque.most / 1000)} N m; customary, measure the shaft and read the label`,
    };
  },
};

/** What pushes a collar when its axis jams: the most that is met in a frame. */
const MOTOR_JAM: NamedField = {
  ...MOTOR,
  about: 'a motor frame that ships, for its torque',
  resolve: (name, presets, path) => {
    const { title, data } = readPreset('motor', name, presets, path);
    return {
      figures: { motor: { torque: `${plain(data.torque.most)} N mm` } },
      why: `${title}: holding torque up to ${plain(data.torque.most / 1000)} N m; customary, read the label`,
    };
  },
};

/** A plate takes the face of a motor by its frame. */
const MOTOR_FACE: NamedField = {
  field: 'motor',
  key: 'preset',
  about: 'a motor frame that ships, for face, shaft and torque as far as the sheet does not say them',
  gives: [],
  isName: any,
  resolve: (name, presets, path) => {
    const { title, data } = readPreset('motor', name, presets, path);
    const { face, bolt_square, pilot, pilot_height, body, shaft, torque } = data;
    const held =
      face.thread_depth === undefined ? 'bolts through its face' : `threads ${plain(face.thread_depth)} mm deep`;
    return {
      figures: {
        motor: {
          square: bolt_square,
          pilot,
          pilot_height,
          ...face,
          body,
          shaft: { diameter: shaft.diameter },
          torque: `${plain(torque.most)} N mm`,
        },
      },
      why: `${title}: ${face.screw}, ${held}, holding torque up to ${plain(torque.most / 1000)} N m; customary, measure the face and read the label`,
    };
  },
};

/** A machine that was made for a motor has the holes of its frame, and an opening for its pilot. */
const MOTOR_SEAT: NamedField = {
  field: 'machine',
  key: 'preset',
  about: 'a motor frame that ships, for which the machine was made: its holes, and an opening as wide as its pilot',
  gives: [],
  isName: any,
  resolve: (name, presets, path) => {
    const { title, data } = readPreset('motor', name, presets, path);
    const { face, bolt_square, pilot } = data;
    return {
      figures: {
        machine: { holes: { rectangle: [bolt_square, bolt_square], screw: face.screw }, opening: pilot },
      },
      why: `made for a ${title}; measure its holes`,
    };
  },
};

const OF_KIND: Readonly<Record<string, readonly NamedField[]>> = {
  nut: [FLANGE, SCREW],
  'twin-nut': [FLANGE, SCREW],
  adapter: [BOUGHT, SCREW],
  coupling: [MOTOR, SCREW],
  sleeve: [MOTOR, SCREW],
  collar: [MOTOR_JAM, SCREW],
  'end-holder': [SCREW],
  'motor-plate': [MOTOR_FACE, MOTOR_SEAT, SCREW],
  coupon: [SCREW],
  gauge: [SCREW],
};

/** Where the sheet of a kind may name a preset. */
export function namedFields(kind: string): readonly NamedField[] {
  return OF_KIND[kind] ?? [];
}
