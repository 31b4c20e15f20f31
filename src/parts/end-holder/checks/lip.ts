import { type Check, notJudged, soft, valued } from '../../../judge/check.js';
import { allKeep, keeps } from '../../../judge/judge.js';
import { PLASTIC_EXPANSION, thermalGrowth } from '../../../mechanics/print/thermal.js';
import { interferenceWarm } from '../../../mechanics/shaft/press-fit.js';
import { lipStrain, snapStrain } from '../../../mechanics/shaft/snap-lip.js';
import { plain } from '../../../units/format.js';
import { type Measured, scaled, shifted } from '../../../units/measured.js';
import { holeResidual } from '../../common/residual.js';
import type { EndHolderDesign } from '../dimensions.js';

type HolderCheck = Check<EndHolderDesign>;
const about = { group: 'bearing', moves: 'fit.lip, material, held_by' } as const;

/** How far the lip reaches in over the bearing, per side, as it comes out; undefined without a lip [mm]. */
function reachOf(design: EndHolderDesign): Measured | undefined {
  const { bearing, finished } = design;
  const lip = finished.pocket?.lip;
  if (!bearing || !lip) return undefined;
  const opens = shifted(holeResidual(design, lip.diameter), lip.diameter);
  const over = {
    least: bearing.outside - opens.most,
    likely: bearing.outside - opens.likely,
    most: bearing.outside - opens.least,
  };
  return scaled(over, 0.5);
}

/** A ring that is opened too far cracks, or keeps what it was opened by. */
const strain: HolderCheck = {
  ...about,
  id: 'lip-strain',
  question: 'goes-in',
  title: 'Strain of the lip, snapping in',
  unit: '%',
  source: 'common practice',
  run: (design, inForce) => {
    const reach = reachOf(design);
    const { bearing, material } = design;
    if (!reach || !bearing) return undefined;
    const taken = snapStrain({ strength: material.tensile, modulus: material.modulus });
    const own = soft({ max: 100 * taken.pass }, { max: 100 * taken.fail });
    const percent = (of: number) => (of > 0 ? 100 * lipStrain({ reach: of, outside: bearing.outside }) : 0);
    const value = { least: percent(reach.least), likely: percent(reach.likely), most: percent(reach.most) };
    const { pass } = inForce.of(own);
    const cure = allKeep(value, pass) ? '' : '; a smaller fit.lip, or a plate (held_by: plate)';
    return valued(
      value,
      `a lip that reaches in by ${plain(reach.likely, 2)} mm over ${plain(bearing.outside, 2)} mm; ${material.name} springs back from ${plain(pass.max ?? 0, 2)} %${cure}`,
      own,
    );
  },
};

/** A lip that grows away from the bearing lets it out. */
const hold: HolderCheck = {
  ...about,
  id: 'lip-hold',
  question: 'holds',
  title: 'Reach of the lip, hottest',
  unit: 'mm',
  source: 'derived: difference of expansions',
  limits: soft({ min: 0.1 }, { min: 0.03 }),
  moves: 'fit.lip, duty.temperature, held_by',
  run: (design, { pass }) => {
    const reach = reachOf(design);
    const { bearing, duty } = design;
    if (!reach || !bearing) return undefined;
    if (duty.temperature === undefined) return notJudged('duty.temperature');
    const { temperature } = duty;
    const left = (of: number, expansion: number) =>
      interferenceWarm({
        interference: of,
        diameter: bearing.outside / 2,
        growth: Math.max(0, thermalGrowth({ temperature, expansion })),
      });
    const value = {
      least: left(reach.least, PLASTIC_EXPANSION.most),
      likely: left(reach.likely, PLASTIC_EXPANSION.likely),
      most: left(reach.most, PLASTIC_EXPANSION.least),
    };
    const cure = keeps(value.least, pass)
      ? ''
      : '; a larger fit.lip as far as lip-strain lets it, or a plate (held_by: plate)';
    return valued(
      value,
      `of ${plain(reach.likely, 2)} mm, ${plain(value.likely, 2)} mm are left at ${plain(temperature, 0)} °C${cure}`,
    );
  },
};

/** Whether a lip lets the bearing in, and keeps it. */
export const LIP_CHECKS: readonly HolderCheck[] = [strain, hold];
