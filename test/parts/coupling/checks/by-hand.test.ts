import { describe, expect, it } from 'vitest';
import { limitsInForce } from '../../../../src/judge/limits-in-force.js';
import { printLines } from '../../../../src/parts/coupling/checks/jaws.js';
import type { CouplingDesign } from '../../../../src/parts/coupling/dimensions.js';
import { contactIn } from '../../../../src/parts/coupling/jaw-load.js';
import { design } from '../../../../src/pipeline/design.js';
import { closedByHand, pressedByHand } from '../../../support/clamp-by-hand.js';
import { BOUGHT_HUBS, couplingSheet } from '../../../support/coupling-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

type Changes = Parameters<typeof couplingSheet>[0];
const found = (id: string, changes: Changes = {}) => findingOf(couplingSheet(changes), id);
const made = (changes: Changes = {}) => design(couplingSheet(changes)) as CouplingDesign;
const peakOf = (duty: object, limit?: object) =>
  found('insert-stress-peak', { duty, ...(limit ? { limits: { 'insert-stress-peak': limit } } : {}) })!;
const level = { mounting: 'horizontal' } as const;
const above = { mounting: 'motor-above' } as const;

describe('what pulls along the screw', () => {
  it('is the load and what the screw weighs itself', () => {
    // steel, 7.85 g/cm³, 125 diameters of 7.95 mm where nobody tells how long: 387 g, 3.8 N
    const own = ((Math.PI / 4) * 7.95 ** 2 * 125 * 7.95 * 7.85e-6 * 9.80665).toFixed(1);
    expect(found('coupling-axial', above)!.message).toContain(`with ${own} N of its own weight`);
    const loaded = found('coupling-axial', { ...above, duty: { load: 25 } })!;
    expect(loaded.message).toContain(`with 25 N and ${own} N of its own weight`);
    expect(found('coupling-axial', { ...above, duty: { load: 0 } })!.message).toContain(`with ${own} N of`);
  });

  it('is told to be nothing where a level screw bears no load', () => {
    expect(found('coupling-axial', { ...level, duty: { load: 0 } })!.message).toBe('no load along the screw');
  });

  it('reaches the motor and the pad only where the screw stands on them', () => {
    const loaded = { duty: { load: 5 }, motor: { axial_limit: 60 }, insert: { pad: 'soft' } };
    expect(found('motor-thrust', loaded)).toBeDefined();
    expect(found('insert-thrust', loaded)).toBeDefined();
    for (const other of [above, level]) {
      expect(found('motor-thrust', { ...loaded, ...other })).toBeUndefined();
      expect(found('insert-thrust', { ...loaded, ...other })).toBeUndefined();
    }
    expect(found('insert-thrust', { ...loaded, thrust_bearing: 'yes' })).toBeUndefined();
    expect(found('insert-thrust', { ...loaded, insert: { pad: 'none' }, thrust_bearing: 'yes' })).toBeUndefined();
  });

  it('stands on no disc or ball beside what carries the screw', () => {
    const carried = { duty: { load: 5 }, motor: { axial_limit: 60 } };
    for (const pad of ['disc', 'ball'])
      for (const by of ['thrust_bearing', 'locating_holder'])
        expect(found('insert-thrust', { ...carried, insert: { pad }, [by]: 'yes' })).toMatchObject({
          word: 'no',
          message: expect.stringMatching(
            `it stands on a ${pad} besides, so that nobody knows what the motor carries; leave its end free \\(insert.pad: none\\)$`,
          ),
        });
    expect(
      found('insert-thrust', { ...carried, ...above, insert: { pad: 'disc' }, thrust_bearing: 'yes' }),
    ).toBeUndefined();
  });

  it('squeezes a soft pad by its pressure over the modulus', () => {
    const { value, message } = found('insert-thrust', { insert: { pad: 'soft' }, duty: { load: 50 } })!;
    const { modulus, finished } = made({ insert: { pad: 'soft' }, duty: { load: 50 } }).insert;
    // 50 N and 3.797 N of screw on the 5 mm shaft, the thinner one
    const squeeze = 53.797 / ((Math.PI / 4) * 25 * modulus);
    expect(value).toBeCloseTo(squeeze, 5);
    expect(message).toContain(`sinks by ${(squeeze * finished.height).toFixed(2)} mm`);
  });

  it('squeezes lobes and ring where there is no pad, by a section counted point by point', () => {
    const bare = { insert: { pad: 'none', hole: 6 }, duty: { load: 50 } };
    const { finished, modulus } = made(bare).insert;
    const { lobes, halfWidth, ring, reach, hole, barrel } = finished;
    expect([barrel, hole]).toEqual([0, 6]);
    const turns = Array.from({ length: lobes }, (_, i) => ((i + 0.5) * 2 * Math.PI) / lobes);
    const step = 0.05;
    const places = Array.from({ length: Math.ceil((2 * reach) / step) + 2 }, (_, i) => -reach - step / 2 + i * step);
    const isInside = (x: number, y: number) => {
      if (Math.hypot(x, y) < hole / 2) return false;
      return (
        Math.hypot(x, y) <= ring ||
        turns.some((turn) => {
          const [along, aside] = [x * Math.cos(turn) + y * Math.sin(turn), y * Math.cos(turn) - x * Math.sin(turn)];
          return along > 0 && along <= reach && Math.abs(aside) <= halfWidth;
        })
      );
    };
    const area = step ** 2 * places.reduce((sum, x) => sum + places.filter((y) => isInside(x, y)).length, 0);
    expect(found('insert-thrust', bare)!.value! / (53.797 / (area * modulus))).toBeCloseTo(1, 2);
  });

  it('stands on a disc or a ball that does not yield', () => {
    expect(found('insert-thrust')!.message).toContain('a rigid disc of 8 × 3 mm');
    expect(found('insert-thrust', { insert: { pad: 'ball' } })!.message).toContain('a rigid ball of 8 mm');
  });
});

