import { type DriveScrew, driveScrewOf } from '../../src/drive/screw.js';
import { parseDesignation } from '../../src/standards/threads/designation.js';

/** A screw by its designation. */
export function screw(designation: string): DriveScrew {
  return driveScrewOf(parseDesignation(designation));
}
