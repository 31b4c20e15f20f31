import { type Check, hard, soft, valued } from '../../fit/check.js';
import { preloadFromTorque, pressureUnderHead } from '../../mechanics/bolt/preload.js';
import { residualSpread } from '../../mechanics/print/residual-spread.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import { socketCapScrew } from '../../standards/fasteners/cap-screw.js';
import { clearanceHole } from '../../standards/fasteners/clearance-hole.js';
import { fastenerThread } from '../../standards/fasteners/sizes.js';
import { plain } from '../../units/format.js';
import { exactly, type Measured, plusMinus, scaled } from '../../units/measured.js';
import type { Shaft } from './bore.js';
import { bearingPressure, type Grip, gripOf } from './grip.js';
import { gripCure } from './grip-cure.js';
import { type HeldBody, heldWalls } from './hub-walls.js';
import { LEAST_WALL, thinnest } from './walls.js';

/** One shaft in the body that holds it, finished sizes. */
export interface Held extends HeldBody {
  /** such as `motor hub` */
  readonly name: string;
  readonly shaft: Shaft;
  readonly grip: Grip;
  readonly engagement: number;
  /** diametral, before the clamp closes */
  readonly clearance: number;
}

/** What the checks of held shafts look at. */
export interface HeldView {
  readonly held: readonly Held[];
  /** N·mm that each must hold */
  readonly torque: number;
  readonly material: Material;
  readonly printer: Printer;
}

/** Checks of everything that holds a shaft, whatever the part; the fields that move them are the part's own. */
export function heldChecks<Design>(viewOf: (design: Design) => HeldView | undefined, moves: string): Check<Design>[] {
  return [
    gripTorque,
    flatPressure,
    clampPressure,
    wall,
    shaftEngagement,
    boreRunout,
    toolAccess,
    headInside,
    printBridge,
  ].map(
    (check): Check<Design> => ({
      ...check,
      moves: `${check.moves}, ${moves}`,
      run: (design, limits) => {
        const view = viewOf(design);
        return view && check.run(view, limits);
      },
    }),
  );
}

type HeldCheck = Check<HeldView>;
const grip = { group: 'grip', question: 'holds', source: 'common practice' } as const;
const body = { group: 'body', question: 'holds', source: 'common practice' } as const;

/** A body that slips on its shaft. */
const gripTorque: HeldCheck = {
  ...grip,
  id: 'grip-torque',
  title: 'Torque that the weaker grip holds',
  unit: 'N·mm',
  moves: 'motor.torque, material',
  run: ({ held, torque, material }) => {
    const rows = held.map((one) => ({ one, holds: gripOf(one.grip, one.shaft, one.engagement, material) }));
    const { one, holds } = rows.reduce((a, b) => (b.holds.total < a.holds.total ? b : a));
    const { clamp } = one.grip;
    const parts = [
      ...(clamp ? [`${clamp.count} × ${clamp.screw} at ${plain(holds.preload, 0)} N ${plain(holds.clamp, 0)}`] : []),
      ...(holds.flats > 0 ? [`${one.shaft.key ? 'the key' : 'the flat'} ${plain(holds.flats, 0)}`] : []),
      ...(holds.setScrew > 0 ? [`the set screw ${plain(holds.setScrew, 0)}`] : []),
    ];
    const missing = holds.total < torque;
    const reach = missing ? `${plain(torque, 0)} N·mm cannot be reached: ` : '';
    const cure = missing ? `; ${gripCure({ ...one, torque, material })}` : '';
    return valued(
      exactly(holds.total),
      `${reach}the ${one.name} holds ${plain(holds.total, 0)} N·mm (${parts.join(', ')}) of ${plain(torque, 0)} N·mm, 1.5 × the motor's${cure}`,
      hard({ min: torque }),
    );
  },
};

/** A flat or a key that is crushed. */
const flatPressure: HeldCheck = {
  ...grip,
  id: 'flat-pressure',
  title: 'Pressure of a flat or key on its bore',
  unit: 'MPa',
  moves: 'motor.torque, material',
  run: ({ held, torque, material }) => {
    const allowed = bearingPressure(material);
    const rows = held.flatMap((one) => {
      const { flats, clamp, setScrew } = gripOf(one.grip, one.shaft, one.engagement, material);
      return flats === 0 ? [] : [{ one, pressure: (allowed * Math.max(0, torque - clamp - setScrew)) / flats }];
    });
    if (rows.length === 0) return undefined;
    const { one, pressure } = rows.reduce((a, b) => (b.pressure > a.pressure ? b : a));
    const words = `${plain(pressure, 1)} MPa in the ${one.name} of ${plain(allowed, 1)} MPa`;
    return valued(exactly(pressure), words, hard({ max: allowed }));
  },
};

/** A screw that is tightened into the plastic. */
const clampPressure: HeldCheck = {
  ...grip,
  id: 'clamp-pressure',
  title: 'Pressure under the heads of the clamp screws',
  unit: 'MPa',
  moves: 'material',
  run: ({ held, material }) => {
    const pressures = held.flatMap(({ grip: { clamp, tightening } }) => {
      if (!clamp || tightening === undefined) return [];
      const preload = preloadFromTorque({ torque: tightening, diameter: fastenerThread(clamp.screw).diameter });
      const { headDiameter } = socketCapScrew(clamp.screw);
      return [pressureUnderHead({ preload, headDiameter, holeDiameter: clearanceHole(clamp.screw, 'medium') })];
    });
    if (pressures.length === 0) return undefined;
    const pressure = Math.max(...pressures);
    const allowed = bearingPressure(material);
    const cure = pressure > allowed ? '; the head sinks in: tighten less' : '';
    return valued(exactly(pressure), `${plain(pressure, 1)} MPa of ${plain(allowed, 1)} MPa${cure}`, {
      pass: { max: allowed },
      fail: { max: material.compressive * 1.5 },
    });
  },
};