describe('shaft ends, jaws and lobes', () => {
  it('are told by what keeps the shafts apart', () => {
    expect(found('shaft-gap')).toMatchObject({ value: 3, message: '3 mm, the pad between them' });
    const short = { ...level, insert: { pad: 'none' }, motor: { shaft: { length: 12 } } };
    expect(found('shaft-gap', short)).toMatchObject({ verdict: 'pass' });
    expect(found('shaft-gap', short)!.message).toMatch(/mm between the stops$/);
    expect(found('shaft-gap', { screw: undefined })).toBeUndefined();
    // without a pad no shaft must reach one
    const unsure = { motor: { shaft: { length: undefined } } };
    expect(found('shaft-gap', unsure)).toMatchObject({ word: 'not-told', missing: ['motor.shaft.length'] });
    expect(found('shaft-gap', { ...short, ...unsure })!.word).toBe('yes');
  });

  it.each([
    { jaws: { height: 11 }, insert: { height: 8 } },
    { jaws: { height: 8 }, insert: { height: 12 } },
  ])('keep room at the floors beside the higher of both: %j', (changes) => {
    const room = made(changes).gap - Math.max(changes.jaws.height, changes.insert.height);
    expect(found('assembly-room', { ...changes, misalignment: { axial: 0.1 } })!.value).toBeCloseTo(room - 0.1, 9);
  });

  it('go together where the bevel is more than the squeeze', () => {
    const bevel = (flank_clearance: number) =>
      found('assembly-entry', { jaws: { bevel: 0.5 }, insert: { flank_clearance } })!.value;
    expect(bevel(-0.03)).toBeCloseTo(0.47, 9);
    expect(bevel(0.1)).toBeCloseTo(0.5, 9);
  });

  it('name the half that is bought', () => {
    expect(found('matched-half', BOUGHT_HUBS)!.message).toMatch(/^both hubs are bought/);
    expect(found('matched-half', { screw: undefined })!.message).toMatch(/^the screw hub is bought/);
  });

  it('say of the speed only what is told', () => {
    expect(found('speed')).toBeUndefined();
    expect(found('speed', { ...BOUGHT_HUBS, duty: { speed: 500 } })).toBeUndefined();
  });

  it('play by nothing where the lobes are squeezed', () => {
    expect(found('coupling-play')!.message).toBe('none: the lobes are squeezed');
    expect(found('coupling-play', { insert: { flank_clearance: 0.05 } })!.message).toMatch(
      /^\d\.\d+° from stop to stop$/,
    );
  });

  it('lose by wind-up what half the torque squeezes of a lobe, at either side', () => {
    const { insert, jaws, gap } = made();
    const { meanRadius, length, height } = contactIn({ jaws, insert: insert.finished, gap });
    // three of the six lobes carry; strained by stress over modulus over their width
    const stress = 150 / (3 * meanRadius * length * height);
    const turn = (stress * 2 * insert.finished.halfWidth) / insert.modulus / meanRadius;
    expect(found('lost-motion')!.value).toBeCloseTo((2 * 2 * turn) / (2 * Math.PI), 5);
  });

  it('lose less by what loses most', () => {
    expect(found('lost-motion', { insert: { flank_clearance: 1 } })!.message).toContain('less insert.flank_clearance');
    const wound = {
      insert: { hardness: '60 Shore A' },
      motor: { torque: 5 },
      limits: { 'lost-motion': { max: 0.001 } },
    };
    expect(found('lost-motion', wound)!.message).toContain('a harder insert or a larger outside');
  });
});

