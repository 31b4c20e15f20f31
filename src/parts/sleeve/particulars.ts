import { plain } from '../../units/format.js';
import { appliedWords } from '../common/applied.js';
import { boreReach } from '../common/bore.js';
import { crackCautions, DRIVE_CAUTIONS } from '../common/cautions.js';
import {
  clampCareWords,
  counted,
  gripHardware,
  PAINT,
  PREVAILING,
  tighteningWords,
  WASH,
} from '../common/grip-hardware.js';
import { putIn } from '../common/mounting.js';
import type { HardwareRow, Mounting, Particulars } from '../part-kind.js';
import type { SleeveDesign } from './dimensions.js';

/** What to buy, how to print, and what to beware of. */
export function sleeveParticulars(design: SleeveDesign): Particulars {
  const { ends, material, printer, form } = design;
  return {
    hardware: gripRows(design),
    mounting: mountingOf(design),
    cautions: [
      ...(form === 'clamp' ? [RIGID, depthWords(design)] : []),
      ...(form === 'bush' ? [SLITS] : []),
      ...tightenAll(design),
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

const RIGID =
  'A rigid sleeve takes no misalignment: set the shafts in line with the sleeve loose, turn by hand, tighten last, and leave the far end of the screw free or lightly guided. Held at three places or more, the shafts fight one another.';
const SLITS = 'Put the slit of the bush under the slit of the hub that clamps it; under a set screw it is crushed.';

/** In the order of work. */
function mountingOf(design: SleeveDesign): Mounting {
  const { material, form } = design;
  if (form === 'bush')
    return {
      put: [
        ...crackCautions(material),
        'Wash shaft, bush and hub free of grease.',
        'Push the bush onto the thinner shaft, then the hub over it.',
        SLITS,
      ],
      settle: [],
    };
  return {
    put: [
      ...crackCautions(material, PREVAILING),
      WASH,
      ...putIn(gripRows(design), 'Put in loosely'),
      depthWords(design),
      RIGID,
      ...tightenAll(design),
      PAINT,
    ],
    settle: [],
  };
}

function gripRows({ ends, finished: { outside, clamps, bores } }: SleeveDesign): HardwareRow[] {
  return counted(
    ends.flatMap(({ grip }, i) =>
      gripHardware({ grip, outside, clamp: clamps[i]!, far: boreReach(bores[i]!.bore).far }),
    ),
  );
}

/** How hard, once for ends that are alike. */
function tightenAll({ ends, material }: SleeveDesign): string[] {
  return [...new Set(ends.flatMap(({ grip }) => tighteningWords(grip, material)))];
}

function depthWords({ ends, finished }: SleeveDesign): string {
  const depths = ends.map(({ name }, i) => `${plain(finished.bores[i]!.depth, 1)} mm into the ${name}`).join(' and ');
  return `Mark the shafts with a pen: they go ${depths}.`;
}
