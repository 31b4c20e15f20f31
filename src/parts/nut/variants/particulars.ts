import { limitsInForce } from '../../../judge/limits-in-force.js';
import { plain } from '../../../units/format.js';
import { CATCH_FINDING, CATCH_OFFER } from '../../common/bought-nut.js';
import { putIn } from '../../common/mounting.js';
import type { HardwareRow, Mounting, Particulars, PrintAdvice } from '../../part-kind.js';
import type { NutDesign } from '../dimensions.js';
import { catchNut } from './checks.js';

/** What a family adds to what is said of a plain nut. */
export function withVariantWords(design: NutDesign, plainly: Particulars): Particulars {
  const advice = variantAdvice(design);
  const offer = catchNut.run(design, limitsInForce())?.message === CATCH_FINDING;
  const { fit, mounting, ...others } = plainly;
  return {
    ...others,
    ...(mounting ? { mounting: withVariantSteps(design, mounting) } : {}),
    ...(fit && design.family?.kind !== 'holder' ? { fit } : {}),
    hardware: [...plainly.hardware, ...variantHardware(design)],
    cautions: [...variantCautions(design), ...(offer ? [CATCH_OFFER] : []), ...plainly.cautions],
    ...(advice ? { print: advice } : {}),
  };
}

/** What a family is put together from comes before it is seated; a slit is closed last. */
function withVariantSteps(design: NutDesign, { put, settle }: Mounting): Mounting {
  const rows = variantHardware(design);
  if (design.family?.kind === 'clamped')
    return {
      put: [...put, ...putIn(rows, 'Through the slit, loosely')],
      settle: [...settle, ...variantCautions(design)],
    };
  return { put: [...putIn(rows, 'Have at hand'), ...variantCautions(design), ...put], settle };
}

function variantHardware({ family, catchPocket, screw, finished }: NutDesign): HardwareRow[] {
  const named = screw.designation ?? 'as the screw';
  const standing: HardwareRow[] = catchPocket ? [{ item: 'catch nut, metal', size: named, count: 1 }] : [];
  if (!family) return standing;
  switch (family.kind) {
    case 'holder':
      return [...standing, { item: `${family.pocket.shape} nut, metal`, size: named, count: 1 }];
    case 'anti-backlash': {
      const { inside, outside, free, rate } = family.spring;
      const size = `${plain(inside)} x ${plain(outside)} x ${plain(free)} mm, ${plain(rate)} N/mm`;
      return [...standing, { item: 'compression spring', size, count: 1 }];
    }
    case 'twin':
      return standing;
    case 'clamped':
      return [...standing, ...closing(family.clamp, 1)];
    case 'split': {
      const { diameter, length } = family.pins;
      const pins = { item: 'parallel pin', size: `${plain(diameter)}x${plain(length)}`, count: 2 };
      const ring = { item: 'hose clip', size: `for ${plain(finished.body.across)} mm`, count: 1 };
      return [...standing, pins, ...(family.clamp ? closing(family.clamp, 2) : [ring])];
    }
  }
}

function closing(
  { screw, screwLength }: { readonly screw: string; readonly screwLength: number },
  count: number,
): HardwareRow[] {
  return [
    { item: 'socket cap screw ISO 4762', size: `${screw}x${plain(screwLength)}`, count },
    { item: 'hexagon nut ISO 4032', size: screw, count },
  ];
}

function variantAdvice({ family, catchPocket, finished }: NutDesign): PrintAdvice | undefined {
  const bed = finished.flange ? 'flange face on the bed' : 'lower end on the bed';
  if (family?.kind === 'holder' && family.opens === 'face')
    return {
      face_up: 'lower end up, upper end on the bed (turn the file over)',
      why: 'the pocket then opens upwards',
      support: 'none',
    };
  if (family?.kind === 'anti-backlash')
    return {
      face_up: `main nut: body end up, ${bed}; follower: slots up (turn its file over)`,
      why: 'keys and slots then point upwards',
      support: 'none',
    };
  if (family?.kind === 'split')
    return {
      face_up: `body end up, ${bed}, each half standing`,
      why: 'the thread then lies in the layers, and the joint is a plain wall',
      support: 'none',
    };
  if (family?.kind !== 'twin' && (family || catchPocket))
    return { face_up: `body end up, ${bed}`, why: 'pocket or slit then opens upwards', support: 'none' };
  return undefined;
}

function variantCautions({ family, duty, catchPocket }: NutDesign): string[] {
  const lines: string[] = [];
  if (family?.kind === 'split')
    lines.push('Put the halves together on the screw with both pins in place, and close both screws evenly.');
  if (family?.kind === 'clamped')
    lines.push(
      'Close the slit only until the play is gone; turn the screw over its whole travel before running, and again when warm.',
    );
  if (family?.kind === 'twin')
    lines.push(
      family.shift > 0
        ? 'The upper thread is set off: turn the nut on by hand over the whole screw, and let it run in, before anything drives it.'
        : 'Both threads stand on one helix: turn the nut on by hand, the second must start without force.',
    );
  if (family?.kind === 'anti-backlash')
    lines.push(
      'Put the follower on with the spring pressed together, its slots over the keys; the spring then takes up play and wear.',
    );
  if (family?.kind === 'holder' && family.opens === 'end')
    lines.push('The pocket is open: the load must press the metal nut into it, or the nut must be glued in.');
  if (catchPocket && duty.axis !== 'vertical')
    lines.push('The catch nut catches in one direction only: towards the body end.');
  return lines;
}
