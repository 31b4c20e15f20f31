import type { PageBody, PageData } from '../../src/output/page/page-data.js';
import type { Mesh } from '../../src/solid/mesh.js';

/** The part as the page carries it. */
export function readData(): PageData | undefined {
  const text = document.getElementById('part-data')?.textContent;
  return text ? (JSON.parse(text) as PageData) : undefined;
}

/** Corners and facets of a body, from their bytes. */
export function meshOf(body: PageBody): Mesh {
  const positions = new Float32Array(bytesOf(body.positions));
  const bytes = bytesOf(body.triangles);
  const triangles = body.wide ? new Uint32Array(bytes) : Uint32Array.from(new Uint16Array(bytes));
  return { positions: Float64Array.from(positions), triangles };
}

function bytesOf(base64: string): ArrayBuffer {
  const text = atob(base64);
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < bytes.length; i++) bytes[i] = text.charCodeAt(i);
  return bytes.buffer;
}
