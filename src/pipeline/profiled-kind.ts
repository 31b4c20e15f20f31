import * as z from 'zod';
import { runChecks } from '../judge/run-checks.js';
import { PROFILE_CHECKS } from '../parts/common/profile-checks.js';
import { profileCautions } from '../parts/common/profile-words.js';
import type { DesignBase } from '../parts/part-kind.js';
import { type Profile, resolveProfile } from '../presets/profile.js';
import type { PresetTexts } from '../presets/texts.js';
import { EVEN_IF_WRONG } from '../sheet/fields.js';
import { profileSection } from '../sheet/sections/profile.js';
import { validate } from '../sheet/validate.js';
import { InputError } from '../units/faults.js';
import { plain } from '../units/format.js';
import { chosen, type KnownKind } from './known-kind.js';
import type { Locate } from './locate-faults.js';

type Fields = Readonly<Record<string, unknown>>;

/**
 * A part kind whose sheets may say `profile: NAME` in place of material and printer. What the profile holds is put into
 * the sheet as if it had been typed there; the kind itself knows nothing of it.
 */
export function profiledKind(kind: KnownKind): KnownKind {
  const schema = withProfile(kind.schema);
  if (!schema) return kind;
  return {
    ...kind,
    schema,
    checks: [...kind.checks, ...PROFILE_CHECKS],
    read: (value, locate) => {
      if (!hasProfile(value)) return kind.read(value, locate);
      validate(schema, value, locate);
      const { profile, ...sheet } = value;
      const named = profileSection.parse(profile);
      return {
        design: (presets) => {
          const resolved = resolveProfile(named, presets);
          return designBy(kind, sheet, resolved, { presets, locate });
        },
      };
    },
    runChecks: (design, changes, only) => [
      ...kind.runChecks(design, changes, only),
      ...runChecks(chosen(PROFILE_CHECKS, only), design, changes),
    ],
    particulars: (design) => {
      const told = kind.particulars(design);
      if (!design.profile) return told;
      return { ...told, cautions: [...profileCautions(design.profile), ...told.cautions] };
    },
  };
}

function withProfile(schema: z.ZodType): z.ZodType | undefined {
  if (!(schema instanceof z.ZodObject) || !('material' in schema.shape)) return undefined;
  return schema.safeExtend({ profile: profileSection.optional() }).superRefine((sheet: Fields, context) => {
    if (sheet.profile === undefined) return;
    for (const key of ['material', 'printer']) {
      if (sheet[key] !== undefined)
        context.addIssue({
          code: 'custom',
          path: [key],
          message: 'the profile supplies it: give profile, or material and printer',
        });
    }
  }, EVEN_IF_WRONG);
}

function hasProfile(value: unknown): value is Fields & { readonly profile: unknown } {
  return typeof value === 'object' && value !== null && 'profile' in value && value.profile !== undefined;
}

/** Kinds whose `fit` is that of a thread, which a profile may know. */
const THREADED = ['nut', 'twin-nut'];

function designBy(
  kind: KnownKind,
  sheet: Fields,
  { use, typed, fit }: Profile,
  { presets, locate }: { readonly presets: PresetTexts; readonly locate: Locate },
): DesignBase {
  const liked = fit && sheet.fit === undefined && THREADED.includes(kind.kind) ? fit : undefined;
  const whole = { ...sheet, ...typed, ...(liked ? { fit: liked } : {}) };
  const made = ofProfile(() => kind.read(whole, locate).design(presets), use.name);
  const why = `what the hand likes on the coupon, profile ${use.name}`;
  const words = liked && `${plain(liked.diametral)} mm on the diameter, ${plain(liked.axial)} mm along the axis`;
  return {
    ...made,
    profile: use,
    assumptions: words ? [{ field: 'fit', value: words, why }, ...made.assumptions] : made.assumptions,
  };
}

/** A mistake in what the profile supplies is a mistake of the profile. */
function ofProfile<T>(work: () => T, name: string): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(
      error.faults.map((fault) => {
        if (!/^(material|printer)\b/.test(fault.path)) return fault;
        const { value, allowed } = fault;
        return {
          path: 'profile',
          value: name,
          allowed: `its ${fault.path}: ${value === '' ? '' : `${value}; `}${allowed}`,
        };
      }),
    );
  }
}
