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
import { meltIn, putIn, withoutInserts } from '../common/mounting.js';
import type { HardwareRow, Mounting, Particulars } from '../part-kind.js';
import type { CouplingDesign } from './dimensions.js';

/** What to buy, how to print, and what to beware of. */
export function couplingParticulars(design: CouplingDesign): Particulars {
  const { hubs } = design;
  return {
    hardware: counted([...gripRows(design), ...padHardware(design)]),
    mounting: mountingOf(design),
    cautions: [
      ...boughtWords(design),
      ...hungWords(design),
      ...tightenAll(design),
      ...clampCareWords(
        hubs.map(({ grip }) => grip),
        design,
      ),
      ...depthWords(design),
      'Inspect the insert now and then: heat, misalignment and overload wear it, and a set insert shows as play. Without it the jaws still meet and turn, with play.',
      GUARD,
      ...DRIVE_CAUTIONS,
    ],
    ...(hubs.length === 0 ? insertAlone(design) : hubsAndInsert(design)),
  };
}

const GUARD = 'Guard the coupling: a turning hub draws in hair, cuffs and gloves.';

/** In the order of work: hubs on their shafts, what stands between them, in line, tight. */
function mountingOf(design: CouplingDesign): Mounting {
  const { hubs, material } = design;
  const rows = counted(gripRows(design));
  const isClamped = hubs.some(({ grip }) => grip.clamp);
  return {
    put: [
      ...(hubs.length > 0 ? crackCautions(material, ...(isClamped ? [PREVAILING] : [])) : []),
      ...boughtWords(design),
      ...(isClamped ? [WASH] : []),
      ...meltIn(rows),
      ...putIn(withoutInserts(rows), 'Put into the hubs, loosely'),
      ...depthWords(design),
      ...putIn(padHardware(design), 'Into the ring of the insert'),
      'Push the halves together, the insert between them: the tips of the jaws lead its lobes in.',
      ...hungWords(design),
      'Set the shafts in line by eye and by hand, turn them a few times, and then tighten.',
      ...tightenAll(design),
      ...(isClamped ? [PAINT] : []),
      GUARD,
    ],
    settle: [],
  };
}

function gripRows({ hubs }: CouplingDesign): HardwareRow[] {
  return hubs.flatMap(({ grip, finished }) => gripHardware({ grip, far: boreReach(finished.bore).far, ...finished }));
}

/** How hard, once for hubs that are alike. */
function tightenAll({ hubs, material }: CouplingDesign): string[] {
  return [...new Set(hubs.flatMap(({ grip }) => tighteningWords(grip, material)))];
}

function hungWords({ axial }: CouplingDesign): string[] {
  return axial.mounting === 'motor-above'
    ? ['A jaw coupling comes apart along its axis: it must never carry a hanging screw.']
    : [];
}

function hubsAndInsert({ insert, material, printer }: CouplingDesign): Pick<Particulars, 'applied' | 'print'> {
  return {
    applied: `${appliedWords(material, printer)}; insert: ${appliedWords(insert.material, insert.printer)}`,
    print: {
      face_up: 'hubs stand on their plain end, jaws up; the insert lies flat',
      why: 'bores come out round, the jaws need no support, pockets and slit are bridged; jaws bend across the layers, which is counted',
      support: 'none',
    },
  };
}

function insertAlone({ insert }: CouplingDesign): Pick<Particulars, 'applied' | 'print'> {
  return {
    applied: appliedWords(insert.material, insert.printer),
    print: {
      face_up: 'either face of the insert',
      why: 'its lobes are pressed along the layers, and nothing hangs over',
      support: 'none',
    },
  };
}

/** What a bought half must show before the insert is printed. */
function boughtWords({ skipped, hubs, gap }: CouplingDesign): string[] {
  if (skipped.length === 0) return [];
  const which = hubs.length === 0 ? 'Both hubs are bought' : 'One hub is bought';
  return [
    `${which}: print the insert first and push it into the jaws by hand; it must go in all round and sit on the floor.`,
    `Set the hubs so that the floors between their jaws are ${plain(gap, 1)} mm apart, so that no jaw meets the other hub.`,
  ];
}

function padHardware({ insert: { pad } }: CouplingDesign): HardwareRow[] {
  if (pad.kind === 'disc')
    return [{ item: 'steel disc', size: `${plain(pad.diameter)} x ${plain(pad.thickness)} mm`, count: 1 }];
  return pad.kind === 'ball' ? [{ item: 'steel ball', size: `${plain(pad.diameter)} mm`, count: 1 }] : [];
}

function depthWords({ hubs, insert: { pad } }: CouplingDesign): string[] {
  if (hubs.length === 0) return [];
  const depths = hubs
    .map(({ name, depth }) => `${plain(depth, 1)} mm into the ${name.replace('-', ' ')}`)
    .join(' and ');
  if (pad.kind === 'none') return [`Mark the shafts with a pen: they go ${depths}, as the notch on the outside shows.`];
  return [
    `Mark the shafts with a pen: they go ${depths}, so that both stand on the ${pad.kind === 'soft' ? 'insert' : pad.kind}.`,
  ];
}
