import { type Check, hard, told, valued } from '../../../fit/check.js';
import { preloadFromTorque, pressureUnderHead } from '../../../mechanics/bolt/preload.js';
import { socketCapScrew } from '../../../standards/fasteners/cap-screw.js';
import { clearanceHole } from '../../../standards/fasteners/clearance-hole.js';
import { fastenerThread } from '../../../standards/fasteners/sizes.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { bearingPressure, gripOf } from '../../common/grip.js';
import { gripCure } from '../../common/grip-cure.js';
import type { CouplingDesign, Hub } from '../dimensions.js';

type CouplingCheck = Check<CouplingDesign>;
const grip = { group: 'grip', source: 'common practice' } as const;

function torqueOf(hub: Hub, { material }: CouplingDesign) {
  return gripOf(hub.grip, hub.shaft, hub.engagement, material);
}

/** A hub that slips. */
export const gripTorque: CouplingCheck = {
  ...grip,
  id: 'grip-torque',
  title: 'Torque that the weaker hub holds after creep',
  unit: 'N·mm',
  moves: 'motor.torque, motor_hub.clamp, screw_hub.clamp, hubs.outside_diameter, material',
  run: (design) => {
    const [weakest] = design.hubs
      .map((hub) => ({ hub, held: torqueOf(hub, design) }))
      .sort((a, b) => a.held.total - b.held.total);
    const { hub, held } = weakest!;
    const parts = [
      ...(hub.grip.clamp
        ? [`${hub.grip.clamp.count} × ${hub.grip.clamp.screw} at ${plain(held.preload, 0)} N ${plain(held.clamp, 0)}`]
        : []),
      ...(held.flats > 0 ? [`${hub.shaft.key ? 'the key' : 'the flat'} ${plain(held.flats, 0)}`] : []),
      ...(held.setScrew > 0 ? [`the set screw ${plain(held.setScrew, 0)}`] : []),
    ];
    const missing = held.total < design.torque;
    const cure = missing
      ? `; ${gripCure({ grip: hub.grip, shaft: hub.shaft, bore: hub.finished.bore, engagement: hub.engagement, outside: hub.finished.outside, torque: design.torque, material: design.material })}`
      : '';
    const reach = missing ? `${plain(design.torque, 0)} N·mm cannot be reached: ` : '';
    return valued(
      exactly(held.total),
      `${reach}the ${hub.name.replace('-', ' ')} holds ${plain(held.total, 0)} N·mm (${parts.join(', ')}) of ${plain(design.torque, 0)} N·mm, 1.5 × the motor's${cure}`,
      hard({ min: design.torque }),
    );
  },
};

/** A flat or a key that is crushed. */
export const flatPressure: CouplingCheck = {
  ...grip,
  id: 'flat-pressure',
  title: 'Pressure of a flat or key on its bore, for what the screws leave to it',
  unit: 'MPa',
  moves: 'motor.torque, motor_hub.length, motor_hub.clamp, material',
  run: (design) => {
    const allowed = bearingPressure(design.material);
    const pressures = design.hubs.flatMap((hub) => {
      const { flats, clamp, setScrew } = torqueOf(hub, design);
      if (flats === 0) return [];
      return [{ hub, pressure: (allowed * Math.max(0, design.torque - clamp - setScrew)) / flats }];
    });
    const worst = pressures.sort((a, b) => b.pressure - a.pressure)[0];
    if (!worst) return undefined;
    const { hub, pressure } = worst;
    return valued(
      exactly(pressure),
      `${plain(pressure, 1)} MPa in the ${hub.name.replace('-', ' ')} of ${plain(allowed, 1)} MPa`,
      hard({ max: allowed }),
    );
  },
};

/** A screw that is tightened into the plastic. */
export const clampPressure: CouplingCheck = {
  ...grip,
  id: 'clamp-pressure',
  title: 'Pressure under the head of a clamp screw at its tightening torque',
  unit: 'MPa',
  moves: 'motor_hub.tightening, screw_hub.tightening, material',
  run: (design) => {
    const pressures = design.hubs.flatMap(({ grip: { clamp, tightening } }) => {
      if (!clamp || tightening === undefined) return [];
      const preload = preloadFromTorque({ torque: tightening, diameter: fastenerThread(clamp.screw).diameter });
      const { headDiameter } = socketCapScrew(clamp.screw);
      return [pressureUnderHead({ preload, headDiameter, holeDiameter: clearanceHole(clamp.screw, 'medium') })];
    });
    if (pressures.length === 0) return undefined;
    const pressure = Math.max(...pressures);
    const allowed = bearingPressure(design.material);
    const cure = pressure > allowed ? '; the head sinks in: tighten less' : '';
    return valued(exactly(pressure), `${plain(pressure, 1)} MPa of ${plain(allowed, 1)} MPa${cure}`, {
      pass: { max: allowed },
      fail: { max: design.material.compressive * 1.5 },
    });
  },
};

/** Set screws in plastic. */
export const setScrewGrip: CouplingCheck = {
  ...grip,
  id: 'set-screw',
  title: 'Set screws in a printed hub',
  unit: '',
  moves: 'motor_hub.grip, screw_hub.grip',
  run: ({ hubs }) => {
    const alone = hubs.filter(({ grip: { setScrew, clamp } }) => setScrew && !clamp);
    if (alone.length === 0) return undefined;
    const { shaft, grip: held } = alone[0]!;
    const size = fastenerThread(held.setScrew!).diameter;
    const share = size / shaft.diameter.likely;
    return told(
      'caution',
      `a set screw of ${plain(share, 2)} shaft diameters marks the shaft and works loose with shock; a clamp holds better`,
    );
  },
};
