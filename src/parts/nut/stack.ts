import { propagate } from '../../fit/stack/propagate.js';
import type { StackInput, StackModel, StackResult } from '../../fit/stack/stack.js';
import { leadAngle } from '../../mechanics/power-screw/lead-angle.js';
import { facetOpening } from '../../mechanics/print/facet-chord.js';
import { firstLayerIntrusion } from '../../mechanics/print/first-layer.js';
import { layerStepping } from '../../mechanics/print/layer-stepping.js';
import { moistureGrowth } from '../../mechanics/print/moisture.js';
import { offsetAt } from '../../mechanics/print/printed-size.js';
import { PLASTIC_EXPANSION, thermalGrowth } from '../../mechanics/print/thermal.js';
import { asPrintedThread } from '../../mechanics/thread/as-printed-thread.js';
import { rootDiameterOf, type ToothForm } from '../../mechanics/thread/nut-thread.js';
import { printedThread } from '../../mechanics/thread/printed-thread.js';
import type { ClassedSize } from '../../sheet/screw/screw-in-hand.js';
import { exactly, halfWidth, type Measured, plusMinus } from '../../units/measured.js';
import { threadColumns } from '../common/thread-shape.js';
import type { NutDesign } from './dimensions.js';
import { shiftOf } from './variants/twin.js';

/** What the fit of a nut hangs on: what the printer leaves after compensation, readings of the screw, effects of form. */
export type NutInput =
  /** diametral hole offset of the printer at the pitch diameter */
  | 'hole_offset'
  /** what is left of the shrink, as a fraction of the size that was wanted */
  | 'shrink_plane'
  | 'shrink_axial'
  | 'screw_pitch_diameter'
  | 'screw_major'
  | 'screw_minor'
  | 'screw_pitch'
  /** flanks and root of the screw against its crest, on the diameter, where only the crest was read */
  | 'screw_crest'
  /** diametral, at the end of the bore */
  | 'first_layer'
  /** share of the growth from dry to room air that has happened since the part was measured */
  | 'moisture'
  /** growth against the steel screw, as a fraction */
  | 'temperature'
  /** diametral, in the corners of the facets */
  | 'facets';

/** What comes of it once the nut has run in, mm; all but the drift must stay above 0 for the nut to do its work. */
export type NutResult =
  | 'diametral'
  /** over both flanks, the pitch taken as true */
  | 'play'
  /** the same at the ends of a nut whose pitch is off, before its drift is taken from it */
  | 'clear'
  /** drift of the nut's pitch against the screw's over the engaged length */
  | 'drift'
  | 'crestGap'
  | 'rootGap'
  /** diametral room over the screw's crests behind the squashed first layer */
  | 'entry'
  /** play less the drift, whichever way it goes */
  | 'playLessDrift'
  | 'playPlusDrift';

/** A thread pair as printed. */
export interface AsPrinted {
  readonly nut: ToothForm;
  readonly screw: ToothForm;
}

/** The chain from the file and the printer to the fit on this screw. */
export interface NutChain {
  readonly inputs: readonly StackInput<NutInput>[];
  readonly model: StackModel<NutInput, NutResult>;
  /** axial play that the edges of the layers take from a fresh print, in full until the screw has worn them off */
  readonly layers: number;
  /** both threads for one value of each input, run in or fresh */
  readonly threads: (at: Readonly<Record<NutInput, number>>, state?: 'run-in' | 'fresh') => AsPrinted;
}

/** The results of a design's chain, with their bounds and spread. */
export function predictFit(design: NutDesign): Readonly<Record<NutResult, StackResult<NutInput>>> {
  const { inputs, model } = nutChain(design);
  return propagate(inputs, model);
}

