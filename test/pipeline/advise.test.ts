import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { check, design } from '../../src/index.js';
import { advise } from '../../src/pipeline/advise.js';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import {
  adviceOn,
  CURABLE,
  expectBrought,
  expectCured,
  expectHopeless,
  HOPELESS,
  LONG,
  OTHERS,
  pasted,
  READ,
} from '../support/advice-cases.js';
import { call, callFolder } from '../support/call.js';
import { couplingSheet } from '../support/coupling-sheets.js';
import { nutSheet } from '../support/nut-sheets.js';

describe('advice', () => {
  it.each(CURABLE)('%s: the printed lines of %j end the fail', expectCured);

  it.each(OTHERS)('%s, %s: the printed lines of %j bring it there', (_, id, sheet) => expectBrought(id, sheet));

  it('names a rounder foot of a jaw among what keeps it whole', () => {
    const sheet = couplingSheet({
      hubs: { outside_diameter: 29 },
      jaws: { fillet: 0.6, height: 7.5, width: 6.3 },
    });
    const { cures } = adviceOn(sheet).checks.find((row) => row.check === 'jaw-bending')!;
    expect(cures.map(({ set }) => Object.keys(set))).toContainEqual(['jaws.fillet']);
  });

  it('gives the whole sheet of another part that makes it good', () => {
    const { checks } = adviceOn(nutSheet({ carriage: { bore: 13 }, duty: { motor: undefined } }));
    const { another = [] } = checks.find((row) => row.check === 'mount-bore')!;
    expect(another[0]).toBe('part: adapter');
    expect(check(design(another.join('\n'))).verdict).not.toBe('fail');
  });

  it.each(HOPELESS)('%s: says why nothing cures %j', expectHopeless);

  it('names nozzles and layers that stand on the list of presets', () => {
    // 0.6 mm nozzles print layers of 0.2 and 0.3 mm on that list
    const { checks, together } = adviceOn(nutSheet({ printer: { nozzle: 0.6, layer: 0.4 } }));
    const set = [...checks.flatMap(({ cures }) => cures), ...(together ? [together] : [])].map((cure) => cure.set);
    const layers = set.flatMap((one) => one['printer.layer'] ?? []);
    expect(layers.length).toBeGreaterThan(0);
    for (const one of set) {
      const [nozzle, layer] = [Number(one['printer.nozzle'] ?? 0.6), one['printer.layer'] ?? 0.4];
      const list: Readonly<Record<number, readonly number[]>> = {
        0.25: [0.06, 0.1, 0.12],
        0.4: [0.08, 0.12, 0.16, 0.2],
        0.6: [0.2, 0.3, 0.4],
        0.8: [0.3, 0.4],
      };
      expect(list[nozzle], JSON.stringify(one)).toContain(layer);
    }
  });

  it.each([
    ['none', 9.5, 0.12, 'membrane'],
    // a floor of two layers takes a membrane, and no steps
    ['steps', 5.3, 0.2, 'membrane'],
  ])('offers a roof over pockets on the bed where bridging is %s', (bridging, thickness, layer, word) => {
    const sheet = nutSheet({
      flange: { shape: 'round', diameter: 50, thickness },
      holes: { count: 4, circle: 34, screw: 'M4', joint: 'counterbore', head: 'flange', diameter: undefined },
      printer: { layer, bridging },
    });
    const own = adviceOn(sheet).checks.find((row) => row.check === 'print-support')!;
    expect(own.cures.map(({ set }) => set)).toContainEqual({ 'printer.bridging': word });
    for (const { lines, reaches } of own.cures) {
      const after = check(design(pasted(sheet, lines))).checks.find((row) => row.id === 'print-support');
      expect(after?.verdict).toBe(reaches);
    }
  });

  it('offers no roof where none takes the finding away', () => {
    const { checks } = adviceOn(nutSheet({ flange: { offset: 6 } }));
    expect(checks.flatMap(({ cures }) => cures).some(({ set }) => 'printer.bridging' in set)).toBe(false);
  });

  it('ranks cures by how little they change, those without a price first', () => {
    const { checks } = adviceOn(nutSheet(LONG));
    const { cures } = checks.find((row) => row.check === 'thread-pitch-error')!;
    expect(cures.length).toBeGreaterThan(1);
    const keys = cures.map(({ costs, change }) => costs.length * 1000 + change);
    expect(keys).toEqual([...keys].sort((a, b) => a - b));
  });

  it('finds the least step that passes: 0.22 is what ± √(0.05² + 0.0465²) leaves 0.15 of', () => {
    const { checks } = adviceOn(nutSheet({ screw: READ, fit: { diametral: 0.1, axial: 0.2 } }));
    const [best] = checks.find((row) => row.check === 'thread-clearance')!.cures;
    expect(best!.set).toEqual({ 'fit.diametral': 0.22 });
    const less = check(design(nutSheet({ screw: READ, fit: { diametral: 0.21, axial: 0.2 } })));
    expect(less.checks.find((row) => row.id === 'thread-clearance')?.verdict).not.toBe('pass');
  });

  it('says the unit of a length where bare ones are inches', () => {
    const sheet = `units: inch\n${startSheet('nut').replace('diameter: 16 mm, length: 17 mm', 'diameter: 0.475, length: 0.6')}`;
    const cures = advise(sheet).checks.flatMap((row) => row.cures);
    const wider = cures.flatMap(({ set }) => ('body.diameter' in set ? [set['body.diameter']] : []));
    expect(wider.length).toBeGreaterThan(0);
    expect(wider.filter((value) => !/^\d+(\.\d+)? mm$/.test(String(value)))).toEqual([]);
  });

  it('cures a gamble as well as a fail, and keeps a class that was given short', () => {
    const { checks } = adviceOn(nutSheet({ fit: 'close', body: { length: 20 } }));
    const gamble = checks.find((row) => row.check === 'fit')!;
    expect(gamble.verdict).toBe('caution');
    const lines = gamble.cures.flatMap((cure) => cure.lines);
    expect(lines.some((line) => /^fit: \{class: close, axial: 0\.\d+\}$/.test(line))).toBe(true);
  });

  it('reads a text as well as an object, and has nothing to say of a sheet without open checks', () => {
    const sound = nutSheet({
      duty: { axis: 'horizontal', motor: { torque: '0.17 N m' } },
      flange: { thickness: 8 },
      holes: { fit: undefined, diameter: 3.9 },
      limits: { 'thread-backlash': 0.3, 'end-stop': { max: 100 } },
    });
    expect(advise(stringify(sound)).checks).toEqual([]);
    expect(adviceOn(sound).together).toBeUndefined();
  });
});

