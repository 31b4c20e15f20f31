import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { isSimple } from '../common/polygon-distance.js';
import { cutoutsApart } from './cutouts.js';
import type { LayoutInput } from './layout.js';
import type { AdapterSheet } from './sheet.js';

/** Refuses what cannot be drawn; what is merely thin or tight is left to the checks. */
export function requireSense(sheet: AdapterSheet, input: LayoutInput): void {
  const { outline, outerStep, innerStep, catchPocket, thickness, bore, cutouts, relief } = input;
  const sunk = Math.max(outerStep?.depth ?? 0, catchPocket?.depth ?? 0) + (innerStep?.depth ?? 0);
  if (sunk > thickness - 0.8)
    throw fault(
      'plate.thickness',
      `${plain(thickness)} mm`,
      `must be at least ${plain(sunk + 0.8)} mm: the recesses go ${plain(sunk)} mm deep`,
    );
  for (const step of [outerStep, innerStep]) {
    if (step && step.diameter <= bore + 0.4)
      throw fault('plate.bore', `${plain(bore)} mm`, `must be below the recess around it, ${plain(step.diameter)} mm`);
  }
  if (catchPocket && bore > catchPocket.acrossFlats - 2)
    throw fault(
      'plate.bore',
      `${plain(bore)} mm`,
      `must be at most ${plain(catchPocket.acrossFlats - 2)} mm, so that the catch nut has a floor`,
    );
  if (catchPocket && outerStep) throw fault('register.nut', 'recess', 'must be none beside a catch nut');
  if (relief >= thickness / 2) throw fault('plate.relief', `${plain(relief)} mm`, 'must be below half the thickness');
  if (outline.shape === 'rectangular' && outline.corner > Math.min(...outline.size) / 2)
    throw fault('plate.outline.corner', `${plain(outline.corner)} mm`, 'must be at most half the shorter side');
  if (outline.shape === 'polygon' && !isSimple(outline.corners))
    throw fault('plate.outline.corners', '', 'must run around the plate without crossing or touching itself');
  if (outline.shape === 'polygon' && input.flats.length > 0)
    throw fault('plate.flats', '', 'do not belong to a polygon; draw them into its corners');
  if (sheet.carriage.room && !isSimple(sheet.carriage.room))
    throw fault('carriage.room', '', 'must run around the room without crossing or touching itself');
  if (cutoutsApart({ cutouts }) < 0.8)
    throw fault('plate.cutouts', '', 'must stay 0.8 mm apart; draw one in place of two');
}