/** The chain of one design. */
export function nutChain(design: NutDesign): NutChain {
  const { finished, material, screw } = design;
  const given = inputValues(design);
  const layers = design.effects.layers ? steppingOf(design) : 0;
  const { crest, major, level } = screw.inHand;
  const byCrest = crest.most > crest.least ? 1 : 0;
  const rootByCrest = level.includes('minor') ? byCrest : 0;
  // flanks and root that are placed by the crest are off by the error of its reading too
  const offCrest = (at: Readonly<Record<NutInput, number>>) => at.screw_crest + at.screw_major - major.likely;
  const sent = sentThread(design);
  const leadSlope = leadSlopeOf(design);
  const left = { plane: material.shrink.plane.likely, axial: material.shrink.axial.likely };
  const inMoisture = {
    growth: design.effects.moisture ? material.moistureGrowth : 0,
    bore: design.effects.moisture ? boreGrowth(design) : 0,
  };
  const threads = (at: Readonly<Record<NutInput, number>>, state: 'run-in' | 'fresh' = 'run-in'): AsPrinted => {
    const dry = asPrintedThread(sent, {
      plane: left.plane + at.shrink_plane * (1 - left.plane),
      axial: left.axial + at.shrink_axial * (1 - left.axial),
      offset: at.hole_offset,
      leadSlope,
    });
    const grown = 1 + at.temperature;
    const longer = grown + inMoisture.growth * at.moisture;
    const wider = (diameter: number) => diameter * grown + inMoisture.bore * at.moisture;
    return {
      nut: {
        minor: wider(dry.minor),
        pitchDiameter: wider(dry.pitchDiameter),
        major: wider(dry.major),
        pitch: dry.pitch * longer,
        grooveWidth: dry.grooveWidth * longer - (state === 'fresh' ? layers : 0),
        flankSlope: dry.flankSlope,
      },
      screw: {
        minor: at.screw_minor + rootByCrest * offCrest(at),
        pitchDiameter: at.screw_pitch_diameter + byCrest * offCrest(at),
        major: at.screw_major,
        pitch: at.screw_pitch,
        grooveWidth: at.screw_pitch / 2,
        flankSlope: finished.thread.flankSlope,
      },
    };
  };
  const taken = shiftOf(design);
  const model = (at: Readonly<Record<NutInput, number>>): Record<NutResult, number> => {
    const { nut, screw } = threads(at);
    const play = localPlay(nut, screw) - taken;
    const { clear: along, drift } = playAlong({ nut, screw }, finished.length);
    const clear = along - taken;
    const crestGap = (rootDiameterOf(nut) + at.facets - screw.major) / 2;
    return {
      diametral: nut.pitchDiameter - screw.pitchDiameter + at.facets,
      play,
      clear,
      drift,
      crestGap,
      rootGap: (nut.minor + at.facets - screw.minor) / 2,
      entry: 2 * crestGap - at.first_layer,
      playLessDrift: clear - drift,
      playPlusDrift: clear + drift,
    };
  };
  return { inputs: given, model, layers, threads };
}

/** Axial play of one tooth in its groove. */
function localPlay(nut: ToothForm, screw: ToothForm): number {
  return nut.grooveWidth - screw.grooveWidth + (nut.pitchDiameter - screw.pitchDiameter) * nut.flankSlope;
}

/**
 * Play and drift over a length. The end flanks of a nut whose pitch is off lie half a groove beyond the middles of
 * their grooves, which is just what the stretched groove itself gives or takes; so the groove counts here as if the
 * pitch were true.
 */
export function playAlong(
  { nut, screw }: AsPrinted,
  length: number,
): { readonly clear: number; readonly drift: number } {
  const stretch = nut.pitch / screw.pitch;
  return {
    clear: localPlay({ ...nut, grooveWidth: nut.grooveWidth / stretch }, screw),
    drift: (stretch - 1) * length,
  };
}

/** The thread that is printed: with what this file or the slicer puts in, or as wanted where nobody does. */
function sentThread({ finished, material, printer, ...design }: NutDesign): ToothForm {
  const { shrink, holes } = printer.compensation;
  return printedThread(finished.thread, {
    plane: shrink === 'none' ? 0 : material.shrink.plane.likely,
    axial: shrink === 'none' ? 0 : material.shrink.axial.likely,
    offset: holes === 'none' ? 0 : offsetAt(printer.holeOffset, finished.thread.pitchDiameter),
    leadSlope: leadSlopeOf({ finished, ...design }),
  });
}

