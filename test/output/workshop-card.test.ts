import { describe, expect, it } from 'vitest';
import { makePart } from '../../src/pipeline/make.js';
import { nutSheet } from '../support/nut-sheets.js';

async function cardOf(changes: Record<string, unknown> = {}): Promise<string> {
  const { files } = await makePart(nutSheet(changes), { formats: ['page'] });
  const page = new TextDecoder().decode(files.find(({ name }) => name === 'report.html')!.bytes);
  const from = page.indexOf('<ol class="card">');
  return page.slice(from, page.indexOf('</ol>', from));
}

describe('the workshop card of a nut', () => {
  it('says when it is worn out, that it drops its axis, what a solid print is and where the axis must stop', async () => {
    const card = await cardOf();
    // a quarter of a tooth of 2 − 1.1 mm
    expect(card).toContain('its play has grown by 0.225 mm, a quarter of its tooth');
    expect(card).toContain('drops the axis');
    expect(card).toContain('break it by hand');
    expect(card).toContain('twice the stall force');
    expect(card).toContain('plain grease');
    expect(card).not.toContain('cracks under stress');
  });

  it('keeps oil, solvent and threadlocker off plastics that crack', async () => {
    const card = await cardOf({
      material: 'pc',
      duty: { axis: 'horizontal', motor: undefined, load: 10, grease: 'dry' },
    });
    expect(card).toContain('pc cracks under stress: no threadlocker, solvent, spray or oil near it');
    expect(card).toContain('silicone or PFPE grease');
    expect(card).not.toContain('plain grease');
    expect(card).not.toContain('drops the axis');
  });
});
