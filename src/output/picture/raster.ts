import type { Mesh } from '../../solid/mesh.js';
import { creasedNormals } from '../mesh/creased-normals.js';
import { blend, cleared, ink, layTogether, newLayer, type PaintLayer } from './band.js';
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
/** Fine rows that are painted at a time, so that what is written to stays near the processor. */
const BAND = 96;
const KEY: Vector = normal([-0.45, 0.65, 0.75]);
const FILL: Vector = normal([0.8, -0.1, 0.45]);
/** Distance between the lines of a hatched cut, and their width, in fine pixels. */
const HATCH = { every: 14, width: 3 };

/** Where a translucent face lies on a solid one within this, the solid one shows, mm. */
const TOUCHING = 0.02;

/**
 * Paints bodies without a browser or a graphics card: depth buffer, smooth shading, two lights, edges inked where the
 * depth jumps. Where the section plane has opened a body, its inside is met first: those pixels are the cut face, and
 * are hatched.
 *
 * @returns four bytes a pixel (red, green, blue, alpha), row by row from the top
 */
export function paint(scene: Scene): Uint8Array {
  const [width, height] = [scene.width * OVERSAMPLE, scene.height * OVERSAMPLE];
  const framing = framingOf(scene, width, height);
  const bodies = scene.bodies.map((body) => projected(body, scene, framing));
  const isCut = scene.section !== undefined;
  const layer = () => newLayer(width, BAND + 2, isCut);
  const layers: Layers = { solid: layer(), ...(isCut ? { own: layer() } : {}), glass: layer() };
  const pixels = new Uint8Array(4 * scene.width * scene.height);
  for (let top = 0; top < height; top += BAND) {
    const bottom = Math.min(height, top + BAND);
    // a row more on either side, since edges are found between neighbours
    const band = paintBand(bodies, layers, [Math.max(0, top - 1), Math.min(height, bottom + 1)], framing.scale);
    shrinkInto(pixels, band, top, bottom);
  }
  return pixels;
}

/** Memory that one band after the other is painted in. */
interface Layers {
  readonly solid: PaintLayer;
  /** for one body by itself, where a section opens them */
  readonly own?: PaintLayer;
  readonly glass: PaintLayer;
}

function paintBand(
  bodies: readonly Projected[],
  layers: Layers,
  [top, bottom]: readonly [number, number],
  scale: number,
): PaintLayer {
  const solid = cleared(layers.solid, top, bottom);
  for (const body of bodies.filter(({ opacity }) => opacity === 1)) {
    // squeezed bodies stand in one another, so each finds its own cut face before they are laid together
    const layer = layers.own ? cleared(layers.own, top, bottom) : solid;
    drawBody(body, layer, undefined);
    if (layer !== solid) layTogether(solid, layer);
  }
  ink(solid, scale);
  for (const body of bodies.filter(({ opacity }) => opacity < 1)) {
    const layer = cleared(layers.glass, top, bottom);
    drawBody(body, layer, solid);
    ink(layer, scale);
    blend(solid, layer, body.opacity);
  }
  return solid;
}

