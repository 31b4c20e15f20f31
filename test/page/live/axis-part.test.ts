import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { writtenBack } from '../../../page/live/state/axis-part.js';
import { withField } from '../../../page/live/state/state.js';
import { designAxis } from '../../../src/axis/design.js';
import { AXIS_TEXT } from '../../support/axis-sheets.js';

const openedOf = (role: string) => stringify(designAxis(AXIS_TEXT).parts.find((part) => part.role === role)!.sheet);
const nut = { axis: AXIS_TEXT, role: 'nut', opened: openedOf('nut') };
const partOf = (axis: string) => designAxis(axis).parts.find(({ role }) => role === 'nut')!.sheet;

describe('a part that was opened from an axis', () => {
  it('leaves the axis as it was where nothing was changed', () => {
    expect(writtenBack(nut, nut.opened)).toEqual({ axis: AXIS_TEXT, left: [] });
  });

  it('puts what was changed into its section, remarks and all else of the axis untouched', () => {
    const changed = withField(withField(nut.opened, ['body', 'length'], '22 mm'), ['fit', 'axial'], '0.2 mm');
    const { axis, left } = writtenBack(nut, changed);
    expect(left).toEqual([]);
    expect(axis).toContain('# A print shop');
    expect(axis).toContain('body: {shape: round, diameter: 18 mm, length: 22 mm}');
    expect(partOf(axis)).toMatchObject({ body: { length: '22 mm' }, fit: { class: 'running', axial: '0.2 mm' } });
    // every other line stands
    const lines = AXIS_TEXT.split('\n').filter((line) => !/^ {4}(body|fit):/.test(line));
    expect(axis.split('\n')).toEqual(expect.arrayContaining(lines.slice(0, -8)));
  });

  it('goes before what the axis says of all, for this part alone', () => {
    const { axis } = writtenBack(nut, withField(nut.opened, ['duty', 'temperature'], '40 C'));
    const parts = designAxis(axis).parts.map(({ role, sheet }) => [
      role,
      (sheet.duty as { temperature: string }).temperature,
    ]);
    expect(parts).toEqual([
      ['nut', '40 C'],
      ['coupling', '26 C'],
      ['end-holder', '26 C'],
    ]);
  });

  it('says what it cannot put there: places of holes, and a sheet that cannot be read', () => {
    const holes = nut.opened.replace(/^holes:\n(?: .*\n)+/m, 'holes: {at: [[1, 2], [3, 4]], screw: M3}\n');
    expect(holes).not.toBe(nut.opened);
    expect(writtenBack(nut, holes).left).toContain('holes.at');
    expect(writtenBack(nut, 'part: [')).toEqual({ axis: AXIS_TEXT, left: ['nut'] });
  });

  it('takes for this part what was blanked, though the axis says it for all', () => {
    const { axis, left } = writtenBack(nut, withField(nut.opened, ['duty', 'temperature'], ''));
    expect(left).toEqual([]);
    expect(partOf(axis).duty).not.toHaveProperty('temperature');
    const others = designAxis(axis).parts.filter(({ role }) => role !== 'nut');
    expect(others.map(({ sheet }) => (sheet.duty as { temperature: string }).temperature)).toEqual(['26 C', '26 C']);
  });

  it('takes a section out as a whole: one that must have its fields is not left without them', () => {
    const caught = AXIS_TEXT.replace(/^ {4}fit: running$/m, '    fit: running\n    mark: {text: UP, style: engraved}');
    const opened = stringify(designAxis(caught).parts.find(({ role }) => role === 'nut')!.sheet);
    expect(opened).toContain('mark:');
    const gone = opened.replace(/^mark:\n(?: .*\n)+/m, '');
    const { axis, left } = writtenBack({ axis: caught, role: 'nut', opened }, gone);
    expect(left).toEqual([]);
    expect(partOf(axis).mark ?? undefined).toBeUndefined();
    expect(() => designAxis(axis)).not.toThrow();
  });
});
