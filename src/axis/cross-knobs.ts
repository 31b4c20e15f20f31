import { type Changes, isFigure, type Knob } from '../pipeline/advice/knob.js';
import { presetIds } from '../presets/read-preset.js';
import type { PresetTexts } from '../presets/texts.js';
import { DEEP_GROOVE_DESIGNATIONS, deepGroove } from '../standards/bearings/deep-groove.js';
import type { AxisDesign, AxisPart } from './axis-design.js';

/** What may be changed for a check across the parts: single fields, and fields that go together. */
export interface CrossCures {
  readonly knobs: readonly Knob[];
  readonly ways: readonly Changes[];
}

/** Fields of the axis and of its parts that a check across them hangs on, as far as a person is free to change them. */
export function crossCures(check: string, axis: AxisDesign, presets: PresetTexts): CrossCures {
  const cures: Readonly<Record<string, () => Partial<CrossCures>>> = {
    'axis-travel': () => ({
      knobs: [...less(axis, 'travel'), ...screwLength(axis), ...ofParts(axis, 'body.length')],
    }),
    'axis-screw-length': () => ({ knobs: [...screwLength(axis), ...less(axis, 'travel')] }),
    'axis-shaft-room': () => ({ knobs: ofParts(axis, 'motor_hub.length', 'plate.thickness', 'length') }),
    'axis-span': () => ({ knobs: dutyFigure(axis, 'span', 1) }),
    'axis-feed': () => ({ knobs: dutyFigure(axis, 'feed', 0.5) }),
    'axis-whirl': () => ({ knobs: dutyFigure(axis, 'feed', 0.5), ways: roles(axis) }),
    'axis-column': () => ({ ways: roles(axis) }),
    'axis-locating': () => ({ ways: [...roles(axis), ...bearings(axis)] }),
    'axis-heat': () => ({ knobs: materials(axis, presets) }),
  };
  const { knobs = [], ways = [] } = cures[check]?.() ?? {};
  return { knobs, ways };
}

function less({ sheet: { lengths = {} } }: AxisDesign, field: 'travel'): Knob[] {
  const now = lengths[field];
  return now === undefined ? [] : [{ path: `lengths.${field}`, least: 1, most: now, step: 1, grain: 5, now }];
}

function screwLength({ sheet: { lengths = {} } }: AxisDesign): Knob[] {
  const now = lengths.screw?.value;
  return now === undefined ? [] : [{ path: 'lengths.screw', least: now, most: 6000, step: 1, grain: 10, now }];
}

function dutyFigure({ sheet: { duty = {} } }: AxisDesign, field: 'feed' | 'span', step: number): Knob[] {
  const now = duty[field];
  return now === undefined ? [] : [{ path: `duty.${field}`, least: step, most: 6000, step, grain: step, now }];
}

/** Fields of these names that parts let themselves be changed in, in the section of the part. */
function ofParts({ parts }: AxisDesign, ...paths: readonly string[]): Knob[] {
  return parts.flatMap((part) =>
    part.kind
      .tunables(part.design)
      .filter((knob) => isFigure(knob) && paths.includes(knob.path))
      .map((knob) => ({ ...knob, path: inSection(part, knob.path) })),
  );
}

/** What else the far end may do. */
function roles({ parts, screw }: AxisDesign): Changes[] {
  return parts.flatMap((part): Changes[] => {
    const now = part.facts.holder?.role;
    if (now === undefined) return [];
    const others = (['free', 'guiding'] as const).filter((role) => role !== now);
    return [
      ...others.map((role): Changes => ({ [inSection(part, 'role')]: role })),
      ...(now === 'locating' ? [] : locatingHolder(part, screw)),
    ];
  });
}

/** A holder that locates has a bearing, and wants it held on both sides. */
function locatingHolder(part: AxisPart, { major }: AxisDesign['screw']): Changes[] {
  const bore = Math.ceil(major.most - 1e-9);
  const bearing =
    part.own.bearing === undefined
      ? DEEP_GROOVE_DESIGNATIONS.find((one) => one.startsWith('60') && deepGroove(one).bore === bore)
      : '';
  if (bearing === undefined) return [];
  const carries = { [inSection(part, 'role')]: 'locating', [inSection(part, 'held_by')]: 'plate' };
  return [bearing === '' ? carries : { ...carries, [inSection(part, 'bearing')]: bearing }];
}

/** What else may carry the screw at the motor. */
function bearings({ parts, thrustBearing }: AxisDesign): Changes[] {
  const couplings = parts.filter(({ kind }) => kind.kind === 'coupling');
  const collars = parts.some(({ facts }) => facts.collar);
  return [
    ...couplings.map(
      (part): Changes => ({ [inSection(part, 'insert.pad')]: part.facts.joint?.kind === 'disc' ? 'none' : 'disc' }),
    ),
    ...(thrustBearing && !collars ? [{ thrust_bearing: 'no' }] : []),
  ];
}

function materials({ parts }: AxisDesign, presets: PresetTexts): Knob[] {
  const words = presetIds('material', presets);
  return parts
    .filter(({ facts: { isAtMotor } }) => isAtMotor)
    .flatMap((part): Knob[] => {
      const now = part.sheet.material;
      return typeof now === 'string' ? [{ path: inSection(part, 'material'), words, now, grains: 8 }] : [];
    });
}

function inSection({ role }: Pick<AxisPart, 'role'>, path: string): string {
  return `parts.${role}.${path}`;
}
