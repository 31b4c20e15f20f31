import type { Mesh } from '../../solid/mesh.js';
import { creasedNormals } from '../mesh/creased-normals.js';
import { type Camera, dot, type Vector } from './camera.js';

/** Red, green and blue, 0 to 255. */
export type Colour = readonly [number, number, number];

/** A body as it is painted. */
export interface Painted {
  readonly mesh: Mesh;
  readonly colour: Colour;
  /** colour of the face where a section plane cuts it */
  readonly cutColour: Colour;
  /** 1 hides what is behind it */
  readonly opacity: number;
  /** false where the section plane leaves the body whole */
  readonly cut: boolean;
}

/** A plane that takes away what lies on the side its normal points to. */
export interface SectionPlane {
  readonly normal: Vector;
  /** distance of the plane from the origin along the normal [mm] */
  readonly at: number;
}

/** What is drawn, and how large. */
export interface Scene {
  readonly bodies: readonly Painted[];
  readonly camera: Camera;
  readonly width: number;
  readonly height: number;
  readonly section?: SectionPlane;
}

const MARGIN = 0.05;
const OVERSAMPLE = 2;
const KEY: Vector = normal([-0.45, 0.65, 0.75]);
const FILL: Vector = normal([0.8, -0.1, 0.45]);
/** Distance between the lines of a hatched cut, and their width, in fine pixels. */
const HATCH = { every: 14, width: 3 };

/** Fine pixels of one pass: colour and nearness, transparent where nothing was met. */
interface Layer {
  readonly colour: Uint8Array;
  readonly depth: Float32Array;
  /** the same, but for cut faces, which lie in the section plane; without a section it is `depth` itself */
  readonly seen: Float32Array;
}

/**
 * Paints bodies without a browser or a graphics card: depth buffer, smooth shading, two lights, edges inked where the
 * depth jumps. Where the section plane has opened a body, its inside is met first: those pixels are the cut face, and
 * are hatched.
 *
 * @returns four bytes a pixel (red, green, blue, alpha), row by row from the top
 */
export function paint(scene: Scene): Uint8Array {
  const [width, height] = [scene.width * OVERSAMPLE, scene.height * OVERSAMPLE];
  const fit = fitOf(scene, width, height);
  const isCut = scene.section !== undefined;
  const solid = emptyLayer(width, height, isCut);
  for (const body of scene.bodies.filter(({ opacity }) => opacity === 1)) {
    // squeezed bodies stand in one another, so each finds its own cut face before they are laid together
    const layer = isCut ? emptyLayer(width, height, isCut) : solid;
    drawBody(body, scene, fit, layer, undefined);
    if (layer !== solid) layTogether(solid, layer);
  }
  ink(solid, width, height, fit.scale);
  const glass = scene.bodies.filter(({ opacity }) => opacity < 1);
  for (const body of glass) {
    const layer = emptyLayer(width, height, isCut);
    drawBody(body, scene, fit, layer, solid);
    ink(layer, width, height, fit.scale);
    blend(solid, layer, body.opacity);
  }
  return shrunk(solid.colour, scene.width, scene.height);
}

function emptyLayer(width: number, height: number, isCut: boolean): Layer {
  const nothing = () => new Float32Array(width * height).fill(-Infinity);
  const depth = nothing();
  return { colour: new Uint8Array(4 * width * height), depth, seen: isCut ? nothing() : depth };
}

/** Keeps of each pixel what is seen nearest. */
function layTogether(under: Layer, over: Layer): void {
  for (let at = 0; at < under.seen.length; at++) {
    if (over.seen[at]! <= under.seen[at]!) continue;
    under.seen[at] = over.seen[at]!;
    under.depth[at] = over.depth[at]!;
    for (let i = 4 * at; i < 4 * at + 4; i++) under.colour[i] = over.colour[i]!;
  }
}

/** From millimetres to fine pixels. */
interface Fit {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function fitOf({ bodies, camera }: Scene, width: number, height: number): Fit {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  const [r, u] = [camera.right, camera.up];
  for (const { mesh } of bodies) {
    const p = mesh.positions;
    for (let i = 0; i < p.length; i += 3) {
      const x = p[i]! * r[0] + p[i + 1]! * r[1] + p[i + 2]! * r[2];
      const y = p[i]! * u[0] + p[i + 1]! * u[1] + p[i + 2]! * u[2];
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < low) low = y;
      if (y > high) high = y;
    }
  }
  const room = 1 - 2 * MARGIN;
  const scale = Math.min((room * width) / (right - left || 1), (room * height) / (high - low || 1));
  return {
    scale,
    x: width / 2 - (scale * (left + right)) / 2,
    y: height / 2 + (scale * (low + high)) / 2,
    width,
    height,
  };
}

