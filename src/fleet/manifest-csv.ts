import { rounded } from '../units/format.js';
import type { Cell } from './csv/write-csv.js';
import type { Manifest } from './manifest.js';

const COLUMNS = [
  'machine',
  'role',
  'part',
  'name',
  'quantity',
  'spare',
  'verdict',
  'file',
  'digest',
  'material',
  'printer',
  'mass_g',
  'x_mm',
  'y_mm',
  'z_mm',
  'reasons',
] as const;

/** The parts of a manifest as a table: a row a printable file; mass is of one, sizes are those around it. */
export function manifestTable({ parts }: Manifest): Cell[][] {
  const rows = parts.map((row): Cell[] => {
    const {
      machine,
      role,
      part,
      name,
      quantity,
      spare,
      verdict,
      file,
      digest,
      material,
      printer,
      mass,
      bounds,
      reasons,
    } = row;
    const sizes = [0, 1, 2].map((axis) => (bounds ? rounded(bounds[1][axis]! - bounds[0][axis]!, 3) : null));
    const told = reasons.join(' | ');
    return [
      machine,
      role,
      part,
      name,
      quantity,
      spare,
      verdict,
      file,
      digest,
      material,
      printer,
      mass === null ? null : rounded(mass, 3),
      ...sizes,
      told,
    ];
  });
  return [[...COLUMNS], ...rows];
}
