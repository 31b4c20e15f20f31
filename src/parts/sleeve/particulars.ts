import { plain } from '../../units/format.js';
import { appliedWords } from '../common/applied.js';
import { boreReach } from '../common/bore.js';
import { DRIVE_CAUTIONS } from '../common/cautions.js';
import { clampCareWords, counted, gripHardware, tighteningWords } from '../common/grip-hardware.js';
import type { Particulars } from '../part-kind.js';
import type { SleeveDesign } from './dimensions.js';

/** What to buy, how to print, and what to beware of. */
export function sleeveParticulars(design: SleeveDesign): Particulars {
  const { ends, finished, material, printer, form } = design;
  const tightening = new Set(ends.flatMap(({ grip }) => tighteningWords(grip, material) ?? []));
  const depths = ends.map(({ name }, i) => `${plain(finished.bores[i]!.depth, 1)} mm into the ${name}`).join(' and ');
  const rigid =
    'A rigid sleeve takes no misalignment: set the shafts in line with the sleeve loose, turn by hand, tighten last, and leave the far end of the screw free or lightly guided. Held at three places or more, the shafts fight one another.';
  return {
    hardware: counted(
      ends.flatMap(({ grip }, i) =>
        gripHardware({
          grip,
          outside: finished.outside,
          clamp: finished.clamps[i]!,
          far: boreReach(finished.bores[i]!.bore).far,
        }),
      ),
    ),
    cautions: [
      ...(form === 'clamp' ? [rigid, `Mark the shafts with a pen: they go ${depths}.`] : []),
      ...(form === 'bush'
        ? ['Put the slit of the bush under the slit of the hub that clamps it; under a set screw it is crushed.']
        : []),
      ...tightening,
      ...clampCareWords(
        ends.map(({ grip }) => grip),
        design,
      ),
      ...DRIVE_CAUTIONS,
    ],
    applied: appliedWords(material, printer),
    print: {
      face_up: form === 'clamp' ? 'standing, the thinner shaft below' : 'standing, either end',
      why: 'bores come out round, the stop closes at 45°, pockets are bridged',
      support: 'none',
    },
  };
}
