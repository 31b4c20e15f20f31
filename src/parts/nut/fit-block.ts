import type { FitBlock } from '../../fit/stack/fit-block.js';
import { EFFECTS } from '../../sheet/sections/effects.js';
import { sum } from '../../units/measured.js';
import { parseQuantity } from '../../units/quantity.js';
import { USUAL_BACKLASH } from '../common/backlash.js';
import { PLACE_SCATTER, planeResidual } from '../common/residual.js';
import type { NutDesign } from './dimensions.js';
import { fitWithChances } from './fit-figures.js';
import { lostByFloat } from './float.js';
import type { NutInput } from './stack.js';

/** A chance above this is as good as certain; below the other it is none. */
const SURE = 0.95;
const UNLIKELY = 0.5;

const COUNTED = 5;

/** The predicted fit for the report: the figures by which the checks judge, the chances, and where the spread comes from. */
export function nutFit(design: NutDesign): FitBlock {
  const fit = fitWithChances(design);
  const wanted = wantedPlay(design);
  const lost = lostByFloat(design);
  const holes = holeErrors(design);
  const { tolerance } = design.screw.inHand;
  return {
    ...outlookOf(Math.min(fit.starts, fit.turns), fit.turnsRunIn),
    flank_angle: design.screw.flankAngle,
    diametral_clearance: fit.diametral,
    crest_gap: fit.crestGap,
    root_gap: fit.rootGap,
    axial_clearance: fit.axial,
    axial_clearance_fresh: fit.freshAxial,
    backlash: { ...sum(fit.play, lost), worst: [fit.play.worst[0] + lost.least, fit.play.worst[1] + lost.most] },
    probabilities: {
      starts: fit.starts,
      turns: fit.turns,
      turns_run_in: fit.turnsRunIn,
      under_wanted_play: fit.playBelow(wanted - lost.most),
    },
    wanted_play: wanted,
    contributors: contributors(fit.results),
    ...(tolerance ? { screw_tolerance: { tolerance: tolerance.class, source: tolerance.source } } : {}),
    ...(holes ? { holes } : {}),
    effects_off: EFFECTS.filter((effect) => !design.effects[effect]),
  };
}

function outlookOf(fresh: number, runIn: number): Pick<FitBlock, 'outlook' | 'words'> {
  if (fresh >= SURE) return { outlook: 'pass', words: 'it will turn' };
  if (runIn >= SURE) return { outlook: 'caution', words: 'it will turn, tight until it has run in' };
  if (runIn >= UNLIKELY) return { outlook: 'caution', words: 'it will turn only with luck' };
  return { outlook: 'fail', words: 'it will not turn' };
}

type Results = ReturnType<typeof fitWithChances>['results'];

/** What the spread comes from, at the end where less is left. */
function contributors({ playLessDrift, playPlusDrift }: Results): FitBlock['contributors'] {
  const worse = playLessDrift.worst.least <= playPlusDrift.worst.least ? playLessDrift : playPlusDrift;
  return worse.contributions
    .slice(0, COUNTED)
    .map(({ name, down, up, share }) => ({ name: NAMES[name], down, up, share }));
}

const NAMES: Readonly<Record<NutInput, string>> = {
  hole_offset: 'hole offset of the printer',
  shrink_plane: 'shrink in the plane',
  shrink_axial: 'shrink along the axis',
  screw_pitch_diameter: "screw's pitch diameter",
  screw_major: "screw's crests",
  screw_minor: "screw's core",
  screw_pitch: "screw's pitch",
  screw_crest: "screw's flanks against its crest",
  first_layer: 'first layer',
  moisture: 'moisture',
  temperature: 'temperature',
  facets: 'facets of the bore',
};

/** The play that is wanted: the sheet's own limit of `thread-backlash`, else what is usual for the axis. */
function wantedPlay({ limits, duty }: Pick<NutDesign, 'limits' | 'duty'>): number {
  const own = limits['thread-backlash']?.max;
  const parsed = own === undefined ? undefined : parseQuantity(own, 'length');
  if (parsed?.ok) return parsed.quantity.value;
  return duty.axis === 'vertical' ? USUAL_BACKLASH.vertical : USUAL_BACKLASH.other;
}

/** How far each hole may be off along the line from the centre: what shrink leaves, and the printer's scatter. */
function holeErrors(design: NutDesign): FitBlock['holes'] {
  return design.holes?.centres.map((centre, i) => {
    const { least, likely, most } = planeResidual(design, Math.hypot(...centre));
    return { hole: i + 1, least: least - PLACE_SCATTER, likely, most: most + PLACE_SCATTER };
  });
}
