import type { CouponFeatures } from '../../calibrate/feature.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import { Assumptions } from '../../sheet/assumptions.js';
import { resolveScrew, type Screw } from '../../sheet/resolve-screw.js';
import type { FastenerSize } from '../../standards/fasteners/sizes.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { requireFacetBudget } from '../common/facet-budget.js';
import { printSizes } from '../common/print-sizes.js';
import { workshopOf } from '../common/workshop.js';
import type { DesignBase, Sizes } from '../part-kind.js';
import { type CouponPlan, featuresOf, type PocketPlan, type ScalePlan, stepHeights, type ThreadPlan } from './plan.js';
import { roomForMarks } from './scale-plate.js';
import { type CouponSheet, PURPOSES, type Purpose } from './sheet.js';
import { shortNutLength } from './short-nut-length.js';
import { markStyle } from './strip.js';

/** A coupon, worked out. Scale, bores and posts stand in the file as they are meant; threads and pockets are compensated. */
export interface CouponDesign extends DesignBase {
  readonly part: 'coupon';
  readonly plan: CouponPlan;
  readonly features: CouponFeatures;
  readonly screw?: Screw;
  readonly material: Material;
  readonly printer: Printer;
  readonly calipers: number;
}

const DEFAULT_SPAN = 50;
const DEFAULT_HEIGHT = 40;
const DEFAULT_DIAMETERS = [4, 7, 10, 16];

/**
 * Works a coupon out from its sheet.
 * @throws InputError values that contradict each other
 */
export function designCoupon(sheet: CouponSheet, presets: PresetTexts): CouponDesign {
  const assumptions = new Assumptions();
  const { calipers, material, printer } = workshopOf(sheet, presets, assumptions);
  const screw = sheet.screw && resolveScrew(sheet.screw, calipers, assumptions);
  if (material.name === 'custom')
    throw fault(
      'material',
      'custom',
      'name the preset that is nearest, with your own figures beside it: {preset: pa12, …}',
    );
  const plan = planOf(sheet, printer, assumptions);
  const features = featuresOf(plan);
  if (screw) requireThreadBudget(screw, printer.chordError, features.threads.length);
  return {
    part: 'coupon',
    name: sheet.name,
    plan,
    features,
    ...(screw ? { screw } : {}),
    material,
    printer,
    calipers,
    dimensions: sizesOf(features, material, printer),
    assumptions: assumptions.list,
    limits: sheet.limits ?? {},
    densities: { [material.name]: material.density },
  };
}

function planOf(sheet: CouponSheet, printer: Printer, assumptions: Assumptions): CouponPlan {
  const usual = PURPOSES.filter((one) => one !== 'pockets' && (one !== 'thread' || sheet.screw !== undefined));
  const purposes: readonly Purpose[] = sheet.purposes?.list ?? usual;
  if (!sheet.purposes)
    assumptions.note('purposes', usual.join(', '), sheet.screw ? 'the usual set' : 'the usual set; no screw is given');
  return {
    ...(purposes.includes('scale') ? { scale: scaleOf(sheet, printer, assumptions) } : {}),
    ...(purposes.includes('bores') ? { diameters: diametersOf(sheet, assumptions) } : {}),
    ...(purposes.includes('thread') ? { thread: threadOf(sheet, assumptions) } : {}),
    ...(purposes.includes('pockets') ? { pockets: pocketsOf(sheet, assumptions) } : {}),
  };
}

function scaleOf({ scale = {} }: CouponSheet, { lineWidth }: Printer, assumptions: Assumptions): ScalePlan {
  const room = roomForMarks(markStyle(lineWidth));
  const usual = Math.max(DEFAULT_SPAN, room.span);
  const span = assumptions.or(scale.span, 'scale.span', usual, 'long enough for a tenth of a percent');
  if (span < room.span)
    throw fault('scale.span', `${plain(span)} mm`, `must be at least ${room.span} mm, so that the marks find room`);
  const height = assumptions.or(
    scale.height,
    'scale.height',
    DEFAULT_HEIGHT,
    'a printer’s axial shrink shows over 40 mm; 0 leaves the steps out',
  );
  if (height > 0 && height < 10) throw fault('scale.height', `${plain(height)} mm`, 'must be 0, or at least 10 mm');
  return { span, bar: room.bar, heights: stepHeights(height) };
}

function diametersOf({ bores }: CouponSheet, assumptions: Assumptions): readonly number[] {
  if (!bores)
    assumptions.note(
      'bores',
      DEFAULT_DIAMETERS.join(', '),
      'small holes lose more than large ones; far apart, so that the line holds for larger ones too',
    );
  return bores ?? DEFAULT_DIAMETERS;
}

function threadOf({ thread = {} }: CouponSheet, assumptions: Assumptions): ThreadPlan {
  const or = (key: string, given: number | undefined, value: number, why: string) =>
    assumptions.or(given, `thread.${key}`, value, why);
  return {
    steps: or('steps', thread.steps, 5, 'tight to loose'),
    diametral: or('diametral', thread.diametral, 0.3, 'turns freely by hand'),
    axial: or('axial', thread.axial, 0.1, 'turns freely by hand'),
    step: or('step', thread.step, 0.05, 'what a hand can tell apart'),
    axialStep: or('axial_step', thread.axial_step, 0.03, 'opens along with the diameter'),
  };
}

function pocketsOf({ pockets = {} }: CouponSheet, assumptions: Assumptions): PocketPlan {
  const screw = assumptions.or<FastenerSize>(pockets.screw, 'pockets.screw', 'M3', 'the most common screw');
  const shaft = assumptions.or(pockets.shaft, 'pockets.shaft', 5, 'of a frame 17 motor');
  return {
    screw,
    shaft,
    flat: assumptions.or(pockets.flat, 'pockets.flat', 0.9 * shaft, 'flat half a millimetre deep on 5 mm'),
    steps: assumptions.or(pockets.steps, 'pockets.steps', 3, 'around the usual room'),
    step: assumptions.or(pockets.step, 'pockets.step', 0.05, 'what a hand can tell apart'),
  };
}

/** What is read is meant as it is drawn; ladders are stated as they should come out, and as drawn. */
function sizesOf(
  { reads, threads, pockets }: CouponFeatures,
  material: Material,
  printer: Printer,
): CouponDesign['dimensions'] {
  const { inside } = printSizes(material, printer);
  const drawn = reads.map(({ mark, modelled }): [string, number] => [keyOf(mark), modelled]);
  const tried = pockets.map(({ mark, size }): [string, number] => [keyOf(mark), size]);
  const nuts = threads.map(({ mark, diametral, axial }): [string, Sizes] => [keyOf(mark), { diametral, axial }]);
  return {
    finished: Object.fromEntries([...drawn, ...nuts, ...tried]),
    printed: Object.fromEntries([...drawn, ...tried.map(([key, size]): [string, number] => [key, inside(size)])]),
  };
}

/** Name of a mark's size in the report. */
export function keyOf(mark: string): string {
  return mark.toLowerCase().replaceAll(' ', '_');
}

function requireThreadBudget({ major, minor, pitch, lead }: Screw, chordError: number, nuts: number): void {
  const thread = { major: major.likely, minor: minor.likely, pitch: pitch.likely };
  requireFacetBudget({ thread, lead, length: nuts * shortNutLength(pitch.likely), chordError });
}