describe('strength and heat', () => {
  it('judge a jaw by the load that is nearest to what it bears', () => {
    // untold, the motor's torque works both ways all its life; 15 N want a fraction of it, so stall is the worse
    expect(found('jaw-bending')!.message).toContain('in work, reversing');
    expect(found('jaw-shear')!.message).toContain('in work, reversing');
    const light = { duty: { load: 15 } };
    expect(found('jaw-bending', light)!.message).toContain('at start, stall or shock');
    expect(found('jaw-shear', light)!.message).toContain('at start, stall or shock');
  });

  it('say what the corner at the foot of a jaw adds in bending, and nothing of it in shear', () => {
    // 7.5 mm high: a fillet of an eighth, on 7.06 mm of width: 1.76 by the tables
    for (const id of ['jaw-bending', 'jaw-bare'])
      expect(found(id)!.message, id).toContain(' (notch 1.8, fillet 0.94 mm), of ');
    for (const id of ['jaw-bending', 'jaw-bare'])
      expect(found(id, { jaws: { fillet: 0 } })!.message, id).toContain(' (notch 2, a sharp corner), of ');
    expect(found('jaw-shear')!.message).not.toContain('notch');
  });

  it('count the insert as warm as midway between motor and room', () => {
    // (70 + 25)/2 = 47.5 °C of the 70 °C that soft polyurethane serves to; 1.5 from 35 to 50 °C
    const { value, message } = found('heat')!;
    expect(value).toBeCloseTo(70 - 47.5, 9);
    expect(message).toBe('tpu95a serves to 70 °C, 48 °C at the insert');
    expect(found('insert-stress')!.message).toContain('with temperature factor 1.5');
  });

  it('press barrelled lobes between straight flanks in their middle alone', () => {
    const barrelled = { insert: { lobes: 'barrelled' } };
    for (const id of ['insert-stress', 'insert-stress-peak']) {
      const even = found(id)!.value!;
      const { finished, modulus } = made(barrelled).insert;
      const flat = (4 * modulus * finished.barrel) / (3 * 2 * finished.halfWidth);
      const share = Math.cbrt(even / flat);
      expect(share).toBeLessThan(1);
      expect(found(id, barrelled)!.value! / (even / share)).toBeCloseTo(1, 2);
      expect(found(id, barrelled)!.message).toContain(` on ${Math.round(100 * share)} % of a barrelled lobe`);
      expect(found(id)!.message).not.toContain('barrelled');
      const crushed = { ...barrelled, limits: { [id]: { max: 0.01 } } };
      expect(found(id, crushed)!.message).toContain(
        '; straight lobes (insert.lobes), curved flanks (jaws.flank), a larger',
      );
      expect(found(id, { limits: { [id]: { max: 0.01 } } })!.message).toContain('; a larger outside');
      // hollow flanks meet them all along
      expect(found(id, { jaws: { flank: 'curved' } })!.message).not.toContain('barrelled lobe');
    }
    const weak = { ...barrelled, limits: { 'insert-stress': { max: 0.01 } } };
    expect(found('insert-stress', weak)!.message).toMatch(
      /; straight lobes \(insert\.lobes\), curved flanks \(jaws\.flank\), a larger outside, a higher insert or a harder one/,
    );
  });

  it('press lobes of a hard insert by what fewer jaws carry, and say what gives less', () => {
    // Shore 80 D: 10^(0.0235·130 − 0.6403) = 260 MPa against 57.1 of 98 A: of 3 jaws 2 + 57.1/260 carry
    const laid = { hubs: { outside_diameter: 40 }, jaws: { count: 3, height: 9, width: 8, inner: 17.5 } };
    const hard = (hardness: string) => ({ ...laid, insert: { hardness, flank_clearance: -0.05 } });
    const stress = (hardness: string) => found('insert-stress', hard(hardness))!.value!;
    expect(stress('80 Shore D') / stress('98 Shore A')).toBeCloseTo(3 / (2 + 57.1 / 260), 2);
    const said = (hardness: string) => found('misalignment', { ...hard(hardness), misalignment: { parallel: 0.6 } })!;
    expect(said('80 Shore D').message).toMatch(
      / along; an insert of 80 Shore D gives less; set the shafts better in line \(misalignment\), or take a softer insert/,
    );
    // common practice: 1° and 0.38 mm at most, of wide ones too
    expect(found('misalignment', { hubs: { outside_diameter: 50 } })!.message).toMatch(
      / of 1°, 0\S* of 0\.38 mm aside/,
    );
    expect(said('98 Shore A').message).toMatch(/ along; set the shafts .*, or take a larger outside or lower jaws$/);
  });

  it('find the hub on the motor hotter than its neighbour', () => {
    expect(found('heat', { material: 'pla' })!.message).toMatch(
      /^pla softens at 52 °C, 70 °C at the motor shaft; the screw hub with [\d.]+ K too; use/,
    );
    const half = { motor: { shaft: undefined }, motor_hub: undefined, material: 'pla' };
    expect(found('heat', half)!.message).toMatch(/^pla softens at 52 °C, 48 °C around it; use/);
  });

  it('name the other hub where that is beyond its limit too, so that who accepts or mends one overlooks none', () => {
    const weak = { clamp: { screw: 'M3', count: 1, washers: 'no' } };
    const torque = { motor: { torque: 2, shaft: { flat: undefined } } };
    const both = found('grip-torque', { ...torque, motor_hub: weak, screw_hub: weak })!.message;
    expect(both).toMatch(/is not reached; the (motor|screw) hub with [\d.]+ N·mm too; the/);
    const strong = { friction: 1, clamp: { screw: 'M4', count: 2, washers: 'yes' } };
    expect(found('grip-torque', { ...torque, motor_hub: weak, screw_hub: strong })!.message).not.toContain(' too;');
    // half a millimetre of play bends either hub too far
    const wide = { bore_clearance: 0.5 };
    expect(found('closing-strain', { motor_hub: wide, screw_hub: wide })!.message).toMatch(/; the \w+ hub too; use/);
    expect(found('closing-strain', { motor_hub: wide })!.message).not.toContain(' too;');
    // two flats that carry 20 N·m
    const flats = { screw: undefined, shaft: { diameter: 5, flat: 4.5, length: 40 }, motor: { torque: 20 } };
    expect(found('flat-pressure', flats)!.message).toMatch(/ MPa; the \w+ hub too;/);
    expect(found('flat-pressure', { motor: { torque: 20 } })!.message).not.toContain(' too;');
    // a flat of 12 mm bears what one of 5 mm does not, unless a sheet asks for less
    const thick = { screw: undefined, shaft: { diameter: 12, flat: 10, length: 40 }, motor: { torque: 4 } };
    const of = (max: number | undefined) =>
      found('flat-pressure', { ...thick, limits: max === undefined ? undefined : { 'flat-pressure': { max } } })!;
    expect(of(undefined).word).toBe('no');
    expect(of(undefined).message).not.toContain(' too;');
    expect(of(5).message).toContain('; the screw hub too;');
    expect(of(1000).message).not.toContain(' too');
  });

  it('take a coupling that nobody tells of as one that starts all the time', () => {
    // DIN 740-2: 1 up to 125 starts an hour, 2 above 1,000
    const seldom = peakOf({ starts: 125, shock: 'none' }).value!;
    expect(peakOf({ shock: 'none' }).value! / seldom).toBeCloseTo(2, 4);
    const between = { max: 1.5 * seldom };
    expect(peakOf({ shock: 'none' }, between).missing).toEqual(['duty.starts']);
    expect(peakOf({ starts: 125, shock: 'none' }, between).word).toBe('yes');
    expect(peakOf({ starts: 1001, shock: 'none' }, between).word).toBe('no');
  });

  it('take a coupling that nobody tells of as one that is struck hard', () => {
    // 1.5 of a start beside 2.2 of heavy shock, from memory
    const smooth = peakOf({ starts: 125, shock: 'none' }).value!;
    expect(peakOf({ starts: 125 }).value! / smooth).toBeCloseTo(2.2 / 1.5, 4);
    const between = { max: 1.2 * smooth };
    expect(peakOf({ starts: 125 }, between).missing).toEqual(['duty.shock']);
    expect(peakOf({ starts: 125, shock: 'light' }, between).word).toBe('yes');
    expect(peakOf({ starts: 125, shock: 'heavy' }, between).word).toBe('no');
    // what passes at the worst is not asked for, what fails at the mildest neither
    expect(peakOf({ starts: 125 }, { max: 2 * smooth }).word).toBe('yes');
    expect(peakOf({ starts: 125 }, { max: 0.9 * smooth }).word).toBe('no');
    // either alone would not do
    expect(peakOf({}, between).missing).toEqual(['duty.starts', 'duty.shock']);
  });

  it('lay jaws and outline out for what they are judged by', () => {
    const rough = { material: 'pa12', motor: { torque: 0.5 }, duty: { load: 25 } };
    const jawsOf = (duty: object) => made({ ...rough, duty: { ...rough.duty, ...duty } }).jaws;
    expect(jawsOf({})).toEqual(jawsOf({ starts: 1200, shock: 'heavy' }));
    expect(jawsOf({}).outer).toBeGreaterThan(jawsOf({ starts: 60, shock: 'none' }).outer);
    expect(found('jaw-bending', rough)!.word).toBe('yes');
  });

  it('have no factor for more heat than 120 °C', () => {
    const factor = (temperature: number) =>
      found('insert-stress', { duty: { temperature: 90 }, motor: { temperature } })!.message;
    expect(factor(150)).toBe(factor(149));
    const hot = { duty: { temperature: 120 }, motor: { temperature: 150 } };
    expect(found('insert-stress', hot)!.message).toMatch(/temperature factor \d/);
  });

  it('tell nothing of hubs that are not made', () => {
    for (const id of ['jaw-bending', 'jaw-shear', 'jaw-bare', 'grip-torque', 'set-screw', 'assembly-entry'])
      expect(found(id, BOUGHT_HUBS), id).toBeUndefined();
  });

  it('warn of a set screw alone', () => {
    // M3 on 5 mm
    expect(found('set-screw', { motor_hub: { grip: 'set-screw' } })!.message).toContain('of 0.6 shaft diameters');
    expect(found('set-screw', { motor_hub: { grip: 'both' } })).toBeUndefined();
    // only a clamp presses all of its bore
    const plain = { screw: undefined, shaft: { diameter: 8, length: 40 } };
    const set = { grip: 'set-screw', clamp: undefined };
    expect(found('bore-pressure', { ...plain, motor_hub: set })!.message).toMatch(/on the bore of the screw hub$/);
    expect(found('bore-pressure', { ...plain, motor_hub: set, screw_hub: set })).toBeUndefined();
    expect(found('set-screw')).toBeUndefined();
    const flat = { shaft: { diameter: 5, flat: 4.5, flat_length: 15 } };
    const slips = found('flat-pressure', { motor: flat, motor_hub: { grip: 'set-screw', clamp: undefined } })!;
    expect(slips.message).toMatch(/ MPa when the set screw slips in a jam in the motor hub/);
  });
});

