import { describe, expect, it } from 'vitest';
import { ADAPTED, BELTED, LOADED, MOTOR_PLATES, MOUNTED } from '../../support/motor-plate-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

type Tree = Record<string, unknown>;

const SIX = changed(MOUNTED, { plate: { length: 80, width: 80, thickness: 6 } });
const BIG = changed(MOUNTED, {
  motor: { screw: 'M5', thread_depth: 5.5, square: 47.14, pilot: 38.1, body: 56.4 },
  machine: { holes: { rectangle: [90, 90] } },
  motor_heads: 'sunk',
  plate: { length: 110, width: 110, thickness: 7 },
});
const OUTER = changed(MOUNTED, { motor_heads: 'proud', machine: { face: 'outer', opening: 60 } });

/** A plate between a motor and a machine that was made for one of frame 17. */
const ONTO_17 = changed(ADAPTED, { machine: { holes: { rectangle: [31, 31], screw: 'M3' } }, plate: { thickness: 8 } });
const WIDE = { motor: { square: 47.14, pilot: 38.1, screw: 'M4', thread_depth: undefined, flange: 5, body: 56 } };

const found = (id: string, base: object, changes: Tree = {}) => findingOf(changed(base as Tree, changes), id);
const thick = (thickness: number, depth = 4.5) => ({ plate: { thickness }, motor: { thread_depth: depth } });
/** Two holes across the axis beside a body of 54 mm. */
const beside = (x: number, y: number) => ({
  motor: { body: 54 },
  plate: { length: 110, width: 110 },
  machine: {
    holes: {
      rectangle: undefined,
      at: [
        [x, y],
        [-x, -y],
      ],
    },
  },
});

/** Rings under washers, π/4·(D² − d²): M3 7 over 3.4; M5 10 over a slot of 5.8, which takes 5.8 · 10 of it [mm²]. */
const M3 = (Math.PI / 4) * (7 ** 2 - 3.4 ** 2);
const M5_SLOT = (Math.PI / 4) * 10 ** 2 - 5.8 * 10;
/**
 * What a screw on PETG at 42 °C clamps with after five years, by hand: 0.5·1.2·44 MPa on its ring; bedded 0.9; creep 0.88·t^−n with
 * n = 0.0439/u, u = (70 − 42)/(70 − 23); the modulus between 0.92 at 40 and 0.50 at 60 °C.
 */
const clamped = (ring: number) =>
  0.5 * 1.2 * 44 * ring * 0.9 * 0.88 * 43_800 ** (-0.0439 / (28 / 47)) * (0.92 - (2 / 20) * 0.42);

const UNKNOWN = { machine: { holes: { screw: undefined, rectangle: [120, 120], diameter: 20 } } };
const ASIDE = {
  machine: {
    holes: {
      rectangle: undefined,
      at: [
        [40, 26],
        [-28, 26],
        [-28, -30],
        [40, -30],
      ],
    },
  },
};

