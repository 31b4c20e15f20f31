import { strToU8, type Zippable, zipSync } from 'fflate';
import type { PartInHand } from '../part-in-hand.js';
import { stillPicture } from '../picture/picture.js';
import { layBodies } from './lay-bodies.js';
import { modelXml } from './model-xml.js';

/** Times in a zip are local ones without a zone, so that this one reads the same everywhere. */
const FIXED_TIME = '1980-01-01T00:00:00';
/** Half as much again as the best packing, in a third of its time; its table stays near the processor. */
const PACKED = { level: 1, mem: 4 } as const;

const CONTENT_TYPES = `<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
<Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
<Default Extension="png" ContentType="image/png"/>
</Types>
`;
const MODEL_RELATION =
  '<Relationship Target="/3D/3dmodel.model" Id="model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>\n';
const THUMBNAIL_RELATION =
  '<Relationship Target="/Metadata/thumbnail.png" Id="thumbnail" Type="http://schemas.openxmlformats.org/package/2006/relationships/metadata/thumbnail"/>\n';
const relationships = (pictured: boolean) => `<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
${MODEL_RELATION}${pictured ? THUMBNAIL_RELATION : ''}</Relationships>
`;

/**
 * Writes a part as 3MF: millimetres, one object a body with its name and its material's, each laid on the bed beside the
 * others as it is printed, with a picture of the part.
 *
 * Of the writers in the registry, one snaps vertices to a grid before it writes, the other knows no materials and
 * escapes no names; both write the time of day. So the model is written here, and only the zip is a library's.
 *
 * @param part      the made part; its meshes hold float32 values
 * @param thumbnail its picture as PNG; rendered here unless it is at hand
 * @returns the file; the same bytes each time
 * @source 3mf-core: core specification 1.3
 */
export function writeThreeMf(part: PartInHand, thumbnail = stillPicture(part)): Uint8Array {
  const { report, bodies } = part;
  return packThreeMf(modelXml(layBodies(bodies, report.bodies), report), thumbnail);
}

/**
 * A 3MF file around a model, with a thumbnail where there is one.
 * @param model the text of its 3D model
 * @param thumbnail a PNG
 */
export function packThreeMf(model: string, thumbnail?: Uint8Array): Uint8Array {
  const files: Zippable = {
    '[Content_Types].xml': strToU8(CONTENT_TYPES),
    '_rels/.rels': strToU8(relationships(thumbnail !== undefined)),
    '3D/3dmodel.model': strToU8(model),
    ...(thumbnail ? { 'Metadata/thumbnail.png': [thumbnail, { level: 0 }] as const } : {}),
  };
  return zipSync(files, { ...PACKED, mtime: FIXED_TIME });
}
