import { cosd, sind } from '../../solid/angles.js';
import { fault, type InputError } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { COUPLING_DEFAULTS as D } from './defaults.js';
import { halfPitch, type JawPlan, jawWidth, slotLevels, slotStart } from './jaws.js';
import type { CouplingSheet } from './sheet.js';

/**
 * Heights that jaws of an outline may have, the best for the lobes first: as given, or as is usual, and lower where
 * those would break. Jaws of a bought half are as high as they are.
 */
export function jawHeights(sheet: CouplingSheet, radius: number): readonly [number, ...number[]] {
  const given = sheet.jaws?.height ?? sheet.insert?.height;
  const of = (share: number) => Math.max(4, Math.round(share * 4 * radius) / 2);
  const usual = given ?? of(D.heightShare);
  const lower = given !== undefined || isBought(sheet) ? 0 : Math.round(2 * (usual - of(D.leastHeightShare)));
  return [usual, ...Array.from({ length: lower }, (_, i) => usual - (i + 1) / 2)];
}

/** Where jaws stand, and how high. */
export interface JawRoom {
  /** of the outline */
  readonly radius: number;
  /** radius that must be free inside them */
  readonly core: number;
  readonly height: number;
}

/** Jaws on an outline; the room inside them grows until they part from one another. */
export function jawsFor(sheet: CouplingSheet, { radius, core, height }: JawRoom): JawPlan {
  const own = sheet.jaws ?? {};
  const count = own.count ?? (radius >= 25 ? 4 : 3);
  const at = (inner: number): JawPlan => {
    const halfSlot = halfSlotOf(count, (inner + radius) / 2, own.width);
    const fillet = own.fillet ?? Math.min(D.fillet.ofHalfLobe * halfSlot, D.fillet.ofHeight * height);
    return {
      count,
      height,
      outer: radius,
      inner,
      halfSlot,
      hollow: own.flank === 'curved' ? D.hollowShare * 2 * halfSlot : 0,
      draft: own.draft ?? 0,
      fillet,
      bevel: own.bevel ?? Math.min(0.5, halfSlot / 4),
      recess: D.recess,
    };
  };
  if (own.inner !== undefined) return at(own.inner / 2);
  const least = Math.max(D.innerShare * radius, core);
  let jaws = at(least);
  for (let inner = least; inner <= 0.78 * radius; inner += 0.25) {
    jaws = at(inner);
    if (isSound(jaws, sheet)) break;
  }
  return jaws;
}

function halfSlotOf(count: number, meanRadius: number, width: number | undefined): number {
  if (width === undefined) return (D.lobeShare * Math.PI * meanRadius) / (2 * count);
  const beta = halfPitch(count);
  return meanRadius * sind(beta) - (width / 2) * cosd(beta);
}

/** Whether jaws stand apart from one another, with some width left at their inner ends. */
export function isSound(jaws: JawPlan, sheet: CouplingSheet): boolean {
  const most = Math.max(
    ...slotLevels(jaws)
      .slice(0, -1)
      .map(([, offset]) => offset),
  );
  const wanted = sheet.jaws?.inner === undefined ? D.leastJaw : 0.4;
  const room = jaws.outer - jaws.inner > 1.5 && jaws.halfSlot > 0.5 && jaws.halfSlot - jaws.fillet > 0.2;
  const high = jaws.height > jaws.fillet + jaws.bevel + 1;
  return (
    room && high && jaws.inner > 1 && jawWidth(jaws, jaws.inner) >= wanted + 2 * most && slotStart(jaws) !== undefined
  );
}

/** Jaws as given, where lobes find room between them. @throws InputError they find none */
export function fitting(jaws: JawPlan, sheet: CouplingSheet): JawPlan {
  if (isSound(jaws, sheet) && jaws.inner < jaws.outer) return jaws;
  throw narrow(jaws, sheet);
}

/** What of the jaws may be changed, as words of the sheet. */
type JawSheet = NonNullable<CouplingSheet['jaws']>;

/** Steps in which a cure is looked for, and how far, mm. */
const CURE = { step: 0.1, most: 30 };

/** Jaws that leave no room for lobes, with what would: each cure was tried. */
export function narrow(jaws: JawPlan, sheet: CouplingSheet): InputError {
  const field = (['inner', 'width', 'count', 'height'] as const).find((key) => sheet.jaws?.[key] !== undefined);
  const cures = curesOf(jaws, sheet);
  const outside = `an outside of ${plain(2 * jaws.outer)} mm`;
  const cure = cures.length > 0 ? `use ${cures.join(', or ')}` : 'change several of them';
  const again = isBought(sheet) ? '; of a bought hub measure outside, jaws.inner and jaws.width again' : '';
  return fault(
    field ? `jaws.${field}` : 'hubs.outside_diameter',
    field ? String(sheet.jaws?.[field]) : `${plain(2 * jaws.outer)} mm`,
    `leaves no ${jaws.count} jaws with lobes between them at ${outside}; ${cure}${again}`,
  );
}

/** Whether one hub at least is not made, for want of its shaft. */
function isBought({ motor, screw, shaft }: CouplingSheet): boolean {
  return (!screw && !shaft) || !motor.shaft;
}

function curesOf(jaws: JawPlan, sheet: CouplingSheet): string[] {
  const { outer, inner, height, count, hollow, fillet, bevel } = jaws;
  const tried = (own: JawSheet, radius = outer) => {
    const changed = { ...sheet, jaws: { ...sheet.jaws, ...own } };
    return isSound(jawsFor(changed, { radius, core: inner, height: jawHeights(changed, radius)[0] }), changed);
  };
  const width = sheet.jaws?.width;
  return [
    ...nearest(2 * inner, ['a smaller jaws.inner', 'a larger jaws.inner'], (at) => tried({ inner: at })),
    ...(width === undefined
      ? []
      : nearest(width, ['narrower jaws (jaws.width', 'wider jaws (jaws.width'], (at) => tried({ width: at }))),
    ...nearest(height, ['lower jaws (jaws.height', 'higher jaws (jaws.height'], (at) => tried({ height: at })),
    ...nearest(2 * outer, ['a smaller outside', 'a larger outside'], (at) => tried({}, at / 2)),
    ...(count > 2 && tried({ count: count - 1 }) ? ['fewer jaws'] : []),
    ...(hollow > 0 && tried({ flank: 'straight' }) ? ['straight flanks'] : []),
    ...(fillet + bevel > 0 && tried({ fillet: 0, bevel: 0 }) ? ['jaws.fillet and jaws.bevel 0'] : []),
  ];
}

/** The nearest value below or above at which jaws are sound, in words; nothing where there is none. */
function nearest(now: number, words: readonly [string, string], sound: (value: number) => boolean): string[] {
  const steps = Array.from({ length: Math.round(CURE.most / CURE.step) }, (_, i) => (i + 1) * CURE.step);
  const found = ([-1, 1] as const).flatMap((way) => {
    const step = steps.find((one) => now + way * one > 0 && sound(now + way * one));
    return step === undefined ? [] : [{ step, at: now + way * step, word: words[way === 1 ? 1 : 0] }];
  });
  if (found.length === 0) return [];
  const { at, word } = found.reduce((a, b) => (b.step < a.step ? b : a));
  const open = word.includes('(');
  return [open ? `${word} ${plain(at, 1)} mm)` : `${word} (${plain(at, 1)} mm)`];
}