function drawBody(body: Painted, { camera, section }: Scene, fit: Fit, layer: Layer, behind: Layer | undefined): void {
  const { positions, triangles } = body.mesh;
  const cut = body.cut ? section : undefined;
  const flat = projected(positions, camera, fit, cut);
  const normals = creasedNormals(body.mesh);
  const slope = cut && dot(cut.normal, camera.toViewer);
  // both lights go with the viewer; seen from the part they shine from here
  const [first, second] = [inWorld(KEY, camera), inWorld(FILL, camera)];
  const light = (at: number) => {
    const [x, y, z] = [normals[at]!, normals[at + 1]!, normals[at + 2]!];
    const bright = Math.max(0, x * first[0] + y * first[1] + z * first[2]);
    const dim = Math.max(0, x * second[0] + y * second[1] + z * second[2]);
    return 0.46 + 0.52 * bright + 0.2 * dim;
  };
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [4 * triangles[i]!, 4 * triangles[i + 1]!, 4 * triangles[i + 2]!];
    const area =
      (flat[b]! - flat[a]!) * (flat[c + 1]! - flat[a + 1]!) - (flat[c]! - flat[a]!) * (flat[b + 1]! - flat[a + 1]!);
    // rows run downwards, so a facet that faces the viewer has a negative area
    if (area === 0 || (area > 0 && !cut)) continue;
    const shades = area < 0 ? ([light(3 * i), light(3 * i + 3), light(3 * i + 6)] as const) : undefined;
    fill(flat, [a, b, c], area, shades, body, slope, fit, layer, behind);
  }
}

/** A direction of the picture as one of the part. */
function inWorld([x, y, z]: Vector, { right, up, toViewer }: Camera): Vector {
  const axis = (i: 0 | 1 | 2) => x * right[i] + y * up[i] + z * toViewer[i];
  return [axis(0), axis(1), axis(2)];
}

/** Column, row, nearness and distance beyond the section plane of each corner. */
function projected(p: Float64Array, { right, up, toViewer }: Camera, fit: Fit, cut: SectionPlane | undefined) {
  const flat = new Float64Array((4 * p.length) / 3);
  const n = cut?.normal ?? [0, 0, 0];
  for (let i = 0, to = 0; i < p.length; i += 3, to += 4) {
    const [x, y, z] = [p[i]!, p[i + 1]!, p[i + 2]!];
    flat[to] = fit.x + fit.scale * (x * right[0] + y * right[1] + z * right[2]);
    flat[to + 1] = fit.y - fit.scale * (x * up[0] + y * up[1] + z * up[2]);
    flat[to + 2] = x * toViewer[0] + y * toViewer[1] + z * toViewer[2];
    flat[to + 3] = x * n[0] + y * n[1] + z * n[2] - (cut?.at ?? 0);
  }
  return flat;
}

/**
 * Fills one facet. `shades` are undefined for a facet seen from inside; `slope` is the share of the section plane's
 * normal that points to the viewer, undefined without one.
 */
