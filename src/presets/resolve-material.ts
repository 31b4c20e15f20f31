import type { HeatLoss } from '../mechanics/strength/plastic.js';
import type { Assumptions } from '../sheet/assumptions.js';
import type { MaterialSheet } from '../sheet/sections/material.js';
import { plain } from '../units/format.js';
import { halfWidth, type Measured, plusMinus } from '../units/measured.js';
import type { Quantity } from '../units/quantity.js';
import type { PresetData } from './kinds.js';
import type { Material } from './material.js';
import { readPreset } from './read-preset.js';
import type { PresetTexts } from './texts.js';
import { LEAST_STRAIN, untoldSliding, untoldStrength } from './untold-strength.js';

/** The material of a part whose sheet names none. */
export const DEFAULT_MATERIAL = 'pa12';

/**
 * The material of a part: a preset, a preset with some figures replaced, or figures of one's own. What the sheet
 * does not give comes from the default material, and is listed. A shrink without ± keeps the spread of the preset.
 *
 * @throws InputError no preset of this name (at `material`), or a faulty preset file
 */
export function resolveMaterial(
  sheet: MaterialSheet | undefined,
  presets: PresetTexts,
  assumptions: Assumptions,
): Material {
  const { preset: named, ...own } = sheet ?? {};
  const changed = Object.values(own).some((figure) => figure !== undefined);
  if (named === undefined && changed) {
    const custom = merged('custom', own, materialPreset(DEFAULT_MATERIAL, presets, 'material'), assumptions, true);
    return isTold(own) ? custom : { ...custom, unnamed: true };
  }
  const why = 'no material given; slides well and keeps its size';
  const name = assumptions.or(named, 'material', DEFAULT_MATERIAL, why);
  const field = changed ? 'material.preset' : 'material';
  const base = materialPreset(name, presets, field);
  return merged(base.name, own, base, assumptions, false);
}

type Figures = Omit<MaterialSheet, 'preset'>;

/** Figures that tell one plastic from another, as far as heat and load go. */
const TELLING: readonly (keyof Figures)[] = ['softening', 'heat', 'tensile'];

/** Whether a plastic of the sheet's own is told from any other; of one that is not, checks ask. */
function isTold(own: Figures): boolean {
  return TELLING.every((key) => own[key] !== undefined);
}

function materialPreset(name: string, presets: PresetTexts, field: string): Material {
  const { id, data } = readPreset('material', name, presets, field);
  return toMaterial(id, data);
}

/** A preset is read only if it holds every figure that is needed. */
function toMaterial(name: string, data: PresetData<'material'>): Material {
  return {
    name,
    shrink: { plane: bounds(data.shrink!.plane!), axial: bounds(data.shrink!.axial!) },
    density: data.density!,
    softening: data.softening!,
    tensile: data.tensile!,
    tensileAcross: data.tensile_across!,
    shear: data.shear!,
    ...(data.bearing === undefined ? {} : { bearing: data.bearing }),
    compressive: data.compressive!,
    modulus: data.modulus!,
    pressureLimit: data.pressure_limit!,
    pressureCap: data.pressure_cap!,
    pvLimit: data.pv_limit!,
    speedLimit: data.speed_limit!,
    heatCapacity: data.heat_capacity!,
    stressCracks: data.stress_cracks === undefined ? data.heat!.glass !== undefined : data.stress_cracks === 'yes',
    shares: { hour: data.shares!.hour!, thousandHours: data.shares!.thousand_hours!, years: data.creep_share! },
    heat: heatLoss(data.heat!)!,
    standingLimit: data.standing_limit!,
    creep: { hour: data.creep!.hour!, exponent: data.creep!.exponent!, strain: data.creep!.strain! },
    stiffness: STIFFNESS_ROWS.map(([temperature, key]) => [temperature, data.stiffness![key]!] as const),
    ...(data.wear === undefined ? {} : { wear: data.wear }),
    moistureGrowth: data.moisture_growth!,
  };
}

/** Temperatures at which a stiffness is stated, with its key. */
const STIFFNESS_ROWS = [
  [40, 'at_40'],
  [60, 'at_60'],
  [80, 'at_80'],
  [100, 'at_100'],
] as const;

/** How heat weakens it, where all of that is given. */
function heatLoss(heat: NonNullable<Figures['heat']>): HeatLoss | undefined {
  if (heat.glass !== undefined) return { glass: heat.glass };
  const { standing, moment } = heat;
  return standing === undefined || moment === undefined ? undefined : { standing, moment };
}

/** Figures of sliding and standing, by their keys in a sheet. */
const SLIDES = {
  pressure_limit: 'pressureLimit',
  pressure_cap: 'pressureCap',
  pv_limit: 'pvLimit',
  speed_limit: 'speedLimit',
  standing_limit: 'standingLimit',
} as const;

