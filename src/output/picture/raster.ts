import type { Mesh } from '../../solid/mesh.js';
import { creasedNormals } from '../mesh/creased-normals.js';
import { blend, type Columns, cleared, ink, layTogether, newLayer, type PaintLayer } from './band.js';
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

/** A facet's side runs through the middle of a pixel that it passes this closely, in fine pixels. */
const TOUCHED = 1e-9;
/** Facets of a smaller area, seen on their edge, show nothing that their neighbours do not, in fine pixels. */
const LEAST_AREA = 1e-6;
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
  const layer = (met: readonly Projected[]) => newLayer(width, BAND + 2, columnsOf(met, width), isCut);
  const solids = bodies.filter(isSolid);
  const layers: Layers = {
    solid: layer(bodies),
    ...(isCut ? { own: layer(solids) } : {}),
    glass: layer(bodies.filter((body) => !isSolid(body))),
  };
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
  for (const body of bodies.filter(isSolid)) {
    // squeezed bodies stand in one another, so each finds its own cut face before they are laid together
    const layer = layers.own ? cleared(layers.own, top, bottom) : solid;
    drawBody(body, layer, undefined);
    if (layer !== solid) layTogether(solid, layer);
  }
  ink(solid, scale);
  for (const body of bodies.filter((one) => !isSolid(one))) {
    const layer = cleared(layers.glass, top, bottom);
    drawBody(body, layer, solid);
    ink(layer, scale);
    blend(solid, layer, body.opacity);
  }
  return solid;
}

function isSolid({ opacity }: Painted): boolean {
  return opacity === 1;
}

/** Columns that bodies are met in. */
function columnsOf(bodies: readonly Projected[], width: number): Columns {
  let [from, to] = [width, 0];
  for (const { flat } of bodies) {
    for (let at = 0; at < flat.length; at += 4) {
      from = Math.min(from, Math.floor(flat[at]!));
      to = Math.max(to, Math.ceil(flat[at]!));
    }
  }
  return { from: Math.max(0, Math.min(from, to)), to: Math.min(width, to) };
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
    if (Math.abs(area) < LEAST_AREA || (area > 0 && slope === undefined)) continue;
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
  const depth0 = flat[a + 2]!;
  const beyond0 = flat[a + 3]!;
  const shade0 = shades[first]!;
  // what the corners tell changes evenly: so much a column and so much a row from the first of them on
  const depthB = flat[b + 2]! - depth0;
  const depthC = flat[c + 2]! - depth0;
  const beyondB = flat[b + 3]! - beyond0;
  const beyondC = flat[c + 3]! - beyond0;
  const shadeB = shades[first + 1]! - shade0;
  const shadeC = shades[first + 2]! - shade0;
  const depthX = (depthB * (cy - ay) - depthC * (by - ay)) / area;
  const depthY = (depthC * (bx - ax) - depthB * (cx - ax)) / area;
  const beyondX = (beyondB * (cy - ay) - beyondC * (by - ay)) / area;
  const beyondY = (beyondC * (bx - ax) - beyondB * (cx - ax)) / area;
  const shadeX = (shadeB * (cy - ay) - shadeC * (by - ay)) / area;
  const shadeY = (shadeC * (bx - ax) - shadeB * (cx - ax)) / area;
  const isInside = area > 0;
  const [red, green, blue] = isInside ? cutColour : colour;
  const highest = Math.max(top, Math.ceil(Math.min(ay, by, cy) - 0.5));
  const lowest = Math.min(bottom - 1, Math.floor(Math.max(ay, by, cy) - 0.5));
  const left = Math.max(0, Math.min(ax, bx, cx));
  const right = Math.min(width, Math.max(ax, bx, cx));
  const alongAb = (bx - ax) / (by - ay);
  const alongBc = (cx - bx) / (cy - by);
  const alongCa = (ax - cx) / (ay - cy);
  for (let row = highest; row <= lowest; row++) {
    const y = row + 0.5;
    // sides that run downwards bound a facet that faces the viewer on the left
    let from = left;
    let to = right;
    if (by !== ay) {
      if (by > ay === isInside) to = Math.min(to, ax + (y - ay) * alongAb);
      else from = Math.max(from, ax + (y - ay) * alongAb);
    }
    if (cy !== by) {
      if (cy > by === isInside) to = Math.min(to, bx + (y - by) * alongBc);
      else from = Math.max(from, bx + (y - by) * alongBc);
    }
    if (ay !== cy) {
      if (ay > cy === isInside) to = Math.min(to, cx + (y - cy) * alongCa);
      else from = Math.max(from, cx + (y - cy) * alongCa);
    }
    const start = Math.ceil(from - 0.5 - TOUCHED);
    const end = Math.floor(to - 0.5 + TOUCHED);
    const depthRow = depth0 + depthY * (y - ay);
    const beyondRow = beyond0 + beyondY * (y - ay);
    const shadeRow = shade0 + shadeY * (y - ay);
    for (let column = start; column <= end; column++) {
      const x = column + 0.5 - ax;
      const at = (row - top) * width + column;
      const depth = depthRow + depthX * x;
      if (depth <= layer.depth[at]! || (behind !== undefined && depth <= behind.seen[at]! + TOUCHING)) continue;
      const beyond = slope === undefined ? 0 : beyondRow + beyondX * x;
      if (beyond > 0) continue;
      layer.depth[at] = depth;
      layer.seen[at] = isInside && slope ? depth - beyond / slope : depth;
      const hatched = isInside && (row + column) % HATCH.every < HATCH.width;
      const shade = isInside ? (hatched ? 0.72 : 1) : shadeRow + shadeX * x;
      const to = 4 * at;
      layer.colour[to] = Math.min(255, red * shade);
      layer.colour[to + 1] = Math.min(255, green * shade);
      layer.colour[to + 2] = Math.min(255, blue * shade);
      layer.colour[to + 3] = 255;
    }
  }
}

/** Writes the mean of each square of fine pixels into the picture, from one row of the fine picture up to another. */
function shrinkInto(pixels: Uint8Array, band: PaintLayer, top: number, bottom: number): void {
  const { colour: fine, width, columns } = band;
  const row = 4 * width;
  const across = width / OVERSAMPLE;
  const first = Math.floor(columns.from / OVERSAMPLE);
  const last = Math.ceil(columns.to / OVERSAMPLE);
  for (let y = top / OVERSAMPLE; y < bottom / OVERSAMPLE; y++) {
    for (let x = first; x < last; x++) {
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
