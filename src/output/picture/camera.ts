import { cosd, sind } from '../../solid/angles.js';

/** A direction or a point [mm]. */
export type Vector = readonly [number, number, number];

/** Where a part is looked at from, without perspective. */
export interface Camera {
  /** to the right of the picture, upwards, and towards the viewer: unit vectors square to each other */
  readonly right: Vector;
  readonly up: Vector;
  readonly toViewer: Vector;
}

/**
 * A camera by its place on the sphere.
 *
 * @param azimuth   where the viewer stands, seen from +Z, counter-clockwise from +X [degrees]
 * @param elevation how high, from −90 below to 90 above                             [degrees]
 * @returns the three directions of the picture
 * @example cameraAt(-90, 0).toViewer // [0, -1, 0]
 */
export function cameraAt(azimuth: number, elevation: number): Camera {
  const [ca, sa, ce, se] = [cosd(azimuth), sind(azimuth), cosd(elevation), sind(elevation)];
  return {
    right: [-sa + 0, ca + 0, 0],
    up: [-se * ca + 0, -se * sa + 0, ce],
    toViewer: [ce * ca + 0, ce * sa + 0, se + 0],
  };
}

/** Scalar product. */
export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
