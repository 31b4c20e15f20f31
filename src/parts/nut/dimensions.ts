import type { Printer } from '../../presets/printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import { type Assumption, Assumptions } from '../../sheet/assumptions.js';
import { measured } from '../../sheet/measured-field.js';
import { resolveScrew } from '../../sheet/resolve-screw.js';
import { PULLS, type Pull } from '../../sheet/sections/duty.js';
import { resolveEffects } from '../../sheet/sections/effects.js';
import type { LimitsSheet } from '../../sheet/sections/limits.js';
import { fault } from '../../units/faults.js';
import { requireFacetBudget } from '../common/facet-budget.js';
import { resolveFit } from '../common/fit-classes.js';
import { measuredPattern, ownPattern } from '../common/hole-pattern.js';
import type { Joint } from '../common/joints.js';
import { noteLift } from '../common/lifted.js';
import { pullsOf } from '../common/load-cases.js';
import { printSizes, TRUE_SIZES } from '../common/print-sizes.js';
import { workshopOf } from '../common/workshop.js';
import { nutDrive } from './drive.js';
import { finishedSizes } from './finished-sizes.js';
import { nutFloat, requireFloatHoles, withFloatHoles } from './float.js';
import { requireMarkFits } from './mark.js';
import type { Carriage, HeadSide, Holes, NutDesign } from './nut-design.js';
import type { NutSizes } from './nut-sizes.js';
import { printedSizes } from './printed-sizes.js';
import type { NutSheet } from './sheet.js';
import { sizeNames } from './size-names.js';
import { catchPocketOf } from './variants/pocket.js';
import { withVariantSizes } from './variants/sizes.js';
import { variantOf } from './variants/variant-of.js';

export type { Carriage, HeadSide, Holes, NutDesign } from './nut-design.js';

export type { Flange, NutSizes } from './nut-sizes.js';

/**
 * Works a nut out from its sheet: every size finished and printed, nothing modelled yet.
 * @throws InputError values that contradict each other or cannot be a nut
 */
export function designNut(sheet: NutSheet, presets: PresetTexts): NutDesign {
  const assumptions = new Assumptions();
  const { calipers, material, printer } = workshopOf(sheet, presets, assumptions);
  const screw = resolveScrew(sheet.screw, calipers, assumptions);
  const fit = resolveFit(sheet.fit, assumptions);
  const float = nutFloat(sheet, assumptions);
  const holes = holesOf(float ? withFloatHoles(sheet, float, assumptions) : sheet, printer, assumptions);
  if (float) requireFloatHoles(holes!);
  const carriage = carriageOf(sheet, calipers, assumptions);
  const finished = finishedSizes(sheet, { screw, fit, holes, carriage, chordError: printer.chordError }, assumptions);
  requireStanding(sheet, finished);
  const printed = printedSizes(finished, material, printer);
  const { thread, lead, length } = printed;
  requireFacetBudget({ thread, lead, length, chordError: printer.chordError });
  const duty = sheet.duty ?? {};
  const family = variantOf(sheet.family, { finished, screw, duty, printer }, assumptions);
  const catchPocket = catchPocketOf(sheet.catch_nut, finished, assumptions);
  if (catchPocket && family?.kind === 'twin')
    throw fault(
      'catch_nut',
      undefined,
      'does not belong to a twin nut: its second thread stands where the metal nut would',
    );
  const mark = sheet.mark && { text: sheet.mark.text, style: sheet.mark.style ?? ('raised' as const) };
  requireMarkFits({
    printed,
    carriage,
    printer,
    ...(sheet.stands === 'away' ? { stands: sheet.stands } : {}),
    ...(mark ? { mark } : {}),
    ...(holes ? { holes } : {}),
    ...(family ? { family } : {}),
  });
  noteLift(duty, assumptions);
  const drive = nutDrive({ screw, fit, duty, material });
  const pulls = holes ? pullsOf(duty, mountedPull(sheet), assumptions) : PULLS;
  return {
    part: sheet.part,
    name: sheet.name,
    screw,
    fit,
    finished,
    printed,
    ...(holes ? { holes } : {}),
    carriage,
    ...(float ? { float } : {}),
    ...(sheet.mounting ? { mounting: sheet.mounting } : {}),
    ...(sheet.stands === 'away' ? { stands: sheet.stands } : {}),
    ...(mark ? { mark } : {}),
    material,
    printer,
    duty,
    pulls,
    effects: resolveEffects(sheet.effects),
    calipers,
    drive,
    ...(family ? { family } : {}),
    ...(catchPocket ? { catchPocket } : {}),
    dimensions: {
      finished: withVariantSizes(sizeNames(finished), { family, catchPocket, print: TRUE_SIZES }),
      printed: withVariantSizes(sizeNames(printed), { family, catchPocket, print: printSizes(material, printer) }),
    },
    assumptions: [...assumptions.list, ...drive.assumptions] satisfies readonly Assumption[],
    limits: (sheet.limits ?? {}) satisfies LimitsSheet,
    densities: { [material.name]: material.density },
  };
}

/**
 * On a vertical axis with the body in the bore, a flange on top hangs its carriage on the screws; one below carries it. Where
 * the body stands away it is the other way round.
 */
function mountedPull({ duty, mounting, carriage, stands }: NutSheet): Pull | undefined {
  if (duty?.axis !== 'vertical' || mounting === undefined) return undefined;
  if (stands === 'away') return mounting === 'flange-up' ? 'onto' : 'away';
  if (stands === undefined && carriage?.bore === undefined) return undefined;
  return mounting === 'flange-up' ? 'away' : 'onto';
}

/** What stands away from the carriage lies on it by its flange, with nothing between. @throws InputError */
function requireStanding({ stands, holes }: NutSheet, { flange }: NutSizes): void {
  if (stands !== 'away') return;
  if (!flange) throw fault('stands', 'away', 'wants a flange to stand on');
  if (holes?.head === 'flange')
    throw fault('holes.head', 'flange', 'would lie between flange and carriage where the body stands away; use body');
}

function holesOf(sheet: NutSheet, { bridging }: Printer, assumptions: Assumptions): Holes | undefined {
  if (!sheet.holes) return undefined;
  const pattern = ownPattern(sheet.holes, 'holes', assumptions);
  const joint = assumptions.or<Joint>(sheet.holes.joint, 'holes.joint', 'through', 'a plain clearance hole');
  const head = assumptions.or<HeadSide>(
    sheet.holes.head,
    'holes.head',
    'body',
    'the tighter side, so nothing is overlooked',
  );
  return { ...pattern, joint, head, ...(bridging === 'none' ? {} : { roof: bridging }) };
}

function carriageOf(sheet: NutSheet, calipers: number, assumptions: Assumptions): Carriage {
  const { bore, thickness, holes } = sheet.carriage ?? {};
  return {
    ...(bore ? { bore: measured(bore, calipers) } : {}),
    ...(thickness ? { thickness: measured(thickness, calipers) } : {}),
    ...(holes ? { holes: measuredPattern(holes, 'carriage.holes', assumptions, calipers) } : {}),
  };
}