/** [check, sheet, changes, value, what its message says], each figure by hand from the sheet. */
const SAID: readonly [string, object, Tree, number | undefined, RegExp][] = [
  ['pilot-fit', SIX, { fit: { pilot: 0.3 } }, 0.3, /^pilot 22 mm in 22.3 mm$/],
  ['pilot-fit', SIX, { fit: { pilot: 0 } }, 0, /^pilot 22 mm in 22 mm; widen it/],
  ['pilot-fit', SIX, { fit: { pilot: 1 } }, 1, /^pilot 22 mm in 23 mm; narrow it/],
  // M3 in 4.5 mm with 0.5 mm of washer: 3 mm are wanted, 4 are the most; screws of 8, 10, 12 mm
  ['screw-engagement', SIX, {}, 3.5, /^M3x10 through 6.5 mm has 3.5 mm of thread in holes 4.5 mm deep$/],
  ['screw-engagement', SIX, thick(5.5), 4, /^M3x10 through 6 mm has 4 mm of thread in holes 4.5 mm deep$/],
  ['screw-engagement', SIX, thick(6.5), 3, /^M3x10 through 7 mm has 3 mm of thread in holes 4.5 mm deep$/],
  // 7.5 + 3 − 10, and 12 − 4 − 7.5
  ['screw-engagement', SIX, thick(7), 2.5, /deep; make the plate 0.5 mm thinner, or 0.5 mm thicker for M3x12$/],
  ['screw-engagement', SIX, thick(7, 2), 0.5, /^M3x8 .* 2 mm deep; its holes are shallow/],
  // 9.6 + 0.5 + 2 − 0.5 = 11.6 mm at most: M3x10 ends inside the plate
  [
    'screw-engagement',
    SIX,
    thick(9.6, 2),
    undefined,
    /^no usual M3 has thread below 10.1 mm .*; its holes are shallow/,
  ],
  ['screw-engagement', SIX, { motor: { thread_depth: undefined, flange: 5 } }, undefined, /^bolts go through .* 5 mm$/],
  // 24 − 6 = 18 mm, less the hub
  ['shaft-left', SIX, {}, 4, /^18 mm stand out of the plate, 14 mm go into the hub$/],
  ['shaft-left', SIX, { hub_depth: 17 }, 1, /17 mm go into the hub$/],
  ['shaft-left', SIX, { hub_depth: 17.5 }, 0.5, /hub; make the plate thinner/],
  // √½ · 31 + 3.5 = 25.42
  ['heads-clear', OUTER, {}, 30 - 25.42, /^washers reach 25.4 mm from the axis, the opening 30 mm$/],
  ['heads-clear', OUTER, { machine: { opening: 51.2 } }, 25.6 - 25.42, /the opening 25.6 mm; sink the heads/],
  ['heads-clear', OUTER, { motor_heads: 'sunk' }, undefined, /^sunk below the face/],
  // washers of M4: 9 mm, 40 − 30 − 4.5
  ['head-room', SIX, {}, 5.5, /^washers of 9 mm to the machine$/],
  ['head-room', SIX, { plate: { length: 69 } }, 0, /^washers of 9 mm to the machine$/],
  ['head-room', SIX, { plate: { length: 68.4 } }, -0.3, /machine; make the plate larger/],
  ['head-room', SIX, { plate: { length: 80, width: 68.4 } }, -0.3, /machine; make the plate larger/],
  // a pilot of 34 + 0.3: 21.92 − 17.15 − 3.5
  ['head-room', SIX, { motor: { pilot: '34 ± 0.02 mm' }, fit: { pilot: 0.3 } }, 1.27, /^washers/],
  // a hole at 28.5, 15.5: 13 − 3.5 − 4.5
  ['head-room', SIX, { ...beside(28.5, 15.5) }, 5, /^washers of 9 mm to the machine$/],
  // 30 − 21.15 both ways: 12.516 − 4.5
  ['motor-room', SIX, {}, 8.016, /^washers of 9 mm beside a body of 42.3 mm$/],
  ['motor-room', SIX, beside(32, 0), 0.5, /^washers of 9 mm beside a body of 54 mm$/],
  ['motor-room', SIX, beside(0, 32), 0.5, /^washers of 9 mm beside a body of 54 mm$/],
  ['motor-room', SIX, beside(31.6, 0), 0.1, /54 mm; let screws come from the machine/],
  ['motor-room', SIX, beside(30, 26), -1.5, /54 mm; let screws/],
  ['motor-room', SIX, beside(26, 30), -1.5, /54 mm; let screws/],
  ['motor-room', SIX, beside(26, 26), -5.5, /54 mm; let screws/],
  ['motor-room', SIX, beside(30, 31), 0.5, /54 mm$/],
  // (40 − 42.3)/2
  [
    'motor-opening',
    MOUNTED,
    { machine: { opening: 40 } },
    -1.15,
    /42.3 mm in an opening of 40 mm; widen it, or let the outer/,
  ],
  ['motor-opening', MOUNTED, { machine: { opening: 44 } }, 0.85, /in an opening of 44 mm$/],
  // the shaft of 5 mm, or the pilot of 22 mm where it stands out of a plate of 6 mm
  ['motor-opening', OUTER, { machine: { opening: 4 } }, -0.5, /^a shaft of 5 mm in an opening of 4 mm; widen it$/],
  [
    'motor-opening',
    OUTER,
    { machine: { opening: 20 }, motor: { pilot_height: 6.5 }, plate: { thickness: 6 } },
    -1,
    /^a pilot higher than the plate, of 22 mm in an opening of 20 mm; widen it, or make the plate thicker$/,
  ],
  // a pilot as high as the plate ends with it: (20 − 5)/2
  [
    'motor-opening',
    OUTER,
    { machine: { opening: 20 }, motor: { pilot_height: 6 }, plate: { thickness: 6 } },
    7.5,
    /^a shaft of 5 mm in an opening of 20 mm$/,
  ],
  ['machine-wall', MOUNTED, { machine: { opening: 78 } }, 1.176, /^1.18 mm between its holes and a bore of 78 mm$/],
  // M4 in a sheet of 3 mm: three quarters of a diameter, a nut has 0.8
  ['machine-thread', MOUNTED, { machine: { bare: 'tapped', thickness: 4 } }, 1, /^M4 in 4 mm of thread$/],
  [
    'machine-thread',
    MOUNTED,
    { machine: { bare: 'tapped', thickness: 3 } },
    0.75,
    /^M4 in 3 mm of thread; put nuts behind it \(machine.bare: clear\), or take a smaller screw$/,
  ],
  // an insert for M4 is 8 mm long
  ['insert-room', ADAPTED, { plate: { thickness: 8 } }, 0, /^an insert for M4, 8 mm long, in a bore of 5.6 mm$/],
  ['insert-room', ADAPTED, { plate: { thickness: 7 } }, -1, /5.6 mm; make the plate thicker/],
  ['slots', BELTED, {}, 4, /^4 mm each way along x$/],
  ['slots', MOUNTED, { slots: { along: 'y', by: 3 } }, 3, /^3 mm each way along y: a motor on a coupling/],
  ['wall', SIX, {}, 6, /^thickness: 6 mm, [\d.]+ lines$/],
  ['wall', SIX, { limits: { wall: { min: 6 } } }, 6, /lines$/],
  // 33.7 − 30 − 4.5/2
  ['wall', SIX, { plate: { length: 67.4 } }, 1.45, /^machine hole and edge: 1.45 mm, [\d.]+ lines; make the plate/],
  // the pilot's hole of a frame 23 reaches 19.2 mm from the axis, the holes of a frame 17 stand 21.92 from it wherever they are turned
  ['wall', ONTO_17, WIDE, 0.72, /^pilot and machine hole: 0.72 mm, .*; no turn of machine.holes .*: take two plates/],
  // pockets of 6.18 mm on a square of 22.8 and bores of 4 mm on one of 31, on one diagonal: 8.2/√2 − 3.09 − 2
  [
    'wall',
    ONTO_17,
    { motor: { square: 22.8 } },
    0.708,
    /^motor hole and machine hole: .*; turned by 45° they stand apart: machine.holes.start$/,
  ],
  [
    'machine-position',
    MOUNTED,
    { machine: { holes: { screw: undefined, rectangle: [120, 120], diameter: 20 } } },
    undefined,
    /^no listed bolt/,
  ],
  // slots of 5.05 mm for M5
  [
    'machine-position',
    BELTED,
    { machine: { holes: { diameter: 5.05, fit: undefined } } },
    undefined,
    /across the slots/,
  ],
  ['head-seat', SIX, { machine: { holes: { diameter: 9.2 } } }, undefined, /washer on the machine's holes/],
  // no listed screw goes through 1 mm
  [
    'head-seat',
    SIX,
    { machine: { holes: { screw: undefined, diameter: 1 } } },
    undefined,
    /^not judged: machine.holes.screw is missing$/,
  ],
  // 65 − 42
  ['heat', SIX, {}, 23, /at the motor's face/],
  // 20 N of load and 3 of the motor; 3 N · 40/2; that and 20 N · 24
  ['plate-bending', LOADED, {}, undefined, /the load goes into the motor: 23 N along and 0 N·mm across/],
  ['plate-bending', ADAPTED, {}, undefined, /the motor hangs on the plate: 0 N along and 60 N·mm across/],
  ['plate-bending', BELTED, {}, undefined, /0 N along and 540 N·mm across/],
  ['plate-bending', LOADED, { duty: { load: 900 }, plate: { thickness: 4 } }, undefined, /make the plate thicker/],
  ['plate-slope', LOADED, { duty: { load: 300 }, plate: { thickness: 3 } }, undefined, /; a thicker plate leans less/],
  ['plate-slope', SIX, {}, undefined, /at 42 °C; half of the [\d.]+° that the coupling takes is left for it$/],
  // 15.5·√2 = 21.92 mm; the machine's 42.43 mm and larger screws hold three times as much
  [
    'slip',
    SIX,
    {},
    (0.15 * (4 * clamped(M3) - 3) * 21.92) / 400,
    /^the motor's screws hold by 147 N of friction at 21.9 mm against 400 N·mm$/,
  ],
  ['slip', SIX, { limits: { slip: { min: 20 } } }, undefined, /against 400 N·mm; take larger screws/],
  // √(35² + 30²) = 46.10 mm by washers over slots, where the motor's screws hold 3222/(400 + 23·21.92) = 3.57 times
  [
    'slip',
    BELTED,
    {},
    (0.15 * 4 * clamped(M5_SLOT) * 46.1) / (400 + 23 * 46.1),
    /^the screws to the machine hold by 103 N of friction at 46.1 mm against 400 N·mm and a belt of 20 N and a motor of 3 N$/,
  ],
  ['slip', BELTED, { belt_pull: 60 }, undefined, /belt of 60 N and a motor of 3 N; take larger screws/],
  ['slip', BELTED, { belt_pull: 200 }, undefined, /a motor of 3 N: it slides along its slots; take larger screws/],
  // one screw has no distance from itself, and no other one to catch the plate
  [
    'slip',
    MOUNTED,
    { machine: { holes: { rectangle: undefined, at: [[0, 40]], screw: 'M6' } } },
    0,
    /^the screws to the machine hold by \d+ N of friction at 0 mm against .*: it turns about its only screw; give it a second screw$/,
  ],
  // holes about (6, −2): √(34² + 28²) = 44.05 mm, and the belt pulls 6.32 mm aside of their middle
  [
    'slip',
    BELTED,
    ASIDE,
    (0.15 * 4 * clamped(M5_SLOT) * 44.05) / (400 + 23 * (44.05 + 6.32)),
    /^the screws to the machine hold by 103 N of friction at 44 mm /,
  ],
  // a load of 500 N and 3 N of motor pull on four screws of 246 N
  ['slip', LOADED, { duty: { load: 500 } }, (0.15 * (4 * clamped(M3) - 503) * 21.92) / 400, /^the motor's screws/],
  [
    'slip',
    LOADED,
    { duty: { load: 5000 } },
    0,
    /^the motor's screws hold by 0 N of friction at 21.9 mm against 400 N·mm; take larger/,
  ],
  // 2,000 N·mm turn the motor on its screws first, and 4,000 the plate along its slots too, which fails
  [
    'slip',
    BELTED,
    { motor: { torque: '2 N m' } },
    (0.15 * 4 * clamped(M3) * 21.92) / (2000 + 23 * 21.92),
    /^the motor's screws .* a motor of 3 N; take larger/,
  ],
  [
    'slip',
    BELTED,
    { motor: { torque: '4 N m' } },
    (0.15 * 4 * clamped(M5_SLOT) * 46.1) / (4000 + 23 * 46.1),
    /^the screws to the machine .* a motor of 3 N: it slides along its slots; take larger/,
  ],
  // stalled on Tr8x2, 2·400/(7·0.143385) N
  [
    'motor-thrust',
    LOADED,
    { screw: 'Tr8x2' },
    undefined,
    /; that it bears a jam, up to 797 N for a moment, is assumed/,
  ],
  // an insert fills its bore: M4 has 4.5 mm in the machine, however narrow holes of the plate come out
  [
    'machine-position',
    ADAPTED,
    { printer: { compensation: 'none', hole_offset: '0.3 mm' } },
    undefined,
    /; half the play is 0\.25 mm/,
  ],
  // M3x8 in a plate of 7.5 mm and its washer has no thread, and M3x10 stands on the ground
  ['screw-engagement', SIX, thick(7.5, 2), undefined, /^no usual M3 has thread below 8 mm and ends above the ground/],
  // the plate has no 5 mm to lose either: M5 sunk 5 mm in 7.9
  [
    'screw-engagement',
    BIG,
    { plate: { thickness: 7.9 } },
    undefined,
    /ground of its hole; make the plate 0.1 mm thicker for M5x8$/,
  ],
  // 60.5 + 3 − 30 are more than half of it
  [
    'screw-engagement',
    SIX,
    thick(60),
    undefined,
    /^no usual M3 has thread below 60.5 mm and ends above the ground of its hole$/,
  ],
  // the machine's bolts are not known: the motor's alone are judged
  ['slip', MOUNTED, UNKNOWN, (0.15 * (4 * clamped(M3) - 3) * 21.92) / 400, /^the motor's screws/],
  // 23 − 15.5 − 3.5
  ['head-room', SIX, { ...beside(0, 30), plate: { length: 46, width: 80 } }, 4, /^washers of 9 mm/],
  // sunk heads, pilot of 34.3: 26 − 17.15 − 4.5
  [
    'head-room',
    SIX,
    {
      ...beside(0, 26),
      motor_heads: 'sunk',
      motor: { pilot: '34 ± 0.02 mm' },
      fit: { pilot: 0.3 },
      plate: { thickness: 8 },
    },
    4.35,
    /^washers of 9 mm/,
  ],
  // inserts have no washers: 21.92 − 11.15 − 3.5
  ['head-room', OUTER, { machine: { joint: 'insert' }, fit: { pilot: 0.3 } }, 7.27, /^washers of 7 mm to the motor$/],
  ['head-room', MOUNTED, { ...UNKNOWN, fit: { pilot: 0.3 } }, 7.27, /^washers of 7 mm/],
  // 8.5 − 1.7 − 4.5: behind the plate the machine's washers meet no washers, only the motor's holes
  [
    'head-room',
    OUTER,
    {
      plate: { length: 80, width: 80 },
      machine: {
        holes: {
          rectangle: undefined,
          at: [
            [24, 15.5],
            [-24, -15.5],
          ],
        },
      },
    },
    2.3,
    /^washers/,
  ],
  // from the motor's side into threads of a machine that lies beyond: 12.516 − 4.5
  ['motor-room', OUTER, { machine: { bare: 'tapped' } }, 8.016, /^washers of 9 mm beside a body of 42.3 mm$/],
  // a washer of 10 mm on 5.5; that of M3 has 1.8 mm around 3.4 mm
  [
    'head-seat',
    MOTOR_PLATES['largest motor']!,
    { motor_heads: 'proud', machine: { holes: { screw: 'M3' }, joint: 'insert', bare: undefined } },
    1.8,
    /^the washer on the machine's holes, 7 mm across, bears on a ring 1.8 mm wide/,
  ],
  // into inserts: washers of 9 mm lie on the machine's own holes, as they were measured
  [
    'head-seat',
    OUTER,
    { machine: { joint: 'insert', holes: { screw: 'M4', diameter: '9.6 ± 0.05 mm' } } },
    -0.3,
    /^the washer on the machine's holes, 9 mm across, falls through a hole of 9\.6 mm; use larger screws/,
  ],
  ['wall', SIX, { printer: { line_width: 0.5 } }, 6, /^thickness: 6 mm, 12 lines$/],
  // M3 in 3.4 mm and in at least 3.2 mm of the motor's own face: 0.2 + 0.1 mm of play
  ['hole-position', SIX, { motor: { thread_depth: undefined, flange: 5 } }, undefined, /; half the play is 0\.3 mm$/],
  ['hole-position', SIX, {}, undefined, /; half the play is 0\.2 mm$/],
  // sunk 3 mm in 8: no washer, M3x8 has 3 mm below 5
  ['screw-engagement', SIX, { motor_heads: 'sunk', ...thick(8) }, 3, /^M3x8 through 5 mm has 3 mm of thread/],
  // M3 of 30 mm is the longest: it ends in a plate of 30 mm, and 30.5 + 3 − 30 thinner it holds
  [
    'screw-engagement',
    SIX,
    thick(30),
    undefined,
    /^no usual M3 has thread below 30.5 mm .*; make the plate 3.5 mm thinner$/,
  ],
  // M5 sunk 5 mm in 7, holes of 5.5 mm take 5 mm at most: M5x8 stands on the ground below 2 mm, and the plate has no 5 mm to lose
  [
    'screw-engagement',
    BIG,
    {},
    undefined,
    /^no usual M5 has thread below 2 mm and ends above the ground of its hole; make the plate 1 mm thicker for M5x8$/,
  ],
  // 12 − 4 − 6.5, and 12 − 4 − 7: thinner gains nothing
  [
    'screw-engagement',
    SIX,
    { limits: { 'screw-engagement': { min: 3.8 } } },
    3.5,
    /deep; make the plate 1.5 mm thicker for M3x12$/,
  ],
  [
    'screw-engagement',
    SIX,
    { ...thick(6.5), limits: { 'screw-engagement': { min: 3.2 } } },
    3,
    /deep; make the plate 1 mm thicker for M3x12$/,
  ],
  // the near end of a slot: 35 − 4 − 21.15 and 30 − 21.15, √(9.85² + 8.85²) − 5
  ['motor-room', BELTED, {}, 8.242, /^washers of 10 mm/],
  ['heat', SIX, { motor: { temperature: 60 } }, 5, /less motor current/],
  ['plate-slope', LOADED, { motor: { temperature: 90 } }, undefined, /is soft .*: it leans without end$/],
];

describe('what checks of a motor plate say', () => {
  it.each(SAID)('%s (case %#)', (id, base, changes, value, words) => {
    const finding = found(id, base, changes)!;
    expect(finding.message).toMatch(words);
    if (value !== undefined) expect(finding.value).toBeCloseTo(value, 2);
  });

  it('lets the motor’s heads stand over the pilot’s hole by no more than their own washers are wider, 0.75 mm of M3', () => {
    // √½·31 − 38.58/2 − 3.5; M4 to the machine might stand over by 1 mm
    const wide = found('head-room', SIX, { motor: { pilot: '38.28 ± 0.02 mm' }, fit: { pilot: 0.3 } })!;
    expect(wide.value).toBeCloseTo(-0.87, 2);
    expect(wide).toMatchObject({ verdict: 'fail', fail_limit: { min: -0.75 } });
  });

  it('lets screws have what the hole takes and no more', () => {
    const allowed = (depth: number) => found('screw-engagement', SIX, thick(4.5, depth))!.limit;
    // M3: 3 mm are wanted, 0.5 mm are kept from the ground
    expect(allowed(4.5)).toEqual({ min: 3, max: 4 });
    expect(allowed(3.5)).toEqual({ min: 3, max: 3 });
    expect(allowed(3.4)).toEqual({ min: 3 });
  });

  it('holds washers to the machine to their own heads where the motor’s are sunk, M4 of 7 to 9 mm', () => {
    const sunk = { motor_heads: 'sunk', plate: { thickness: 8 } };
    expect(found('head-room', SIX, sunk)!.fail_limit).toEqual({ min: -1 });
  });

  // what a plate does not have is not asked about
  it.each<[string, object, Tree]>([
    ['shaft-left', BELTED, {}],
    ['heads-clear', MOUNTED, {}],
    ['motor-thrust', BELTED, {}],
    ['plate-slope', BELTED, {}],
    ['insert-room', MOUNTED, {}],
    ['machine-thread', MOUNTED, {}],
    ['machine-thread', ADAPTED, {}],
    ['machine-thread', MOUNTED, { machine: { bare: 'tapped', holes: { screw: undefined, diameter: 20 } } }],
    ['motor-room', ADAPTED, {}],
    ['motor-opening', MOUNTED, {}],
    ['motor-opening', OUTER, { machine: { opening: undefined } }],
    ['motor-opening', OUTER, { motor: { shaft: undefined } }],
    ['machine-wall', MOUNTED, {}],
    ['motor-room', MOUNTED, { machine: { bare: 'tapped' } }],
    ['slots', MOUNTED, {}],
    ['motor-room', MOUNTED, UNKNOWN],
    ['head-room', ADAPTED, {}],
    ['bolt-clamp', MOUNTED, UNKNOWN],
  ])('%s asks nothing (case %#)', (id, base, changes) => {
    expect(found(id, base, changes)).toBeUndefined();
  });

  it.each<[string, object, Tree, readonly string[]]>([
    ['shaft-left', MOUNTED, { hub_depth: undefined }, ['hub_depth']],
    ['shaft-left', MOUNTED, { motor: { shaft: { length: undefined } } }, ['motor.shaft.length']],
    [
      'shaft-left',
      MOUNTED,
      { motor: { shaft: { length: undefined } }, hub_depth: undefined },
      ['motor.shaft.length', 'hub_depth'],
    ],
    ['slip', MOUNTED, { motor: { torque: undefined } }, ['motor.torque']],
    ['slip', BELTED, { motor: { torque: undefined } }, ['motor.torque']],
    ['slip', BELTED, { belt_pull: undefined }, ['belt_pull']],
    ['plate-slope', LOADED, { coupling: undefined, coupling_angle: undefined }, ['coupling']],
    ['motor-stall', LOADED, { screw: 'Tr8x2', motor: { torque: undefined } }, ['motor.torque']],
    ['plate-slope', LOADED, { motor: { weight: undefined } }, ['motor.weight']],
    ['slip', LOADED, { motor: { weight: undefined } }, ['motor.weight']],
    ['bolt-clamp', LOADED, { motor: { weight: undefined } }, ['motor.weight']],
    ['bolt-clamp-motor', LOADED, { motor: { weight: undefined } }, ['motor.weight']],
    ['plate-bending', LOADED, { motor: { weight: undefined } }, ['motor.weight']],
    ['motor-room', MOUNTED, { motor: { body: undefined } }, ['motor.body']],
    ['heads-clear', OUTER, { machine: { opening: undefined } }, ['machine.opening']],
    [
      'motor-opening',
      OUTER,
      { machine: { opening: undefined }, motor: { pilot_height: 6.5 }, plate: { thickness: 6 } },
      ['machine.opening'],
    ],
  ])('%s names what it misses, and that alone (case %#)', (id, base, changes, fields) => {
    expect(found(id, base, changes)).toMatchObject({ word: 'not-told', missing: fields });
  });

  it.each(['plate-bending', 'bolt-clamp', 'bolt-clamp-motor'])(
    '%s fails without its weight where the stall alone breaks it',
    (id) => {
      // 10 N·m on Tr8x2: 16.3 kN
      const strong = { screw: 'Tr8x2', motor: { weight: undefined, torque: '10 N m' } };
      expect(found(id, LOADED, strong)).toMatchObject({ verdict: 'fail', word: 'no' });
    },
  );
});

it('counts what a printed hole may come out off under washers, not what a drilled one is', () => {
  const ring = (joint: string) =>
    findingOf(changed(OUTER, { machine: { joint, holes: { screw: 'M4', diameter: '8.2 ± 0 mm' } } }), 'head-seat')!;
  // (9 − 8.2)/2 mm either way
  expect(ring('through').value).toBeCloseTo(0.4, 2);
  expect(ring('through').uncertainty).toBeGreaterThan(0);
  expect(ring('insert')).toMatchObject({ value: expect.closeTo(0.4, 9), uncertainty: 0 });
});
