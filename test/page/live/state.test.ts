import { describe, expect, it } from 'vitest';
import { linkOf, sheetOf } from '../../../page/live/state/link.js';
import {
  accepting,
  startsWithScrew,
  withCure,
  withField,
  withProfile,
  withScrew,
} from '../../../page/live/state/state.js';

const SHEET = 'part: nut # kind\nscrew: M8\nfit: running\nbody: {diameter: 14, length: 16}\n';

describe('what a person tells', () => {
  it('changes one field; a decimal comma is a point', () => {
    expect(withField(SHEET, ['body', 'diameter'], '14,2')).toBe(SHEET.replace('14,', '14.2,'));
    expect(withField(SHEET, ['body', 'diameter'], '14,2 mm')).toBe(SHEET.replace('14,', '14.2 mm,'));
  });

  it('takes a cleared field back as not told, and all other letters stay', () => {
    const cleared = withField(`${SHEET}duty:\n  load: 25 N # weighed\n`, ['duty', 'load'], '');
    expect(cleared).toBe(`${SHEET}duty:\n  load:  # weighed\n`);
    expect(withField(cleared, ['duty', 'load'], '30')).toMatch(/load: 30 +# weighed/);
  });

  it('applies a cure, whose class stays beside the figure', () => {
    expect(withCure(SHEET, { 'fit.axial': 0.2, 'body.length': 18 })).toBe(
      'part: nut # kind\nscrew: M8\nfit: {class: running, axial: 0.2}\nbody: {diameter: 14, length: 18}\n',
    );
  });

  it('begins with the screw where the kind does', () => {
    expect(startsWithScrew(SHEET)).toBe(true);
    expect(startsWithScrew('name: a\npart: sleeve\n')).toBe(false);
    expect(startsWithScrew('')).toBe(false);
  });

  it('takes the screw that was named', () => {
    expect(withScrew(SHEET, 'screw:\n  designation: Tr8x2\n')).toBe(
      SHEET.replace('screw: M8', 'screw:\n  designation: Tr8x2'),
    );
  });

  it('is made by a profile in place of material and printer', () => {
    const told = 'part: nut\nmaterial: petg # blue\nprinter: {nozzle: 0.4 mm}\nname: a\n';
    const made = withProfile(told, 'mill');
    expect(made).toBe('part: nut\nprofile: mill\n# printer: as the profile has it\nname: a\n');
    expect(withProfile(made, 'other')).toBe(made.replace('mill', 'other'));
    expect(withProfile('part: nut\n', 'mill')).toBe('part: nut\nprofile: mill\n');
  });

  it('takes a check all the same with its last reason, and takes that back', () => {
    const once = accepting([], 'wall', ' thin but enough ');
    expect(once).toEqual([{ check: 'wall', reason: 'thin but enough' }]);
    expect(accepting(once, 'wall', 'tried it')).toEqual([{ check: 'wall', reason: 'tried it' }]);
    expect(accepting(once, 'wall', ' ')).toEqual([]);
  });
});

describe('the address', () => {
  it('holds a sheet and gives it back', async () => {
    const link = await linkOf(`${SHEET}# α ± ⌀\n`);
    expect(link).toMatch(/^#1\.[\w-]+$/);
    expect(await sheetOf(link)).toEqual({ sheet: `${SHEET}# α ± ⌀\n` });
  });

  it('is empty for a sheet that is too long', async () => {
    expect(await linkOf('x'.repeat(50_000))).toBe('');
  });

  it.each(['', '#'])('%j holds none', async (hash) => {
    expect(await sheetOf(hash)).toBeUndefined();
  });

  it.each([
    ['#1.', /cut short/],
    ['#1.!!', /cut short/],
    ['#1.AAAA', /cut short/],
    ['#1.%00', /cut short/],
    ['#2.abc', /newer/],
  ])('says why %j cannot be read', async (hash, why) => {
    expect(await sheetOf(hash)).toEqual({ why: expect.stringMatching(why) });
  });

  it('gives none where it was cut short, or would unpack without end', async () => {
    const link = await linkOf(SHEET);
    expect(await sheetOf(link.slice(0, -9))).toHaveProperty('why');
    const bomb = new Blob(['0'.repeat(5_000_000)]).stream().pipeThrough(new CompressionStream('deflate-raw'));
    const bytes = new Uint8Array(await new Response(bomb).arrayBuffer());
    const letters = Buffer.from(bytes).toString('base64url');
    expect(await sheetOf(`#1.${letters}`)).toHaveProperty('why');
  });
});