describe('the thinnest feature in lines', () => {
  // 25 mm outside, three jaws 7 mm wide inside of 12 mm: half of lobe and jaw together is a chord of the middle circle
  const bought = { ...BOUGHT_HUBS, printer: { nozzle: 0.4 } };

  it('of an insert alone is the ring around its hole, or a lobe', () => {
    const { ring } = made(bought).insert.finished;
    const row = found('print-lines', { ...bought, insert: { hole: 9 } })!;
    expect(row.value).toBeCloseTo((ring - 4.5) / 0.45, 6);
    expect(row.message).toMatch(/lines: ring of the insert$/);
    const slim = { ...bought, jaws: { count: 3, height: 8, width: 8.3, inner: 13 }, insert: { hole: 2 } };
    const lobe = found('print-lines', slim)!;
    expect(lobe.message).toMatch(/lines: a lobe$/);
    expect(lobe.value).toBeCloseTo((2 * made(slim).insert.finished.halfWidth) / 0.45, 6);
  });

  it('of hubs is the inner end of a jaw, bevels off', () => {
    expect(found('print-lines')!.message).toMatch(/lines: inner end of a jaw$/);
  });
});

describe('a motor hub of 6.35 mm at 62 °C, by hand', () => {
  const PA12 = {
    tensile: 42,
    modulus: 1300,
    hour: 0.75,
    shrink: 0.005,
    exponent: 0.0677 * 1.39,
    stiff: 0.38 - 0.11 / 10,
  };
  // u of PC: (147 − 62)/(147 − 23)
  const PC = {
    tensile: 57.5,
    modulus: 2200,
    hour: 0.92,
    shrink: 0.003,
    exponent: 0.0296 * (124 / 85),
    stiff: 0.93 - 0.05 / 10,
  };
  /** Rings under M3, mm²: its head of 5.5 on a hole of 3.4, and a washer of 7. */
  const [HEAD, WASHER] = [5.5, 7].map((across) => (Math.PI / 4) * (across ** 2 - 3.4 ** 2));

  it.each([
    ['pa12', PA12, 'no', HEAD, 43],
    ['pa12', PA12, 'yes', WASHER, 201],
    ['pc', PC, 'yes', WASHER, 1389],
  ] as const)('of %s (case %#), washers and a second tightening %s', (material, plastic, again, ring, told) => {
    const sheet = {
      material,
      retighten: again,
      hubs: { outside_diameter: material === 'pc' ? 29 : 33 },
      motor: { temperature: 62, shaft: { diameter: 6.35, flat: undefined } },
      motor_hub: { bore_clearance: 0.05, clamp: { screw: 'M3', count: 2, washers: again } },
    };
    const { outside, bore, slit } = made(sheet).hubs.find(({ name }) => name === 'motor-hub')!.finished;
    // bore of 6.4 mm, wide of the shaft by 0.05 mm of print, by what is left of shrink, and by 0.03 mm of calipers
    expect(bore.diameter).toBeCloseTo(6.4, 9);
    const play = 0.05 + 0.05 + plastic.shrink * 6.4 + 0.03;
    const [R, h, e, L] = [(3.2 + outside / 2) / 2, outside / 2 - 3.2, 3.2 + 1.7 + 1.7, slit!.to];
    const closing = closedByHand({ R, h, e, L, E: plastic.modulus, play });
    const preload = 2 * 0.5 * 1.2 * plastic.tensile * ring!;
    const kept = (hours: number) => plastic.hour * hours ** -plastic.exponent;
    // what the first hot day took is given back once
    const c = again === 'yes' ? kept(43_800) + (1 - kept(24)) * kept(43_800 - 24) : kept(43_800);
    const torque = 0.15 * 6.35 * plastic.stiff * c * (0.9 * preload - closing) * pressedByHand({ R, h, e });
    const found = findingOf(couplingSheet(sheet), 'grip-torque')!;
    expect(Number(/motor hub holds (\d+) N·mm/.exec(found.message)?.[1] ?? found.value)).toBe(told);
    expect(torque / told).toBeGreaterThan(0.99);
    expect(torque / told).toBeLessThan(1.01);
  });
});

