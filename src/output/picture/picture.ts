import { cosd, sind } from '../../solid/angles.js';
import type { Body, Mesh } from '../../solid/mesh.js';
import { place } from '../../solid/mesh.js';
import type { PartInHand } from '../part-in-hand.js';
import { cameraAt } from './camera.js';
import {
  BODY_COLOURS,
  bodyColour,
  COMPANION_COLOUR,
  COMPANION_CUT,
  COMPANION_OPACITY,
  CUT_COLOURS,
} from './palette.js';
import { writePng } from './png.js';
import { type Painted, paint, type SectionPlane } from './raster.js';

/** What a picture shows. */
export interface PictureOptions {
  readonly width: number;
  readonly height: number;
  /** the part whole, cut open along its axis, or pulled apart into its bodies */
  readonly show?: 'whole' | 'section' | 'apart';
  /** with the screw or the shafts; default true */
  readonly companions?: boolean;
}

/** Size of the picture that goes into the page and into the 3MF. */
const STILL = { width: 480, height: 360 };

type Seen = Pick<PartInHand, 'bodies' | 'views'>;

/** Where the viewer stands: to the right of the front, a little above. */
const ELEVATION = { whole: 32, section: 24, apart: 18 };

/**
 * Renders a part without a browser or a graphics card.
 *
 * @param part    bodies and views of a made part
 * @param options size in pixels, and what to show
 * @returns a PNG file with a transparent ground; the same bytes each time
 */
export function writePicture(part: Seen, options: PictureOptions): Uint8Array {
  const { width, height, show = 'whole', companions = true } = options;
  const towards = part.views.cutTowards;
  const section: SectionPlane | undefined =
    show === 'section' ? { normal: [sind(towards), -cosd(towards), 0], at: 0 } : undefined;
  const { azimuth, elevation } = viewFrom(part.views, show);
  const pixels = paint({
    bodies: [...bodiesOf(part, show === 'apart'), ...(companions && show !== 'apart' ? companionsOf(part) : [])],
    camera: cameraAt(azimuth, elevation),
    width,
    height,
    ...(section ? { section } : {}),
  });
  return writePng(pixels, width, height);
}

/** Where the viewer stands, so that the section opens towards him. [degrees] */
export function viewFrom(
  { cutTowards }: Pick<PartInHand['views'], 'cutTowards'>,
  show: NonNullable<PictureOptions['show']>,
): { readonly azimuth: number; readonly elevation: number } {
  return { azimuth: cutTowards - (show === 'section' ? 66 : 58), elevation: ELEVATION[show] };
}

/** The picture that page and 3MF share. */
export function stillPicture(part: Seen): Uint8Array {
  return writePicture(part, STILL);
}

function bodiesOf({ bodies, views }: Seen, apart: boolean): Painted[] {
  return bodies.map((body, i) => ({
    mesh: standing(body, views, apart),
    colour: bodyColour(i, BODY_COLOURS),
    cutColour: bodyColour(i, CUT_COLOURS),
    opacity: 1,
    cut: true,
  }));
}

/** A body where it stands in use, and from there pulled apart. */
function standing(body: Body, { inUse, apart }: PartInHand['views'], isApart: boolean): Mesh {
  const put = inUse?.[body.name];
  const mesh = put ? place(body, put) : body;
  const shift = isApart ? apart?.[body.name] : undefined;
  return shift ? place(mesh, { by: shift }) : mesh;
}

function companionsOf({ views }: Seen): Painted[] {
  return views.companions.map(({ mesh }) => ({
    mesh,
    colour: COMPANION_COLOUR,
    cutColour: COMPANION_CUT,
    opacity: COMPANION_OPACITY,
    cut: false,
  }));
}
