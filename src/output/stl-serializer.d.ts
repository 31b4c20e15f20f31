// The binary writer of @jscad/stl-serializer, taken by file, so that the mesh goes through it unchanged.

declare module '@jscad/stl-serializer/CSGToStlb.js' {
  interface Polygon {
    readonly vertices: readonly (readonly [number, number, number])[];
    /** normal and distance; worked out of the corners where it is missing */
    readonly plane?: readonly [number, number, number, number];
  }
  interface Solid {
    polygons: Polygon[];
    transforms: number[];
  }
  interface Options {
    statusCallback?: (state: { progress: number }) => void;
  }
  /** header, facet count, and 50 bytes a facet */
  export function serializeBinary(objects: Solid[], options: Options): ArrayBuffer[];
}
