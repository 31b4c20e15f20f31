import { LOOSE_WORDS } from '../../parts/common/bolting.js';
import type { Report } from '../report.js';

/** How a part goes into its place, in the order of work; what locks its screws is at hand before they go in. */
export function putSteps({ checks, mounting }: Pick<Report, 'checks' | 'mounting'>): string[] {
  if (!mounting) return [];
  const clamps = checks.filter(({ id }) => id.startsWith('bolt-clamp'));
  const loose = clamps.filter(({ message }) => message.includes(LOOSE_WORDS));
  const untold = clamps.filter(({ word }) => word === 'not-told');
  return [
    ...loose.map(({ title, message }) => `${title}: ${message}. ${LOCKS}`),
    ...untold.map(
      ({ title, missing = [] }) => `${title}: ${missing.join(' and ')} would tell whether they last. ${LOCKS}`,
    ),
    ...mounting.put,
  ];
}

const LOCKS =
  'Take prevailing-torque nuts, and screws one length longer for them; in threads, screws with a locking patch.';
