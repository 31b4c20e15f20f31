import type { Body, Mesh } from '../../solid/mesh.js';
import type { Report } from '../report.js';
import { VERSION } from '../version.js';
import { xmlText } from '../xml-text.js';
import { decimal } from './decimal.js';

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
/** Names that the core specification does not know stand in a name space of their own. */
const OWN = 'urn:leadwright:part:1';
/** Neutral, since material presets carry no colour. */
const DISPLAY_COLOUR = '#9FB4AE';

/** What every model begins with. */
export const MODEL_HEAD = `<?xml version="1.0" encoding="UTF-8"?>\n<model unit="millimeter" xml:lang="en" xmlns="${CORE}" xmlns:lw="${OWN}">\n`;

/** Materials by name, as the group of resources with the id 1. */
export function materialsXml(names: readonly string[]): string {
  const bases = names.map((name) => `<base name="${xmlText(name)}" displaycolor="${DISPLAY_COLOUR}"/>\n`);
  return `<basematerials id="1">\n${bases.join('')}</basematerials>\n`;
}

/** The 3D model of a part: materials, one object a body, each built once where it lies. */
export function modelXml(bodies: readonly Body[], report: Pick<Report, 'name' | 'part' | 'applied'>): string {
  const materials = [...new Set(bodies.map(({ material }) => material))];
  return [
    MODEL_HEAD,
    metadata('Title', report.name),
    metadata('Application', `leadwright ${VERSION}`),
    metadata('lw:part', report.part),
    metadata('lw:name', report.name),
    metadata('lw:version', VERSION),
    metadata('lw:applied', report.applied),
    '<resources>\n',
    materialsXml(materials),
    ...bodies.map((body, i) => objectXml(body, i + 2, materials.indexOf(body.material))),
    '</resources>\n<build>\n',
    ...bodies.map(
      ({ name }, i) => `<item objectid="${i + 2}" partnumber="${xmlText(itemName(report.name, name))}"/>\n`,
    ),
    '</build>\n</model>\n',
  ].join('');
}

/** What a body is called among others. */
function itemName(part: string, body: string): string {
  return body === part ? part : `${part}-${body}`;
}

/** One line of metadata. */
export function metadata(name: string, value: string): string {
  return `<metadata name="${name}">${xmlText(value)}</metadata>\n`;
}

/** A body as an object of the model, of the material with that index. */
export function objectXml(body: Body, id: number, material: number): string {
  const head = `<object id="${id}" type="model" name="${xmlText(body.name)}" pid="1" pindex="${material}">`;
  return `${head}\n<mesh>\n<vertices>\n${verticesXml(body)}</vertices>\n<triangles>\n${trianglesXml(body)}</triangles>\n</mesh>\n</object>\n`;
}

function verticesXml({ positions: p }: Mesh): string {
  const known = new Map<number, string>();
  // corners of a thread stand over one another
  const told = (value: number): string => {
    const found = known.get(value);
    if (found !== undefined) return found;
    const text = decimal(value);
    known.set(value, text);
    return text;
  };
  let text = '';
  for (let i = 0; i < p.length; i += 3) {
    text += `<vertex x="${told(p[i]!)}" y="${told(p[i + 1]!)}" z="${told(p[i + 2]!)}"/>\n`;
  }
  return text;
}

function trianglesXml({ triangles: t }: Mesh): string {
  let text = '';
  for (let i = 0; i < t.length; i += 3) text += `<triangle v1="${t[i]}" v2="${t[i + 1]}" v3="${t[i + 2]}"/>\n`;
  return text;
}
