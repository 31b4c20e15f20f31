/** Edges on a sheet, mm, y downwards. */
export interface Edges {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A sheet lying, with its frame and its title block. */
export interface Paper {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly frame: Edges;
  readonly title: Edges;
}

/**
 * Sheets by name: 20 mm to bind on the left, 10 mm elsewhere; a title block of 180 mm low on the right.
 * @source iso-5457, iso-7200
 */
export const PAPERS = { a4: paper('A4', 297, 210), a3: paper('A3', 420, 297) } as const;
export type PaperName = keyof typeof PAPERS;

function paper(name: string, width: number, height: number): Paper {
  const frame = { left: 20, top: 10, right: width - 10, bottom: height - 10 };
  return {
    name,
    width,
    height,
    frame,
    title: { left: frame.right - 180, top: frame.bottom - 40, right: frame.right, bottom: frame.bottom },
  };
}