describe('the squeeze of a lobe', () => {
  it('is as sure as jaws are read: printed ones by their sheet, bought ones by the calipers', () => {
    const printed = found('insert-squeeze')!;
    expect([printed.least, printed.most]).toEqual([printed.value, printed.value]);
    // ± 0.03 mm over the jaw, half of it at either flank
    const bought = found('insert-squeeze', BOUGHT_HUBS)!;
    const width = 2 * made(BOUGHT_HUBS).insert.finished.halfWidth;
    expect(bought.most! - bought.least!).toBeCloseTo(0.03 / width, 5);
  });
});

describe('what is printed too thin', () => {
  const printer = (lineWidth: number, nozzle: number) => ({ lineWidth, nozzle, layer: 0.2, listed: LISTED });
  const LISTED = [
    { nozzle: 0.25, layer: 0.2 },
    { nozzle: 0.4, layer: 0.2 },
    { nozzle: 0.6, layer: 0.2 },
  ];
  // a jaw of three is 2·(6.5·sin 30° − 2.5)/cos 30° = 1.732 mm wide at its inner end, 1.132 less two bevels of 0.3 mm
  const jaws = { count: 3, inner: 6.5, outer: 12, halfSlot: 2.5, hollow: 0, bevel: 0.3 };
  const insert = { finished: { halfWidth: 2, ring: 6, hole: 6 }, printer: printer(0.9, 0.8) };
  const lines = (more: object = {}) => {
    const outcome = printLines.run(
      { hubs: [{}], jaws, insert, printer: printer(0.45, 0.4), ...more } as unknown as CouplingDesign,
      limitsInForce(printLines.limits),
    );
    if (outcome?.kind !== 'value') throw new TypeError('no figure');
    return { lines: outcome.value.likely, message: outcome.message };
  };

  it('is the inner end of a jaw, less its bevels', () => {
    expect(lines().lines).toBeCloseTo((2 * 0.75) / Math.cos(Math.PI / 6) / 0.45 - 0.6 / 0.45, 6);
    expect(lines().message).toBe('2.5 lines: inner end of a jaw');
    const coarse = lines({ printer: printer(0.9, 0.8) });
    expect(coarse.lines).toBeCloseTo(1.132 / 0.9, 3);
    // two lines in 1.132 mm: at most 0.566 wide each, of a nozzle of 0.5 at most
    expect(coarse.message).toBe('1.3 lines: inner end of a jaw; fewer or wider jaws, or use printer.nozzle: 0.4 mm');
  });

  it('is a lobe or the ring of an insert, which has a printer of its own; a bought jaw is printed by nobody', () => {
    expect(lines({ hubs: [] })).toEqual({ lines: 3 / 0.9, message: '3.3 lines: ring of the insert' });
    expect(lines({ hubs: [], insert: { ...insert, finished: { halfWidth: 1, ring: 6, hole: 6 } } }).lines).toBeCloseTo(
      2 / 0.9,
      9,
    );
    const thin = lines({ insert: { ...insert, finished: { halfWidth: 0.5, ring: 6, hole: 0 } } });
    expect(thin.lines).toBeCloseTo(1 / 0.9, 9);
    // two lines in 1 mm: 0.5 wide at most, of a nozzle of 0.4
    expect(thin.message).toBe('1.1 lines: a lobe; fewer or narrower jaws, or use insert.printer.nozzle: 0.4 mm');
  });
});

