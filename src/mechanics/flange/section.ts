import { fault } from '../../units/faults.js';
import { requirePositive } from '../../units/require.js';

/** A piece of a section: so wide, from one height to another. */
export interface SectionPiece {
  /** mm */
  readonly width: number;
  /** mm */
  readonly from: number;
  /** mm */
  readonly to: number;
}

/** What a section bends with. */
export interface Section {
  /** mm² */
  readonly area: number;
  /** about the level axis through its own middle, mm⁴ */
  readonly inertia: number;
  /** to the farther of its two faces, mm³ */
  readonly modulus: number;
}

/**
 * Area, second moment and modulus of a section put together of rectangles, about the level axis through its middle.
 *
 *     A = Σ b·h        e = Σ b·h·z / A        I = Σ (b·h³/12 + b·h·(z − e)²)        Z = I / max(top − e, e − bottom)
 *
 * @param pieces  its rectangles: width b, height h from one level to another, middle z  [mm]
 * @returns A [mm²], I [mm⁴], Z [mm³]; all 0 for no piece
 * @throws InputError  a piece has no width or no height
 * @source derived: parallel axes
 * @example sectionOf([{ width: 12, from: 0, to: 6 }]).modulus // 72
 */
export function sectionOf(pieces: readonly SectionPiece[]): Section {
  for (const { width, from, to } of pieces) {
    requirePositive('width', width);
    if (!(to > from)) throw fault('to', to, `must be above ${from}`);
  }
  if (pieces.length === 0) return { area: 0, inertia: 0, modulus: 0 };
  const areaOf = ({ width, from, to }: SectionPiece) => width * (to - from);
  const middleOf = ({ from, to }: SectionPiece) => (from + to) / 2;
  const area = total(pieces, areaOf);
  const middle = total(pieces, (piece) => areaOf(piece) * middleOf(piece)) / area;
  const inertia = total(
    pieces,
    (piece) => (piece.width * (piece.to - piece.from) ** 3) / 12 + areaOf(piece) * (middleOf(piece) - middle) ** 2,
  );
  const top = Math.max(...pieces.map(({ to }) => to));
  const bottom = Math.min(...pieces.map(({ from }) => from));
  return { area, inertia, modulus: inertia / Math.max(top - middle, middle - bottom) };
}

function total(pieces: readonly SectionPiece[], of: (piece: SectionPiece) => number): number {
  return pieces.reduce((sum, piece) => sum + of(piece), 0);
}
