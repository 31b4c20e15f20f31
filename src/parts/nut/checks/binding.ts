import { type Check, notJudged, soft, valued } from '../../../judge/check.js';
import { allKeep } from '../../../judge/judge.js';
import { sideLoad } from '../../../mechanics/beam.js';
import { plain, worked } from '../../../units/format.js';
import type { Measured } from '../../../units/measured.js';
import { remedyWords } from '../../common/remedy-words.js';
import { PLACE_SCATTER, planeResidual } from '../../common/residual.js';
import type { NutDesign } from '../dimensions.js';
import { radialFloat } from './mount.js';

/** A side load that a light axis shows as ripples of the lead, N. @source common-practice */
const NOTICED = 5;

/** How far the screw is forced sideways where its nut cannot float to it. */
function forcedAside(design: NutDesign, float: Measured): Measured {
  const { holes } = design;
  const shrink = holes ? planeResidual(design, holes.spacing.likely) : { least: 0, most: 0 };
  const scatter = PLACE_SCATTER + Math.max(Math.abs(shrink.least), Math.abs(shrink.most)) / 2;
  return {
    least: Math.max(0, -float.most - scatter),
    likely: Math.max(0, -float.likely),
    most: Math.max(0, scatter - float.least),
  };
}

/** A nut that is bolted beside its screw bends it. */
export const mountBinding: Check<NutDesign> = {
  id: 'mount-binding',
  group: 'mount',
  question: 'turns',
  title: 'Side load on the screw',
  unit: 'N',
  source: 'common practice',
  limits: soft({ max: NOTICED }, { max: 3 * NOTICED }),
  moves: 'holes.diameter, holes.circle, carriage.bore, duty.span, duty.ends',
  run: (design, { pass }) => {
    const float = radialFloat(design);
    if (!float) return undefined;
    const aside = forcedAside(design, float);
    if (aside.most > 0 && design.duty.span === undefined) return notJudged('duty.span');
    if (aside.most > 0 && design.duty.ends === undefined) return notJudged('duty.ends');
    const { span = 1, ends = 'supported' } = design.duty;
    const force = (offset: number) =>
      sideLoad({ rootDiameter: design.screw.minor.likely, span, ends, offset, at: 0.5 });
    const load = { least: force(aside.least), likely: force(aside.likely), most: force(aside.most) };
    const told =
      aside.most === 0
        ? `the nut floats ${worked(float.likely, 'mm')} mm and finds the screw`
        : `the screw may be ${worked(aside.most, 'mm')} mm aside, ${plain(load.most, 1)} N at mid span and more near its ends`;
    const cure = allKeep(load, pass)
      ? ''
      : remedyWords(design, 'mount-binding', 'no wider hole or bore alone keeps the nut off it');
    return valued(load, `${told}${cure}`);
  },
};
