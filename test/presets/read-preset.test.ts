import { describe, expect, it } from 'vitest';
import { listPresets, presetKind } from '../../src/presets/list-presets.js';
import { presetIds, readPreset } from '../../src/presets/read-preset.js';
import { InputError } from '../../src/units/faults.js';

const MOTOR = `id: frame-9
kind: motor
title: a small motor
bolt_square: 20 mm
pilot: 16 mm
pilot_height: 1.5 mm
body: 20 mm
face: {screw: M2, thread_depth: 3 mm}
shaft: {diameter: 4 mm}
torque: {least: 0.05 N m, most: 0.1 N m}
provenance:
  '*': {type: assumption, source: common-practice, where: usual}
`;

function refused(text: string): string {
  try {
    readPreset('motor', 'frame-9', { 'motors/frame-9.yaml': text });
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  throw new Error('nothing was refused');
}

describe('readPreset', () => {
  it('reads a preset in base units, with its figures as typed', () => {
    const preset = readPreset('motor', 'frame-9', { 'motors/frame-9.yaml': MOTOR });
    expect(preset.data).toMatchObject({ bolt_square: 20, shaft: { diameter: 4 }, torque: { least: 50, most: 100 } });
    expect(preset.figures[6]).toEqual({ path: 'shaft.diameter', typed: '4 mm' });
  });

  it('parses no file but the one it needs', () => {
    const presets = { 'motors/frame-9.yaml': MOTOR, 'motors/frame-8.yaml': '{{{', 'sheets/demo.yaml': '{{{' };
    expect(readPreset('motor', 'frame-9', presets).id).toBe('frame-9');
    expect(presetIds('motor', presets)).toEqual(['frame-8', 'frame-9']);
  });

  it.each([
    [
      'a number without provenance',
      MOTOR.replace("'*'", 'pilot'),
      /motors\/frame-9.yaml:4:14 bolt_square: 20 mm; needs a provenance/,
    ],
    [
      'an unknown source',
      MOTOR.replace('common-practice', 'hearsay'),
      /frame-9.yaml:12:35 provenance.*source: hearsay; must be a key/,
    ],
    ['an unknown origin', MOTOR.replace('type: assumption', 'type: guess'), /must be one of standard, datasheet/],
    [
      'a datasheet figure without tolerance',
      MOTOR.replace('type: assumption', 'type: datasheet'),
      /bolt_square: 20 mm; read off .* needs a ±/,
    ],
    [
      'a provenance of nothing',
      `${MOTOR}  flange: {type: derived, source: derived, where: x}\n`,
      /provenance.flange: covers no figure/,
    ],
    ['another id', MOTOR.replace('id: frame-9', 'id: frame-8'), /:1:5 id: frame-8; must be frame-9/],
    ['another kind', MOTOR.replace('kind: motor', 'kind: screw'), /kind: screw; must be motor/],
    ['an unknown key', MOTOR.replace('pilot:', 'pilott:'), /pilott: unknown field; did you mean pilot\?/],
    ['no provenance', MOTOR.split('provenance')[0]!, /provenance: is missing/],
    ['no YAML', '{{{', /frame-9.yaml:1:\d+: not YAML/],
    ['nothing', '', /^motors\/frame-9.yaml: the sheet is empty/],
  ])('refuses %s', (_, text, message) => {
    expect(refused(text)).toMatch(message);
  });

  it('takes a tolerance, or a ±, for measured figures, whose source is what was measured', () => {
    const measured = MOTOR.replace(
      'type: assumption, source: common-practice',
      'type: measured, source: one motor, tolerance: 0.03 mm',
    );
    expect(readPreset('motor', 'frame-9', { 'motors/frame-9.yaml': measured }).provenance['*']!.source).toBe(
      'one motor',
    );
  });

  it('wants every figure of a material', () => {
    const text =
      "id: x\nkind: material\ntitle: x\ndensity: 1\nprovenance: {'*': {type: derived, source: derived, where: x}}\n";
    expect(() => readPreset('material', 'x', { 'materials/x.yaml': text })).toThrow(/shrink.plane: is missing/);
  });
});

describe('listPresets', () => {
  it('shows figures and sources, and leaves sheets alone', () => {
    expect(listPresets({ 'motors/frame-9.yaml': MOTOR, 'sheets/demo.yaml': '{{{' })).toEqual([
      {
        kind: 'motor',
        example: 'motor: frame-9',
        id: 'frame-9',
        title: 'a small motor',
        where:
          'in a coupling, sleeve, collar, motor plate or axis, and for a kind or machine of a fleet; machine: NAME in a motor plate for what was made for it',
        summary:
          'bolt_square 20 mm, pilot 16 mm, pilot_height 1.5 mm, body 20 mm, face.screw M2, face.thread_depth 3 mm, shaft.diameter 4 mm, torque.least 0.05 N m, torque.most 0.1 N m',
        source: 'common-practice',
      },
    ]);
  });

  it('knows a kind by either name', () => {
    expect(presetKind('materials')).toBe('material');
    expect(presetKind('motor')).toBe('motor');
    expect(presetKind('sheets')).toBeUndefined();
  });
});