/** A thin wall splits. */
const wall: HeldCheck = {
  ...body,
  id: 'wall',
  title: 'Least wall beside bores, pockets and slits',
  unit: 'mm',
  moves: 'printer.nozzle',
  run: ({ held, printer }) => {
    const walls = held.flatMap((one) =>
      heldWalls(one).map(({ where, size }) => ({ where: `${one.name}, ${where}`, size })),
    );
    const { where, size } = thinnest(walls);
    const cure = size < LEAST_WALL ? '; a larger outside gives it room' : '';
    return valued(exactly(size), `${plain(size, 2)} mm: ${where}${cure}`, {
      pass: { min: Math.max(LEAST_WALL, 4 * printer.nozzle) },
      fail: { min: LEAST_WALL },
    });
  },
};

/** Shafts that end short slip and split the body. */
const shaftEngagement: HeldCheck = {
  ...body,
  id: 'shaft-engagement',
  title: 'Engaged length, in shaft diameters',
  unit: '',
  limits: hard({ min: 1.5 }),
  moves: 'motor.shaft.length, shaft.length',
  run: ({ held }, { pass: { min = 0 } }) => {
    const rows = held.map((one) => ({ one, ratio: one.engagement / one.shaft.diameter.likely }));
    const { one, ratio } = rows.reduce((a, b) => (b.ratio < a.ratio ? b : a));
    const cure = ratio < min ? '; the shaft must reach further in, or the bore be longer' : '';
    return valued(exactly(ratio), `${plain(one.engagement, 1)} mm in the ${one.name}${cure}`);
  },
};

/** A bore that is pulled to one side wobbles. */
const boreRunout: HeldCheck = {
  ...body,
  id: 'bore-runout',
  question: 'turns',
  title: 'Eccentricity of the shaft',
  unit: 'mm',
  limits: soft({ max: 0.1 }),
  moves: 'bore_clearance',
  run: ({ held }) => {
    const spread = residualSpread('pa').holeOffset;
    const offsets = held.map(({ clearance, shaft }): Measured => {
      const half = spread + (shaft.diameter.most - shaft.diameter.likely);
      return scaled(plusMinus(Math.max(0, clearance), half), 0.5);
    });
    const worst = offsets.reduce((a, b) => (b.most > a.most ? b : a));
    return valued(worst, `half of the bore clearance, ${plain(worst.likely)} mm to one side`);
  },
};

/** A key must find its screw. */
const toolAccess: HeldCheck = {
  ...body,
  id: 'tool-access',
  question: 'goes-on',
  title: 'Room around the heads of the clamp screws',
  unit: 'mm',
  limits: hard({ min: 0.2 }),
  moves: 'printer',
  trifle: true,
  run: ({ held }) => {
    const rows = held.flatMap(({ clamp }) => (clamp ? [clamp] : []));
    if (rows.length === 0) return undefined;
    const room = Math.min(...rows.map(({ head, screw }) => head - socketCapScrew(screw).headDiameterKnurled));
    const keys = [...new Set(rows.map(({ screw }) => `${plain(socketCapScrew(screw).key)} mm for ${screw}`))];
    return valued(exactly(room), `straight in from the side with a key of ${keys.join(', ')}`);
  },
};

/** Nothing may stick out of a turning body. */
const headInside: HeldCheck = {
  ...body,
  id: 'head-inside',
  question: 'turns',
  title: 'Heads and screw ends under the outline',
  unit: 'mm',
  limits: hard({ min: 0 }),
  moves: 'outside diameter',
  trifle: true,
  run: ({ held }) => {
    const rooms = held.flatMap(({ clamp, outside }) => {
      if (!clamp) return [];
      const { headDiameterKnurled, headHeight } = socketCapScrew(clamp.screw);
      const head = Math.hypot(clamp.offset + headDiameterKnurled / 2, clamp.headSeat + headHeight);
      const end = Math.hypot(clamp.offset + clamp.hole / 2, clamp.screwLength - clamp.headSeat);
      return [outside / 2 - Math.max(head, end)];
    });
    if (rooms.length === 0) return undefined;
    const room = Math.min(...rooms);
    return valued(exactly(room), `they keep ${plain(room, 2)} mm inside it, so that it catches nothing when it turns`);
  },
};

/** Roofs that are printed over air. */
const printBridge: HeldCheck = {
  ...body,
  group: 'print',
  id: 'print-bridge',
  question: 'prints',
  title: 'Widest bridge',
  unit: 'mm',
  limits: soft({ max: 10 }),
  moves: 'clamp screws',
  run: ({ held }) => {
    const bridges = held.flatMap(({ slit, clamp, setScrew }) => [
      ...(slit ? [slit.width] : []),
      ...(clamp ? [clamp.nut / Math.sqrt(3), clamp.head * (Math.SQRT2 - 1)] : []),
      ...(setScrew?.slot ? [setScrew.slot.thickness] : []),
    ]);
    if (bridges.length === 0) return undefined;
    const widest = Math.max(...bridges);
    return valued(exactly(widest), `${plain(widest, 2)} mm, printed without support; round roofs close at 45°`);
  },
};
