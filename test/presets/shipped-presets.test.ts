import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { nutSchema } from '../../src/parts/nut/sheet.js';
import { listPresets, PRESET_KINDS } from '../../src/presets/list-presets.js';
import { presetIds, readPreset } from '../../src/presets/read-preset.js';
import { SHIPPED } from '../../src/presets/shipped.js';
import { parseDesignation } from '../../src/standards/threads/designation.js';
import { threadSizes } from '../../src/standards/threads/sizes.js';

describe('shipped presets', () => {
  it('are all sound, and every one is listed', () => {
    const rows = listPresets(SHIPPED);
    const files = Object.keys(SHIPPED).filter((path) => !/^(sheets|results|fleets)\//.test(path));
    expect(rows).toHaveLength(files.length);
    for (const row of rows) {
      expect(row.title).not.toBe('');
      expect(row.source, row.id).not.toBe('');
      expect(row.summary, row.id).not.toBe('');
    }
  });

  it('holds something of each kind', () => {
    for (const kind of PRESET_KINDS) expect(presetIds(kind, SHIPPED).length, kind).toBeGreaterThan(3);
  });
});

const screws = presetIds('screw', SHIPPED).map((id) => ({ ...readPreset('screw', id, SHIPPED).data, id }));
/** What a screw preset says in place of a printer, where no common nozzle prints its nut well. */
const TAPPED = 'pilot-and-tap';

describe('screw presets', () => {
  it.each(screws.map((screw) => [screw.id, screw] as const))('%s agrees with the sizes of its source', (id, screw) => {
    const thread = parseDesignation(screw.designation);
    expect(
      thread.text
        .toLowerCase()
        .replace(/[^a-z0-9.]+/g, '-')
        .replace(/-$/, ''),
    ).toBe(id);
    const sizes = threadSizes(thread);
    const expected = screw.expect!;
    // the source's last printed digit: 0.001 mm, or 0.0001 in
    const half = /in\b/.test(raw(id)) ? 0.00005 * 25.4 + 1e-9 : 0.0005 + 1e-9;
    const near = (ours: number, theirs: number | undefined) =>
      theirs === undefined || expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(half);
    near(thread.major, expected.major);
    near(sizes.pitchDiameter, expected.pitch_diameter);
    near(sizes.nutMinor, expected.nut_minor);
    near(sizes.nutMajor, expected.nut_major);
    near(sizes.screwMinor, expected.screw_minor);
  });

  // layers a pitch, lines of depth, and how far a layer steps out on the flank against a line: h / √(tan²α + tan²λ);
  // depth of overlap 0.5 P, or 5/8 of 0.866 P for a V. Common practice: no caution from 10 layers and 2 lines on.
  it.each(screws.map((screw) => [screw.id, screw] as const))('%s names a printer that prints it well', (_, screw) => {
    const thread = parseDesignation(screw.designation);
    const depth = thread.pitch * (thread.form === 'metric-v' ? 0.541266 : 0.5);
    const tan = Math.tan((thread.flankAngle * Math.PI) / 180);
    const climb = thread.lead / (Math.PI * thread.pitchDiameter);
    const good = common().filter(
      ({ layer, line }) =>
        thread.pitch / layer >= 12 && depth / line >= 2 && layer / Math.hypot(tan, climb) <= line + 1e-9,
    );
    expect(screw.suits).toBe(good[0]?.id ?? TAPPED);
  });

  it('leaves small V threads to the tap', () => {
    const tapped = screws.filter(({ suits }) => suits === TAPPED).map(({ id }) => id);
    expect(tapped).toEqual(['m4', 'm5', 'm6']);
  });
});

/** Settings of the two common fine nozzles, the wider nozzle and the higher layer first. */
function common() {
  return presetIds('printer', SHIPPED)
    .map((id) => readPreset('printer', id, SHIPPED))
    .map(({ id, data }) => ({ id, nozzle: data.nozzle!, layer: data.layer!, line: data.line_width! }))
    .filter(({ nozzle }) => nozzle <= 0.4)
    .sort((a, b) => b.nozzle - a.nozzle || b.layer - a.layer);
}

function raw(id: string): string {
  return JSON.stringify(parse(SHIPPED[`screws/${id}.yaml`]!).expect);
}

function pasted(id: string) {
  const { body, flange, holes } = readPreset('flange', id, SHIPPED).data;
  return { part: 'nut', name: 'x', screw: 'Tr8x2', body, flange, ...(holes ? { holes } : {}) };
}

describe('flange presets', () => {
  it.each(presetIds('flange', SHIPPED))('%s can be pasted into a sheet', (id) => {
    expect(nutSchema.safeParse(pasted(id)).error?.issues ?? []).toEqual([]);
  });

  // holes stand inside the flange, clear of the body
  it.each(presetIds('flange', SHIPPED))('%s has room for its holes', (id) => {
    const { body, flange, holes } = nutSchema.parse(pasted(id));
    const hole = holes!.diameter!.value;
    expect(holes!.circle!.value - hole).toBeGreaterThan(body.diameter!);
    expect(holes!.circle!.value + hole).toBeLessThan(flange!.diameter!);
  });
});

describe('motor presets', () => {
  // NEMA ICS 16 table: bolt circle of 0.905 in · √2, 43.81, 66.67, 98.42 mm; it is √2 × the bolt square
  it.each([
    ['frame-11', 32.51, 22, 5],
    ['frame-17', 43.81, 22, 5],
    ['frame-23', 66.67, 38.1, 6.35],
    ['frame-34', 98.42, 73.03, 9.525],
  ])('%s has the face and shaft of the table', (id, circle, pilot, diameter) => {
    const { bolt_square, ...data } = readPreset('motor', id, SHIPPED).data;
    expect(Math.abs(bolt_square * Math.SQRT2 - circle)).toBeLessThan(0.035);
    expect(data).toMatchObject({ pilot, shaft: { diameter } });
  });

  it('give torque in N·mm', () => {
    expect(readPreset('motor', 'frame-17', SHIPPED).data.torque).toEqual({ least: 200, most: 600 });
  });
});