/** From millimetres to fine pixels. */
interface Framing {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function framingOf({ bodies, camera }: Scene, width: number, height: number): Framing {
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

/** A body as the camera sees it. */
interface Projected extends Painted {
  /** column, row, nearness and distance beyond the section plane of each corner */
  readonly flat: Float64Array;
  /** brightness of each corner of each facet */
  readonly shades: Float32Array;
  /** share of the section plane's normal that points to the viewer; undefined where the body stays whole */
  readonly slope: number | undefined;
}

function projected(body: Painted, { camera, section }: Scene, framing: Framing): Projected {
  const plane = body.cut ? section : undefined;
  return {
    ...body,
    flat: flattened(body.mesh.positions, camera, framing, plane),
    shades: shadesOf(body.mesh, camera),
    slope: plane && dot(plane.normal, camera.toViewer),
  };
}

/** Both lights go with the viewer; seen from the part they shine from here. */
function shadesOf(mesh: Mesh, camera: Camera): Float32Array {
  const normals = creasedNormals(mesh);
  const [first, second] = [inWorld(KEY, camera), inWorld(FILL, camera)];
  const shades = new Float32Array(normals.length / 3);
  for (let i = 0, at = 0; i < shades.length; i++, at += 3) {
    const x = normals[at]!;
    const y = normals[at + 1]!;
    const z = normals[at + 2]!;
    const bright = Math.max(0, x * first[0] + y * first[1] + z * first[2]);
    const dim = Math.max(0, x * second[0] + y * second[1] + z * second[2]);
    shades[i] = 0.46 + 0.52 * bright + 0.2 * dim;
  }
  return shades;
}

function drawBody(body: Projected, layer: PaintLayer, behind: PaintLayer | undefined): void {
  const { flat, slope } = body;
  const { triangles } = body.mesh;
  for (let i = 0; i < triangles.length; i += 3) {
    const a = 4 * triangles[i]!;
    const b = 4 * triangles[i + 1]!;
    const c = 4 * triangles[i + 2]!;
    const ay = flat[a + 1]!;
    const by = flat[b + 1]!;
    const cy = flat[c + 1]!;
    if (Math.max(ay, by, cy) < layer.top || Math.min(ay, by, cy) > layer.bottom) continue;
    const area = (flat[b]! - flat[a]!) * (cy - ay) - (flat[c]! - flat[a]!) * (by - ay);
    // rows run downwards, so a facet that faces the viewer has a negative area
    if (area === 0 || (area > 0 && slope === undefined)) continue;
    fill(body, i, area, layer, behind);
  }
}

/** A direction of the picture as one of the part. */
function inWorld([x, y, z]: Vector, { right, up, toViewer }: Camera): Vector {
  const axis = (i: 0 | 1 | 2) => x * right[i] + y * up[i] + z * toViewer[i];
  return [axis(0), axis(1), axis(2)];
}

/** Column, row, nearness and distance beyond the section plane of each corner. */
function flattened(p: Float64Array, { right, up, toViewer }: Camera, framing: Framing, cut: SectionPlane | undefined) {
  const flat = new Float64Array((4 * p.length) / 3);
  const n = cut?.normal ?? [0, 0, 0];
  for (let i = 0, to = 0; i < p.length; i += 3, to += 4) {
    const x = p[i]!;
    const y = p[i + 1]!;
    const z = p[i + 2]!;
    flat[to] = framing.x + framing.scale * (x * right[0] + y * right[1] + z * right[2]);
    flat[to + 1] = framing.y - framing.scale * (x * up[0] + y * up[1] + z * up[2]);
    flat[to + 2] = x * toViewer[0] + y * toViewer[1] + z * toViewer[2];
    flat[to + 3] = x * n[0] + y * n[1] + z * n[2] - (cut?.at ?? 0);
  }
  return flat;
}

/** Fills one facet, whose corners begin at `first`; one with a positive area is seen from inside, and is cut face. */
function fill(body: Projected, first: number, area: number, layer: PaintLayer, behind: PaintLayer | undefined): void {
  const { flat, slope, shades, mesh, colour, cutColour } = body;
  const { width, top, bottom } = layer;
  const a = 4 * mesh.triangles[first]!;
  const b = 4 * mesh.triangles[first + 1]!;
  const c = 4 * mesh.triangles[first + 2]!;
  const ax = flat[a]!;
  const ay = flat[a + 1]!;
  const bx = flat[b]!;
  const by = flat[b + 1]!;
  const cx = flat[c]!;
  const cy = flat[c + 1]!;
  const az = flat[a + 2]!;
  const bz = flat[b + 2]!;
  const cz = flat[c + 2]!;
  const as = flat[a + 3]!;
  const bs = flat[b + 3]!;
  const cs = flat[c + 3]!;
  const ashade = shades[first]!;
  const bshade = shades[first + 1]!;
  const cshade = shades[first + 2]!;
  const isInside = area > 0;
  const paint = isInside ? cutColour : colour;
  const highest = Math.max(top, Math.ceil(Math.min(ay, by, cy) - 0.5));
  const lowest = Math.min(bottom - 1, Math.floor(Math.max(ay, by, cy) - 0.5));
  const left = Math.max(0, Math.ceil(Math.min(ax, bx, cx) - 0.5));
  const right = Math.min(width - 1, Math.floor(Math.max(ax, bx, cx) - 0.5));
  // the shares of the corners change evenly along a row
  const du = (by - cy) / area;
  const dv = (cy - ay) / area;
  const dw = -du - dv;
  for (let row = highest; row <= lowest; row++) {
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
      const at = (row - top) * width + column;
      if (depth <= layer.depth[at]! || (behind !== undefined && depth <= behind.seen[at]! + TOUCHING)) continue;
      layer.depth[at] = depth;
      layer.seen[at] = isInside && slope ? depth - beyond / slope : depth;
      const hatched = isInside && (row + column) % HATCH.every < HATCH.width;
      const shade = isInside ? (hatched ? 0.72 : 1) : u * ashade + v * bshade + w * cshade;
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

/** Writes the mean of each square of fine pixels into the picture, from one row of the fine picture up to another. */
function shrinkInto(pixels: Uint8Array, band: PaintLayer, top: number, bottom: number): void {
  const { colour: fine, width } = band;
  const row = 4 * width;
  const across = width / OVERSAMPLE;
  for (let y = top / OVERSAMPLE; y < bottom / OVERSAMPLE; y++) {
    for (let x = 0; x < across; x++) {
      const at = (OVERSAMPLE * y - band.top) * row + 4 * OVERSAMPLE * x;
      const a = fine[at + 3]!;
      const b = fine[at + 7]!;
      const c = fine[at + row + 3]!;
      const d = fine[at + row + 7]!;
      const alpha = a + b + c + d;
      const to = 4 * (y * across + x);
      pixels[to + 3] = alpha / 4;
      if (alpha === 0) continue;
      for (let k = 0; k < 3; k++) {
        const sum = a * fine[at + k]! + b * fine[at + 4 + k]! + c * fine[at + row + k]! + d * fine[at + row + 4 + k]!;
        pixels[to + k] = sum / alpha;
      }
    }
  }
}

function normal([x, y, z]: Vector): Vector {
  const length = Math.hypot(x, y, z);
  return [x / length, y / length, z / length];
}
