import { design } from '../../src/index.js';
import type { NutDesign } from '../../src/parts/nut/dimensions.js';
import { fitFigures } from '../../src/parts/nut/fit-figures.js';
import { screwLimits } from '../../src/standards/tolerances/thread-limits.js';
import { chance } from './simulated-printer.js';

/** Screws that are drawn: named ones, one of which only the crest was read, and one whose flanks were. */
export const SCREWS: readonly { readonly name: string; readonly read: 'nothing' | 'crest' | 'flanks' }[] = [
  { name: 'Tr8x2', read: 'nothing' },
  { name: 'Tr8x8(P2)', read: 'nothing' },
  { name: 'M8', read: 'nothing' },
  { name: 'Acme 1/2-10', read: 'nothing' },
  { name: 'Tr10x2', read: 'crest' },
  { name: 'Tr12x3', read: 'flanks' },
];

const SHRINK = { plane: [0.01, 0.005], axial: [0.006, 0.005] } as const;
const HOLE = [0.15, 0.05] as const;

/** Shares of nuts within each stated range. */
export type Shares = Readonly<Record<'diametral' | 'crestGap' | 'rootGap' | 'play' | 'axial' | 'freshAxial', number>>;

/**
 * Makes that many screws within their class, each with its readings, and a nut of each on a printer that keeps its
 * stated spread; geometry worked out here, apart from the program's own chain.
 */
export function sharesWithin(
  { name, read }: (typeof SCREWS)[number],
  fit: 'close' | 'running' | 'loose',
  count: number,
  seed: number,
): Shares {
  const { between, normal } = chance(seed);
  for (let i = 0; i < 20; i += 1) between(0, 1);
  const base = nut({ designation: name }, fit);
  const basic = base.screw;
  const limits = screwLimits({ designation: name });
  const hits = { diametral: 0, crestGap: 0, rootGap: 0, play: 0, axial: 0, freshAxial: 0 };
  // the stated figures of a nut hang on what was read; where nothing was, one statement serves all screws
  let stated = { ...fitFigures(base) };
  let design = base;
  for (let n = 0; n < count; n += 1) {
    const major = between(...limits.major);
    const d2 = between(...limits.pitchDiameter);
    const minor = between(...limits.minor);
    const pitch = basic.pitch.likely * (1 + between(-0.001, 0.001));
    if (read !== 'nothing') {
      const readOf = (size: number) => Math.round(1000 * (size + 0.015 * normal())) / 1000;
      const sheet =
        read === 'crest'
          ? { form: 'trapezoidal', major: readOf(major), pitch: basic.pitch.likely, starts: 1, hand: 'right' }
          : { designation: name, major: readOf(major), pitch_diameter: readOf(d2), minor: readOf(minor) };
      design = nut(sheet, fit);
      stated = { ...fitFigures(design) };
    }
    const plane = SHRINK.plane[0] + (SHRINK.plane[1] / 2) * normal();
    const axial = SHRINK.axial[0] + (SHRINK.axial[1] / 2) * normal();
    const hole = HOLE[0] + (HOLE[1] / 2) * normal();
    const { thread, length, lead } = design.finished;
    // drawn with what is believed, printed by what is true
    const wide = (size: number) => ((size + HOLE[0]) / (1 - SHRINK.plane[0])) * (1 - plane) - hole;
    const stretch = (1 - axial) / (1 - SHRINK.axial[0]);
    // an offset acts across the flank, so along a steep helix it closes the groove besides
    const tilt = Math.hypot(thread.flankSlope, lead / (Math.PI * thread.pitchDiameter)) - thread.flankSlope;
    const groove = (thread.grooveWidth + HOLE[0] * tilt) * stretch - hole * tilt;
    const diametral = wide(thread.pitchDiameter) - d2;
    const play = groove - pitch / 2 + diametral * thread.flankSlope;
    const ends = groove / ((thread.pitch * stretch) / pitch) - pitch / 2 + diametral * thread.flankSlope;
    const left = ends - Math.abs((thread.pitch * stretch) / pitch - 1) * length;
    const crest = (Math.min(wide(thread.major), wide(thread.pitchDiameter) + groove / thread.flankSlope) - major) / 2;
    const root = (wide(thread.minor) - minor) / 2;
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
