import { describe, expect, it } from 'vitest';
import { sideBySide } from '../../../page/live/engine/compare.js';
import { createEngine } from '../../../page/live/engine/engine.js';
import { forScrew, namedScrews } from '../../../page/live/state/compare.js';
import { compareNamed } from '../../../src/pipeline/compare-named.js';
import { design } from '../../../src/pipeline/design.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';

const TYPED = {
  screws: 'Tr8x2, Tr8x8(P2);5/16-18 UNC',
  from: ' M5 ',
  axis: 'vertical',
  load: '25,5',
  layers: '0,1 0.15, 0.2',
  torque: '0.4 N m',
};

describe('what is typed of screws side by side', () => {
  it('becomes designations and a duty; no screw is no question', () => {
    expect(namedScrews({ load: '25' })).toBeUndefined();
    expect(namedScrews({ screws: ' , ' })).toBeUndefined();
    const named = namedScrews(TYPED)!;
    expect(named.screws).toEqual(['Tr8x2', 'Tr8x8(P2)', '5/16-18 UNC']);
    expect(named.from).toBe('M5');
    expect(compareNamed(named).duty).toMatchObject({
      axis: 'vertical',
      load: 25.5,
      layerHeights: [0.1, 0.15, 0.2],
      motorTorque: 400,
    });
  });

  it('goes on into the sheet of a nut', () => {
    const made = design(forScrew(startSheet('nut'), 'Tr8x8(P2)', TYPED));
    expect(made).toMatchObject({ duty: { axis: 'vertical', load: 25.5, layer_heights: [0.1, 0.15, 0.2] } });
    expect(forScrew(startSheet('nut'), 'Tr8x8(P2)', {})).toBe(
      startSheet('nut').replace('designation: Tr8x2', 'designation: Tr8x8(P2)'),
    );
  });
});

describe('screws side by side on a page', () => {
  it('are the table and the words of the command, a cell a screw', () => {
    const found = sideBySide(namedScrews(TYPED)!);
    expect(found.screws).toHaveLength(3);
    expect(found.rows.every(({ cells }) => cells.length === 3)).toBe(true);
    expect(found.rows.find(({ label }) => label === 'full step, mm')?.cells.slice(0, 2)).toEqual(['0.01', '0.04']);
    expect(found.sections.map(({ title }) => title)).toContain('Tell the controller, in place of M5');
    expect(found.legend[0]).toContain('friction');
    expect(found.foot.join()).toContain('Left out for want of a figure: whirl and column (span)');
  });

  it('are mistakes as data where a name is none', () => {
    const engine = createEngine(() => Promise.reject(new Error('no solid is made')));
    expect(engine.compare({ screws: ['Tx8x2'], sheet: '' })).toMatchObject({
      mistakes: [{ path: 'screws', value: 'Tx8x2', allowed: expect.stringContaining('did you mean Tr8x2?') }],
    });
  });
});
