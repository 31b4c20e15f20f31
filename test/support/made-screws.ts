import { design } from '../../src/index.js';
import type { NutDesign } from '../../src/parts/nut/dimensions.js';
import { fitFigures } from '../../src/parts/nut/fit-figures.js';
import { screwLimits } from '../../src/standards/tolerances/thread-limits.js';
import { chance } from './simulated-printer.js';

/** What was read of a screw: its name alone, its crest alone, or crest, flanks, root and the length over some pitches. */
export type Read = 'nothing' | 'crest' | 'all';

/** A screw that is drawn, and the form its sheet states where only the crest was read. */
export interface DrawnScrew {
  readonly name: string;
  readonly form: 'trapezoidal' | 'acme' | 'metric-v';
}

export const SCREWS: readonly DrawnScrew[] = [
  { name: 'Tr8x2', form: 'trapezoidal' },
  { name: 'Tr8x8(P2)', form: 'trapezoidal' },
  { name: 'M16', form: 'metric-v' },
  { name: 'Acme 1/2-10', form: 'acme' },
  { name: 'Tr10x2', form: 'trapezoidal' },
  { name: 'Tr12x3', form: 'trapezoidal' },
];

const SHRINK = { plane: [0.01, 0.005], axial: [0.006, 0.005] } as const;
const HOLE = [0.15, 0.05] as const;
const PITCHES = 10;

/** Shares of nuts within each stated range. */
export type Shares = Readonly<Record<'diametral' | 'crestGap' | 'rootGap' | 'play' | 'axial' | 'freshAxial', number>>;

interface Sizes {
  readonly major: number;
  readonly d2: number;
  readonly minor: number;
  readonly pitch: number;
}

/**
 * Makes that many screws within their class, each with its readings in hundredths, and a nut of each on a printer that
 * keeps its stated spread; geometry worked out here, apart from the program's own chain. Screws that read alike have
 * one nut in the file and one statement.
 */
export function sharesWithin(
  screw: DrawnScrew,
  read: Read,
  fit: 'close' | 'running' | 'loose',
  count: number,
  seed: number,
): Shares {
  const { between, normal } = chance(seed);
  for (let i = 0; i < 20; i += 1) between(0, 1);
  const { name } = screw;
  const { pitch: basic, starts } = nut({ designation: name }, fit).screw;
  const limits = screwLimits({ designation: name });
  const hits = { diametral: 0, crestGap: 0, rootGap: 0, play: 0, axial: 0, freshAxial: 0 };
  const known = new Map<string, ReturnType<typeof statementOf>>();
  for (let n = 0; n < count; n += 1) {
    const made: Sizes = {
      major: between(...limits.major),
      d2: between(...limits.pitchDiameter),
      minor: between(...limits.minor),
      pitch: basic.likely * (1 + between(-0.001, 0.001)),
    };
    const sheet = sheetOf(screw, read, made, { basic: basic.likely, starts, normal });
    const key = JSON.stringify(sheet);
    const { stated, finished } = known.get(key) ?? statementOf(nut(sheet, fit));
    known.set(key, { stated, finished });
    const plane = SHRINK.plane[0] + (SHRINK.plane[1] / 2) * normal();
    const axial = SHRINK.axial[0] + (SHRINK.axial[1] / 2) * normal();
    const hole = HOLE[0] + (HOLE[1] / 2) * normal();
    const { thread, length, lead } = finished;
    // drawn with what is believed, printed by what is true
    const wide = (size: number) => ((size + HOLE[0]) / (1 - SHRINK.plane[0])) * (1 - plane) - hole;
    const stretch = (1 - axial) / (1 - SHRINK.axial[0]);
    // an offset acts across the flank, so along a steep helix it closes the groove besides
    const tilt = Math.hypot(thread.flankSlope, lead / (Math.PI * thread.pitchDiameter)) - thread.flankSlope;
    const groove = (thread.grooveWidth + HOLE[0] * tilt) * stretch - hole * tilt;
    const diametral = wide(thread.pitchDiameter) - made.d2;
    const play = groove - made.pitch / 2 + diametral * thread.flankSlope;
    const longer = (thread.pitch * stretch) / made.pitch;
    const ends = groove / longer - made.pitch / 2 + diametral * thread.flankSlope;
    const left = ends - Math.abs(longer - 1) * length;
    const crest =
      (Math.min(wide(thread.major), wide(thread.pitchDiameter) + groove / thread.flankSlope) - made.major) / 2;
    const root = (wide(thread.minor) - made.minor) / 2;
    const is = (figure: { least: number; most: number }, value: number) =>
      value >= figure.least && value <= figure.most ? 1 : 0;
    hits.diametral += is(stated.diametral, diametral);
    hits.crestGap += is(stated.crestGap, crest);
    hits.rootGap += is(stated.rootGap, root);
    hits.play += is(stated.play, play);
    hits.axial += is(stated.axial, left);
    hits.freshAxial += is(stated.freshAxial, left - stated.layers);
  }
  return Object.fromEntries(Object.entries(hits).map(([key, hit]) => [key, hit / count])) as Shares;
}

function sheetOf(
  { name, form }: DrawnScrew,
  read: Read,
  made: Sizes,
  { basic, starts, normal }: { readonly basic: number; readonly starts: number; readonly normal: () => number },
): object {
  // ± 0.03 mm are two standard deviations
  const shown = (size: number) => Math.round(100 * (size + 0.015 * normal())) / 100;
  switch (read) {
    case 'nothing':
      return { designation: name };
    case 'crest':
      return { form, major: shown(made.major), pitch: basic, starts, hand: 'right' };
    case 'all':
      return {
        designation: name,
        major: shown(made.major),
        pitch_diameter: shown(made.d2),
        minor: shown(made.minor),
        crests: { count: PITCHES, length: shown(PITCHES * made.pitch) },
      };
  }
}

function statementOf(design: NutDesign) {
  return { stated: { ...fitFigures(design) }, finished: design.finished };
}

function nut(screw: object, fit: string): NutDesign {
  return design({
    part: 'nut',
    name: 'drawn',
    screw,
    body: { diameter: 24, length: 18 },
    fit,
    material: { preset: 'pa12', shrink: { plane: '1 ± 0.5 %', axial: '0.6 ± 0.5 %' } },
    printer: { nozzle: 0.4, layer: 0.12, hole_offset: HOLE[0], compensation: 'file' },
    effects: { moisture: 'off', temperature: 'off', facets: 'off', first_layer: 'off' },
  }) as NutDesign;
}
