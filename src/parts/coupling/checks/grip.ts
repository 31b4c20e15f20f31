import { type Check, told } from '../../../judge/check.js';
import { fastenerThread } from '../../../standards/fasteners/sizes.js';
import { plain } from '../../../units/format.js';
import { heldChecks } from '../../common/held-checks.js';
import type { CouplingDesign } from '../dimensions.js';

/** What holds for every body that holds a shaft. */
export const holdingChecks: readonly Check<CouplingDesign>[] = heldChecks<CouplingDesign>(
  ({ hubs, demand, retighten, reversing, material, printer }) =>
    hubs.length === 0
      ? undefined
      : {
          held: hubs.map(({ name, finished, ...hub }) => {
            const { slit, ...body } = finished;
            const closed = slit && { width: slit.width, length: slit.to, web: true };
            return { ...body, ...(closed ? { slit: closed } : {}), ...hub, name: name.replace('-', ' ') };
          }),
          demand,
          retighten,
          reversing,
          material,
          printer,
        },
  { outside: 'hubs.outside_diameter', holds: ['motor_hub', 'screw_hub'] },
);

/** Set screws in plastic. */
export const setScrewGrip: Check<CouplingDesign> = {
  id: 'set-screw',
  group: 'grip',
  question: 'holds',
  source: 'common practice',
  title: 'Set screws',
  unit: '',
  moves: 'motor_hub.grip, screw_hub.grip',
  run: ({ hubs }) => {
    const alone = hubs.find(({ grip: { setScrew, clamp } }) => setScrew && !clamp);
    if (!alone?.grip.setScrew) return undefined;
    const share = fastenerThread(alone.grip.setScrew).diameter / alone.shaft.diameter.likely;
    return told(
      'caution',
      `a set screw of ${plain(share, 2)} shaft diameters marks the shaft and works loose with shock; a clamp holds better`,
    );
  },
};
