import { unzlibSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { cameraAt } from '../../src/output/picture/camera.js';
import { crc32, writePng } from '../../src/output/picture/png.js';
import { paint } from '../../src/output/picture/raster.js';
import { latheMesh } from '../../src/solid/lathe-mesh.js';

const cube = latheMesh({
  kind: 'lathe',
  sides: 4,
  circumscribed: true,
  turn: 45,
  contour: [
    [5, 0],
    [5, 10],
  ],
});
const tube = { colour: [200, 200, 200], cutColour: [250, 0, 0], opacity: 1, cut: true } as const;
const scene = { bodies: [{ mesh: cube, ...tube }], camera: cameraAt(-90, 0), width: 40, height: 40 };

describe('paint', () => {
  it('fills the square that a cube seen from the front is', () => {
    const pixels = paint(scene);
    const opaque = Array.from({ length: 1600 }, (_, i) => pixels[4 * i + 3]!).filter((alpha) => alpha > 127).length;
    // 90 % of the width and of the height of 40 pixels
    expect(opaque).toBe(36 * 36);
  });

  it('shows the cut face where a plane opens the cube', () => {
    const pixels = paint({ ...scene, section: { normal: [0, -1, 0], at: 0 } });
    const middle = 4 * (20 * 40 + 20);
    expect([pixels[middle]! > 150, pixels[middle + 1]]).toEqual([true, 0]);
  });

  it('paints the same twice', () => {
    expect(Buffer.from(paint(scene)).equals(Buffer.from(paint(scene)))).toBe(true);
  });
});

describe('writePng', () => {
  it('has the check value of the standard in its chunks', () => {
    // "123456789" has the check CBF43926: the catalogue value of this polynomial
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  });

  it('holds rows that add up to the pixels', () => {
    const pixels = Uint8Array.from([1, 2, 3, 255, 4, 5, 6, 255]);
    const bytes = writePng(pixels, 1, 2);
    const length = new DataView(bytes.buffer).getUint32(33);
    const rows = unzlibSync(bytes.slice(41, 41 + length));
    expect([...rows]).toEqual([2, 1, 2, 3, 255, 2, 3, 3, 3, 0]);
  });
});