/** Own figures before those of `base`; of a plastic of the sheet's own every figure taken from there is listed. */
function merged(name: string, own: Figures, base: Material, notes: Assumptions, isOwn: boolean): Material {
  const assumptions = isOwn ? notes : undefined;
  const take = (key: string, figure: number | undefined, other: number): number => {
    if (figure === undefined)
      assumptions?.note(`material.${key}`, figureText(key, other), `as ${base.name}; not given`);
    return figure ?? other;
  };
  const tensile = take('tensile', own.tensile, base.tensile);
  const untold = untoldStrength(base, tensile, isOwn);
  const least = (key: string, figure: number | undefined, other: number, why: string): number => {
    const isChanged = isOwn || tensile < base.tensile;
    if (figure === undefined && isChanged) notes.note(`material.${key}`, figureText(key, other), why);
    return figure ?? other;
  };
  const slides = isOwn && isTold(own) ? untoldSliding(base, own.heat?.glass) : undefined;
  const slide = (key: 'pressure_limit' | 'pressure_cap' | 'pv_limit' | 'speed_limit' | 'standing_limit') => {
    const of = SLIDES[key];
    return slides && slides[of] < base[of]
      ? least(key, own[key], slides[of], 'the least that is usual; not given')
      : take(key, own[key], base[of]);
  };
  const shrink = (key: 'plane' | 'axial'): Measured => {
    const typed = own.shrink?.[key];
    if (typed === undefined)
      assumptions?.note(`material.shrink.${key}`, shrinkText(base.shrink[key]), `as ${base.name}; not given`);
    else if (typed.half === undefined) noteSpread(key, base, assumptions);
    return typed === undefined ? base.shrink[key] : plusMinus(typed.value, typed.half ?? halfWidth(base.shrink[key]));
  };
  const wear = own.wear ?? base.wear;
  const bearing = own.bearing ?? base.bearing;
  return {
    name,
    shrink: { plane: shrink('plane'), axial: shrink('axial') },
    density: take('density', own.density, base.density),
    softening: take('softening', own.softening, base.softening),
    tensile,
    tensileAcross: least('tensile_across', own.tensile_across, untold.tensileAcross, untold.why),
    shear: least('shear', own.shear, untold.shear, untold.why),
    ...(bearing === undefined ? {} : { bearing }),
    compressive: take('compressive', own.compressive, base.compressive),
    modulus: take('modulus', own.modulus, base.modulus),
    pressureLimit: slide('pressure_limit'),
    pressureCap: slide('pressure_cap'),
    pvLimit: slide('pv_limit'),
    speedLimit: slide('speed_limit'),
    heatCapacity: take('heat_capacity', own.heat_capacity, base.heatCapacity),
    stressCracks: takeCracks(own, base, assumptions),
    shares: {
      hour: take('shares.hour', own.shares?.hour, base.shares.hour),
      thousandHours: take('shares.thousand_hours', own.shares?.thousand_hours, base.shares.thousandHours),
      years: take('creep_share', own.creep_share, base.shares.years),
    },
    heat: takeHeat(own.heat, base, assumptions),
    standingLimit: slide('standing_limit'),
    creep: {
      hour: take('creep.hour', own.creep?.hour, base.creep.hour),
      exponent: take('creep.exponent', own.creep?.exponent, base.creep.exponent),
      strain: own.creep?.strain ?? takeStrain(base, assumptions),
    },
    stiffness: STIFFNESS_ROWS.map(([temperature, key], i) => {
      const share = take(`stiffness.${key}`, own.stiffness?.[key], base.stiffness[i]![1]);
      return [temperature, share] as const;
    }),
    ...(wear === undefined ? {} : { wear }),
    moistureGrowth: take('moisture_growth', own.moisture_growth, base.moistureGrowth),
  };
}

/** The strain that a plastic of the sheet's own takes for good, where that is not given. */
function takeStrain(base: Material, assumptions: Assumptions | undefined): number {
  if (!assumptions) return base.creep.strain;
  assumptions.note('material.creep.strain', percent(LEAST_STRAIN), 'the least that is usual; not given');
  return LEAST_STRAIN;
}

/** A glass of one's own is taken to crack where nothing is said of it. */
function takeCracks(own: Figures, base: Material, assumptions: Assumptions | undefined): boolean {
  if (own.stress_cracks !== undefined) return own.stress_cracks === 'yes';
  const cracks = base.stressCracks || own.heat?.glass !== undefined;
  assumptions?.note('material.stress_cracks', cracks ? 'yes' : 'no', cracks ? 'as a glass may' : `as ${base.name}`);
  return cracks;
}

function takeHeat(own: Figures['heat'], base: Material, assumptions: Assumptions | undefined): HeatLoss {
  const given = own && heatLoss(own);
  if (given === undefined) assumptions?.note('material.heat', heatText(base.heat), `as ${base.name}; not given`);
  return given ?? base.heat;
}

function heatText(heat: HeatLoss): string {
  return 'glass' in heat ? `glass ${plain(heat.glass, 0)} C` : `standing ${heat.standing}, moment ${heat.moment}`;
}

function noteSpread(key: 'plane' | 'axial', base: Material, assumptions: Assumptions | undefined): void {
  const half = halfWidth(base.shrink[key]);
  assumptions?.note(`material.shrink.${key}`, `± ${percent(half)}`, `spread as ${base.name}; the sheet gives no ±`);
}

function bounds(figure: Quantity): Measured {
  return plusMinus(figure.value, figure.half ?? 0);
}

const SHARES = new Set([
  'creep_share',
  'moisture_growth',
  'shares.hour',
  'shares.thousand_hours',
  'creep.hour',
  'creep.strain',
]);

function figureText(key: string, value: number): string | number {
  return SHARES.has(key) || key.startsWith('stiffness.') ? percent(value) : value;
}

function shrinkText(value: Measured): string {
  return `${percent(value.likely)} ± ${percent(halfWidth(value))}`;
}

function percent(fraction: number): string {
  return `${plain(fraction * 100)} %`;
}