function fill(
  flat: Float64Array,
  [a, b, c]: readonly [number, number, number],
  area: number,
  shades: readonly [number, number, number] | undefined,
  { colour, cutColour }: Painted,
  slope: number | undefined,
  { width, height }: Fit,
  layer: Layer,
  behind: Layer | undefined,
): void {
  const [ax, ay, bx, by, cx, cy] = [flat[a]!, flat[a + 1]!, flat[b]!, flat[b + 1]!, flat[c]!, flat[c + 1]!];
  const first = Math.max(0, Math.ceil(Math.min(ay, by, cy) - 0.5));
  const last = Math.min(height - 1, Math.floor(Math.max(ay, by, cy) - 0.5));
  const left = Math.max(0, Math.ceil(Math.min(ax, bx, cx) - 0.5));
  const right = Math.min(width - 1, Math.floor(Math.max(ax, bx, cx) - 0.5));
  const [az, bz, cz, as, bs, cs] = [flat[a + 2]!, flat[b + 2]!, flat[c + 2]!, flat[a + 3]!, flat[b + 3]!, flat[c + 3]!];
  // the shares of the corners change evenly along a row
  const [du, dv] = [(by - cy) / area, (cy - ay) / area];
  const dw = -du - dv;
  for (let row = first; row <= last; row++) {
    const y = row + 0.5;
    const u0 = (bx * (cy - y) - cx * (by - y)) / area;
    const v0 = (cx * (ay - y) - ax * (cy - y)) / area;
    const w0 = 1 - u0 - v0;
    // thin facets leave most of their frame empty
    const start = Math.max(left, Math.floor(Math.max(entry(u0, du), entry(v0, dv), entry(w0, dw))) - 1);
    const end = Math.min(right, Math.ceil(Math.min(exit(u0, du), exit(v0, dv), exit(w0, dw))) + 1);
    for (let column = start; column <= end; column++) {
      const x = column + 0.5;
      const u = u0 + du * x;
      const v = v0 + dv * x;
      const w = 1 - u - v;
      if (u < 0 || v < 0 || w < 0) continue;
      const beyond = slope === undefined ? 0 : u * as + v * bs + w * cs;
      if (beyond > 0) continue;
      const depth = u * az + v * bz + w * cz;
      const at = row * width + column;
      if (depth <= layer.depth[at]! || (behind !== undefined && depth <= behind.seen[at]!)) continue;
      layer.depth[at] = depth;
      layer.seen[at] = shades || !slope ? depth : depth - beyond / slope;
      const paint = shades ? colour : cutColour;
      const hatched = shades === undefined && (row + column) % HATCH.every < HATCH.width;
      const shade = shades ? u * shades[0] + v * shades[1] + w * shades[2] : hatched ? 0.72 : 1;
      const to = 4 * at;
      layer.colour[to] = Math.min(255, paint[0] * shade);
      layer.colour[to + 1] = Math.min(255, paint[1] * shade);
      layer.colour[to + 2] = Math.min(255, paint[2] * shade);
      layer.colour[to + 3] = 255;
    }
  }
}

/** Where a share that changes evenly along a row becomes positive, if it does. */
function entry(at0: number, rate: number): number {
  return rate > 0 ? -at0 / rate : -Infinity;
}

/** Where it ceases to be positive, if it does. */
function exit(at0: number, rate: number): number {
  return rate < 0 ? -at0 / rate : Infinity;
}

/** Darkens pixels beside which the surface falls away: outlines and steps become readable. */
function ink({ colour, seen: depth }: Layer, width: number, height: number, scale: number): void {
  const step = 10 / scale;
  for (let row = 1; row < height - 1; row++) {
    for (let column = 1; column < width - 1; column++) {
      const at = row * width + column;
      const here = depth[at]!;
      if (here === -Infinity) continue;
      const across = Math.min(depth[at - 1]!, depth[at + 1]!);
      const down = Math.min(depth[at - width]!, depth[at + width]!);
      const beyond = here - Math.min(across, down);
      if (beyond < step) continue;
      // a steep flank falls evenly on both sides and is no edge
      const rise = Math.max(depth[at - 1]!, depth[at + 1]!, depth[at - width]!, depth[at + width]!) - here;
      if (rise > 0.6 * beyond) continue;
      for (let i = 0; i < 3; i++) colour[4 * at + i] = 0.45 * colour[4 * at + i]!;
    }
  }
}

function blend(under: Layer, over: Layer, opacity: number): void {
  for (let at = 0; at < under.colour.length; at += 4) {
    if (over.colour[at + 3] === 0) continue;
    const below = (1 - opacity) * (under.colour[at + 3]! / 255);
    const alpha = opacity + below;
    for (let i = 0; i < 3; i++) {
      under.colour[at + i] = (opacity * over.colour[at + i]! + below * under.colour[at + i]!) / alpha;
    }
    under.colour[at + 3] = 255 * alpha;
  }
}

/** The mean of each square of fine pixels. */
function shrunk(fine: Uint8Array, width: number, height: number): Uint8Array {
  const pixels = new Uint8Array(4 * width * height);
  const row = 4 * width * OVERSAMPLE;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = OVERSAMPLE * (y * row + 4 * x);
      const [a, b, c, d] = [fine[at + 3]!, fine[at + 7]!, fine[at + row + 3]!, fine[at + row + 7]!];
      const alpha = a + b + c + d;
      const to = 4 * (y * width + x);
      pixels[to + 3] = alpha / 4;
      if (alpha === 0) continue;
      for (let k = 0; k < 3; k++) {
        const sum = a * fine[at + k]! + b * fine[at + 4 + k]! + c * fine[at + row + k]! + d * fine[at + row + 4 + k]!;
        pixels[to + k] = sum / alpha;
      }
    }
  }
  return pixels;
}

function normal([x, y, z]: Vector): Vector {
  const length = Math.hypot(x, y, z);
  return [x / length, y / length, z / length];
}