describe('a screw that does not tell how long it is', () => {
  // 7.95 mm of steel weigh 3.82 N a metre: 0.38 N at 100 mm, 3.8 N at 125 diameters
  it('is judged by the longest that is usual, and asked for where a short one would do', () => {
    const motor = (axial_limit: number, span?: number) =>
      found('motor-thrust', { duty: { load: 10, ...(span === undefined ? {} : { span }) }, motor: { axial_limit } })!;
    expect(motor(13.9)).toMatchObject({ word: 'yes', value: expect.closeTo(13.797, 2) });
    expect(motor(13.7)).toMatchObject({ word: 'not-told', missing: ['duty.span'] });
    expect(motor(10.4)).toMatchObject({ word: 'not-told', missing: ['duty.span'] });
    expect(motor(10.3)).toMatchObject({ word: 'no' });
    expect(motor(13.7, 500).word).toBe('yes');
    expect(motor(10.4, 500).word).toBe('no');
  });
});

describe('a motor that does not tell how warm it gets', () => {
  const untold = { motor: { temperature: undefined } };

  // cases run at 50 to 80 °C; rubber midway to a room of 25 °C serves to 70 °C, less 20: (80 + 25)/2 is above, (50 + 25)/2 below
  it('is judged at 80 °C, and asked for where it would hold at 50', () => {
    expect(found('heat', untold)).toMatchObject({ word: 'not-told', missing: ['motor.temperature'], grave: true });
    expect(found('heat', { ...untold, duty: { temperature: 10 } })).toMatchObject({ word: 'yes', value: 70 - 45 });
    expect(found('heat', { ...untold, material: 'petg' })).toMatchObject({ word: 'no', value: 65 - 80 });
  });

  it('is asked for together with the room', () => {
    const row = found('heat', { ...untold, duty: { temperature: undefined } })!;
    expect(row).toMatchObject({ word: 'not-told', missing: ['motor.temperature', 'duty.temperature'] });
  });

  // 0.12·28.75 MPa·u^0.75 of PC across its layers, u = (147 − T)/124: 2.175 MPa at 80 °C, 2.873 at 50
  it('is judged by what jaws bear at 80 °C', () => {
    const jaws = { count: 3, height: 8, width: 7, inner: 13 };
    const at = (torque: number, temperature?: number) =>
      found('jaw-bending', { hubs: { outside_diameter: 30 }, jaws, motor: { temperature, torque } })!;
    expect(at(0.3).limit!.max).toBeCloseTo(0.12 * 28.75 * ((147 - 80) / 124) ** 0.75, 2);
    const torques = [0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2];
    const words = torques.map((torque) => at(torque).word);
    const told = torques.map((torque) => [at(torque, 50).word, at(torque, 80).word]);
    expect(words).toEqual(told.map(([cool, hot]) => (cool === hot ? hot : 'not-told')));
    expect(new Set(words)).toEqual(new Set(['yes', 'not-told', 'no']));
  });
});
