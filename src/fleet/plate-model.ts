import { leanOf } from '../output/on-bed.js';
import { decimal } from '../output/threemf/decimal.js';
import { MODEL_HEAD, materialsXml, metadata, objectXml } from '../output/threemf/model-xml.js';
import { packThreeMf } from '../output/threemf/write-threemf.js';
import { VERSION } from '../output/version.js';
import { xmlText } from '../output/xml-text.js';
import { type Mesh, placementMatrix } from '../solid/mesh.js';
import { weld } from '../solid/weld.js';
import type { PlacedPiece, Plate } from './plates.js';

/**
 * A plate as 3MF: each body once, and an item a piece where it lies on the bed.
 *
 * @param plate the pieces, all of one material
 * @param title what the plate is called
 * @param meshes the bodies by their keys, as read from their files
 * @returns the file; the same bytes each time
 * @source 3mf-core: core specification 1.3, build items and their transforms
 */
export function plateModel({ material, pieces }: Plate, title: string, meshes: ReadonlyMap<string, Mesh>): Uint8Array {
  const bodies = [...new Set(pieces.map(({ body }) => body))];
  const objects = bodies.map((key, i) => {
    const name = key
      .split('/')
      .at(-1)!
      .replace(/\.stl$/, '');
    return objectXml({ ...weld(meshes.get(key)!), name, material }, i + 2, 0);
  });
  const model = [
    MODEL_HEAD,
    metadata('Title', title),
    metadata('Application', `leadwright ${VERSION}`),
    '<resources>\n',
    materialsXml([material]),
    ...objects,
    '</resources>\n<build>\n',
    ...pieces.map((piece) => itemXml(piece, bodies.indexOf(piece.body) + 2)),
    '</build>\n</model>\n',
  ];
  return packThreeMf(model.join(''));
}

/** Rows of the transform are what x, y, z and 1 become: the columns of a placement. */
function itemXml({ label, turnOver, turned, move }: PlacedPiece, id: number): string {
  const m = placementMatrix({ ...leanOf({ turn_over: turnOver }), turn: turned ? 90 : 0, by: move });
  const transform = [0, 1, 2, 3].flatMap((column) => [0, 4, 8].map((row) => decimal(m[row + column]!))).join(' ');
  return `<item objectid="${id}" transform="${transform}" partnumber="${xmlText(label)}"/>\n`;
}
