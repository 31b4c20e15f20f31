import { STLLoader } from 'three/examples/jsm/loaders/STLLoader.js';
import { describe, expect, it } from 'vitest';
import { readStl } from '../../src/output/read-stl.js';
import { stlAbout } from '../../src/output/stl-about.js';
import { writeStl } from '../../src/output/write-stl.js';
import { measureMesh } from '../../src/solid/measure.js';
import type { Mesh } from '../../src/solid/mesh.js';

/** A tetrahedron by hand: corners at the origin and one step along each axis, so its volume is 1/6. */
const tetrahedron: Mesh = {
  positions: Float64Array.from([0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1]),
  triangles: Uint32Array.from([0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3]),
};

/** Facets as thin as a thread's: points that snapping to a grid would merge. */
function sliver(): Mesh {
  const positions = Float64Array.from(
    Float32Array.from([0, 0, 0, 10, 0, 0, 5, 1.3e-6, 0, 5, 3e-6, 10.123456, -0, 7.9999995, 0.1]),
  );
  return { positions, triangles: Uint32Array.from([0, 2, 1, 1, 2, 3, 0, 3, 2, 0, 1, 4]) };
}

describe('writeStl', () => {
  it('writes header, count and 50 bytes a facet', () => {
    const bytes = writeStl(tetrahedron);
    expect(bytes.length).toBe(84 + 50 * 4);
    expect(new TextDecoder().decode(bytes.subarray(0, 5))).not.toBe('solid');
    expect(new DataView(bytes.buffer).getUint32(80, true)).toBe(4);
  });

  it('says in its header what wrote it and what it holds, in 80 bytes of ASCII', () => {
    const header = (about?: string) => new TextDecoder('ascii').decode(writeStl(tetrahedron, about).subarray(0, 80));
    expect(header()).toBe('leadwright'.padEnd(80));
    expect(header('nut z-left mm, shrink: file, holes: none')).toBe(
      'leadwright nut z-left mm, shrink: file, holes: none'.padEnd(80),
    );
    expect(header('ä'.repeat(100))).toBe(`leadwright ${'?'.repeat(69)}`);
  });

  it('keeps unit and compensation in the header, however long the name is', () => {
    const compensation = { shrink: 'slicer', holes: 'slicer' } as const;
    const about = stlAbout({
      part: 'end-holder',
      file: `${'n'.repeat(64)}-body.stl`,
      printer: { layer: 0.2, lineWidth: 0.4, compensation },
    });
    const header = new TextDecoder().decode(writeStl(tetrahedron, about).subarray(0, 80));
    expect(header).toMatch(/^leadwright end-holder n{23}~ mm, shrink: slicer, holes: slicer *$/);
  });

  it('keeps every float32 of the mesh, in order', () => {
    const mesh = sliver();
    const read = readStl(writeStl(mesh));
    const wanted = [...mesh.triangles].flatMap((corner) => [...mesh.positions.slice(3 * corner, 3 * corner + 3)]);
    expect([...read.positions]).toEqual(wanted.map((value) => value + 0));
  });

  it('writes no negative zero, so that equal corners have equal bits', () => {
    expect([...readStl(writeStl(sliver())).positions].some((value) => Object.is(value, -0))).toBe(false);
  });

  it('reads the same by an independent loader', () => {
    const bytes = writeStl(tetrahedron);
    const geometry = new STLLoader().parse(bytes.slice().buffer);
    expect([...geometry.getAttribute('position').array]).toEqual([...readStl(bytes).positions]);
  });

  it('has outward unit normals', () => {
    const bytes = writeStl(tetrahedron);
    const normals = new STLLoader().parse(bytes.slice().buffer).getAttribute('normal').array;
    expect([...normals.slice(0, 3)].map((value) => value + 0)).toEqual([0, 0, -1]);
    for (let corner = 0; corner < normals.length; corner += 3) {
      expect(Math.hypot(normals[corner]!, normals[corner + 1]!, normals[corner + 2]!)).toBeCloseTo(1, 6);
    }
  });

  it('gives the same bytes each time', () => {
    expect(writeStl(tetrahedron)).toEqual(writeStl(tetrahedron));
  });

  it('reads back closed, of volume 1/6', () => {
    const measures = measureMesh(readStl(writeStl(tetrahedron)));
    expect(measures).toMatchObject({ facets: 4, openEdges: 0, shells: 1, repeatedVertexFacets: 0 });
    expect(measures.volume).toBeCloseTo(1 / 6, 12);
  });
});

describe('readStl', () => {
  it.each([
    ['cut short', writeStl(tetrahedron).slice(0, -1)],
    ['longer than its count', Uint8Array.from([...writeStl(tetrahedron), 0])],
    ['no header', new Uint8Array(10)],
  ])('refuses a file %s', (_, bytes) => {
    expect(() => readStl(bytes)).toThrow(RangeError);
  });
});
