// The package says it is a module but names a script as its entry, which Node then reads as empty; so its module file is
// imported by its path, with what we use of its types.
declare module 'maxrects-packer/dist/maxrects-packer.mjs' {
  export interface Packed {
    width: number;
    height: number;
    x: number;
    y: number;
    rot?: boolean;
  }

  export interface Options {
    readonly smart?: boolean;
    readonly pot?: boolean;
    readonly square?: boolean;
    readonly allowRotation?: boolean;
  }

  export class MaxRectsPacker<T extends Packed> {
    constructor(width: number, height: number, padding: number, options: Options);
    readonly bins: readonly { readonly rects: readonly T[] }[];
    addArray(rectangles: readonly T[]): void;
  }
}
