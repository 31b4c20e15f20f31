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
  /** how many times the letters of an A4 sheet its views and tables have */
  readonly lettering: number;
}

/**
 * Sheets by name: 20 mm to bind on the left, 10 mm elsewhere; a title block of 180 mm low on the right. Dimensions are
 * lettered 2.5 mm high on A4 and 3.5 mm on A3, and what goes with them, arrows and distances, grows as they do.
 * @source iso-5457, iso-7200, iso-3098
 */
export const PAPERS = { a4: paper('A4', 297, 210, 1), a3: paper('A3', 420, 297, 1.4) } as const;
export type PaperName = keyof typeof PAPERS;

function paper(name: string, width: number, height: number, lettering: number): Paper {
  const frame = { left: 20, top: 10, right: width - 10, bottom: height - 10 };
  return {
    name,
    width,
    height,
    frame,
    title: { left: frame.right - 180, top: frame.bottom - 40, right: frame.right, bottom: frame.bottom },
    lettering,
  };
}

/** The sheet as views and tables are laid out on it, in units in which their letters are as high as on A4. */
export function inLetters({ frame, title, lettering, ...paper }: Paper): Paper {
  const less = ({ left, top, right, bottom }: Edges): Edges => ({
    left: left / lettering,
    top: top / lettering,
    right: right / lettering,
    bottom: bottom / lettering,
  });
  return { ...paper, lettering, frame: less(frame), title: less(title) };
}