function leadSlopeOf({ finished }: Pick<NutDesign, 'finished'>): number {
  return finished.lead / (Math.PI * finished.thread.pitchDiameter);
}

function inputValues(design: NutDesign): StackInput<NutInput>[] {
  const { screw, material, printer, finished, effects, duty } = design;
  const offset = offsetAt(printer.holeOffset, finished.thread.pitchDiameter);
  const residual = (shrink: Measured) => plusMinus(0, effects.shrink ? halfWidth(shrink) : 0);
  const value: Readonly<Record<NutInput, Measured>> = {
    hole_offset: plusMinus(offset, effects.hole_offset ? printer.holeSpread : 0),
    shrink_plane: residual(material.shrink.plane),
    shrink_axial: residual(material.shrink.axial),
    screw_pitch_diameter: screw.inHand.pitchDiameter,
    screw_major: screw.inHand.major,
    screw_minor: screw.inHand.minor,
    screw_pitch: screw.inHand.pitch,
    screw_crest: screw.inHand.crest,
    first_layer: upTo(
      effects.first_layer ? firstLayerIntrusion({ spread: printer.firstLayer, chamfer: finished.leadIn }) : 0,
    ),
    moisture: upTo(effects.moisture && material.moistureGrowth > 0 ? 1 : 0),
    temperature: effects.temperature && duty.temperature !== undefined ? expansion(duty.temperature) : exactly(0),
    facets: upTo(effects.facets ? openingOf(design) : 0),
  };
  const names = Object.keys(value) as NutInput[];
  const level = new Set<NutInput>([...BOUNDS_ONLY, ...screw.inHand.level.map((size) => CLASSED[size])]);
  return names.map((name) => ({ name, value: value[name], ...(level.has(name) ? { level: true } : {}) }));
}

/** Inputs of which nothing but their bounds is known. */
const BOUNDS_ONLY: readonly NutInput[] = ['screw_crest', 'first_layer', 'moisture', 'temperature', 'facets'];

const CLASSED = {
  major: 'screw_major',
  pitchDiameter: 'screw_pitch_diameter',
  minor: 'screw_minor',
  pitch: 'screw_pitch',
} as const satisfies Readonly<Record<ClassedSize, NutInput>>;

/** An effect that is not there at best, and in full at worst. */
function upTo(most: number): Measured {
  return { least: 0, likely: most / 2, most };
}

function expansion(temperature: number): Measured {
  const at = (of: number) => thermalGrowth({ temperature, expansion: of });
  const [one, other] = [at(PLASTIC_EXPANSION.least), at(PLASTIC_EXPANSION.most)];
  return { least: Math.min(one, other), likely: at(PLASTIC_EXPANSION.likely), most: Math.max(one, other) };
}

function steppingOf({ printer, screw, finished }: NutDesign): number {
  const angle = leadAngle({ lead: finished.lead, meanDiameter: screw.pitchDiameter.likely });
  return layerStepping({
    layer: printer.layer,
    line: printer.lineWidth,
    flankAngle: screw.flankAngle,
    leadAngle: angle,
  });
}

function openingOf({ finished, printer }: NutDesign): number {
  const { thread, lead } = finished;
  const sides = threadColumns(thread, lead, printer.chordError);
  return facetOpening({ diameter: thread.pitchDiameter, sides });
}

/** How the bore changes when the nut takes up moisture. @internal */
export function boreGrowth(design: NutDesign): number {
  const { finished, material } = design;
  const wall = (finished.body.across - finished.thread.major) / 2;
  return moistureGrowth({
    growth: material.moistureGrowth,
    diameter: finished.thread.pitchDiameter,
    wall,
    held: isHeld(design),
  });
}

/**
 * Whether the carriage keeps the body from growing. Only a bore that is known to leave room for it does not; with no
 * bore stated, the nut may sit in a pocket.
 */
export function isHeld({ carriage, finished, material, stands }: NutDesign): boolean {
  if (stands === 'away') return false;
  if (!carriage.bore) return true;
  return carriage.bore.least - finished.body.across < material.moistureGrowth * finished.body.across;
}