describe('leadwright check', () => {
  it('--advise prints lines to paste, --json holds the same', async () => {
    const folder = callFolder();
    writeFileSync(
      join(folder, 'tight.yaml'),
      stringify(nutSheet({ body: { diameter: 13.8 }, duty: { motor: { torque: '0.05 N m' } } })),
    );
    const told = await call(folder, ['check', 'tight.yaml', '--advise']);
    expect(told.code).toBe(1);
    expect(told.stdout).toMatch(/Advice\n {2}wall\n {6}body\.diameter: 14\n/);
    expect(told.stdout).toMatch(/body: \{shape: round, diameter: 14, length: 18\}/);
    const { stdout } = await call(folder, ['check', 'tight.yaml', '--advise', '--json']);
    expect(JSON.parse(stdout).advice.checks[0]).toMatchObject({
      check: 'wall',
      cures: [{ set: { 'body.diameter': 14 } }],
    });
  });

  it('--mate holds the solids against the arithmetic', async () => {
    const folder = callFolder();
    writeFileSync(join(folder, 'sound.yaml'), stringify(nutSheet({ printer: { chord_error: 0.05 } })));
    const { code, stdout } = await call(folder, ['check', 'sound.yaml', '--mate', '--json']);
    expect(code).toBe(0);
    const rows: { id: string; verdict: string }[] = JSON.parse(stdout).checks;
    expect(rows.filter(({ id }) => id.startsWith('mate-'))).toMatchObject([
      { id: 'mate-play', verdict: 'pass' },
      { id: 'mate-gaps', verdict: 'pass' },
    ]);
  });

  it('shows the fit: figures, chances and causes of spread', async () => {
    const folder = callFolder();
    writeFileSync(join(folder, 'sound.yaml'), stringify(nutSheet()));
    const { stdout } = await call(folder, ['check', 'sound.yaml', '--all']);
    expect(stdout).toMatch(/Fit on the bench\n {2}it will turn: starts above 99\.9 %, turns over its whole length/);
    expect(stdout).toMatch(/spread from {2}shrink along the axis/);
    const json = await call(folder, ['check', 'sound.yaml', '--json']);
    const { fit } = JSON.parse(json.stdout);
    expect(fit.contributors).toHaveLength(5);
    expect(fit.probabilities.starts).toBeGreaterThan(0.999);
    expect(fit.backlash.least).toBeLessThan(fit.backlash.likely);
  });
});
