import { describe, expect, it } from 'vitest';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import { nutDrive } from '../../../src/parts/nut/drive.js';
import { design } from '../../../src/pipeline/design.js';
import { nutSheet } from '../../support/nut-sheets.js';

const exact = { designation: 'Tr10x2', major: '10 ± 0 mm', pitch: '2 ± 0 mm', pitch_diameter: '9 ± 0 mm' };
const made = () => design(nutSheet({ screw: exact })) as NutDesign;
const driven = (fit: { diametral: number; axial: number }, speedLimit = 100) => {
  const { screw, duty, material } = made();
  return nutDrive({ screw, fit: { ...made().fit, ...fit }, duty, material: { ...material, speedLimit } });
};

describe('the drive of a nut by hand', () => {
  it.each([
    [0.3, 0.1, 0.3 * Math.tan(Math.PI / 12) + 0.1],
    // an interference gives no play back
    [-0.1, 0.1, 0.1],
    [0.3, -0.1, 0.3 * Math.tan(Math.PI / 12)],
  ])('plays by c·tan 15° + a: %d and %d mm', (diametral, axial, play) => {
    expect(driven({ diametral, axial }).play!.axial).toBeCloseTo(play, 5);
  });

  it.each([
    [100, 100],
    [900, 500],
  ])('a plastic for %d mm/s slides at %d mm/s at most, over √(1 + (9π/2)²) mm a mm of travel', (limit, speed) => {
    const { sliding } = driven({ diametral: 0.3, axial: 0.1 }, limit).feed_limits!;
    expect(sliding).toBeCloseTo(speed / Math.hypot(1, (9 * Math.PI) / 2), 4);
  });
});
