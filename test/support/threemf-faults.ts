import { strFromU8, unzipSync } from 'fflate';
import { readXml, type XmlElement } from './read-xml.js';

/** What the core specification 1.3 allows an element to hold. A figure is the number of times, * any, + once or more. */
interface Rule {
  readonly needs?: readonly string[];
  readonly may?: readonly string[];
  /** children in their order, each with how often it may come */
  readonly children?: readonly (readonly [string, '1' | '*' | '+'])[];
  /** any of these children in any order */
  readonly anyOf?: readonly string[];
}

const RULES: Readonly<Record<string, Rule>> = {
  model: {
    may: ['unit', 'xml:lang', 'requiredextensions', 'recommendedextensions'],
    children: [
      ['metadata', '*'],
      ['resources', '1'],
      ['build', '1'],
    ],
  },
  metadata: { needs: ['name'], may: ['preserve', 'type'] },
  resources: { anyOf: ['basematerials', 'object'] },
  basematerials: { needs: ['id'], children: [['base', '+']] },
  base: { needs: ['name', 'displaycolor'] },
  object: {
    needs: ['id'],
    may: ['type', 'thumbnail', 'partnumber', 'name', 'pid', 'pindex'],
    children: [['mesh', '1']],
  },
  mesh: {
    children: [
      ['vertices', '1'],
      ['triangles', '1'],
    ],
  },
  vertices: { children: [['vertex', '+']] },
  vertex: { needs: ['x', 'y', 'z'] },
  triangles: { children: [['triangle', '+']] },
  triangle: { needs: ['v1', 'v2', 'v3'], may: ['p1', 'p2', 'p3', 'pid'] },
  build: { children: [['item', '*']] },
  item: { needs: ['objectid'], may: ['transform', 'partnumber'] },
};

const NUMBER = /^[+-]?(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+-]?\d+)?$/;
const COLOUR = /^#[0-9A-Fa-f]{6}(?:[0-9A-Fa-f]{2})?$/;
const UNITS = ['micron', 'millimeter', 'centimeter', 'inch', 'foot', 'meter'];
const TYPES = ['model', 'solidsupport', 'support', 'surface', 'other'];
const KNOWN_METADATA =
  /^(?:Title|Designer|Description|Copyright|LicenseTerms|Rating|CreationDate|ModificationDate|Application)$/;
const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
const START = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';

/**
 * What a 3MF package breaks of the core specification, in words; nothing where it is sound. Our own reading of the
 * specification's tables of elements and its rules of packages, in place of its schema.
 * @source 3mf-core: core specification 1.3, chapters 2 to 5
 */
export function threeMfFaults(bytes: Uint8Array): string[] {
  const zip = unzipSync(bytes);
  const text = (name: string) => (zip[name] ? strFromU8(zip[name]) : undefined);
  const model = startPart(text('_rels/.rels'));
  const xml = model === undefined ? undefined : text(model);
  return [
    ...packageFaults(Object.keys(zip), text('[Content_Types].xml'), text('_rels/.rels')),
    ...(xml === undefined ? ['the start part is missing'] : modelFaults(xml)),
  ];
}

function startPart(relations: string | undefined): string | undefined {
  const starts = children(readXml(relations ?? '<none/>')).filter(({ attributes }) => attributes.Type === START);
  return starts.length === 1 ? starts[0]!.attributes.Target?.replace(/^\//, '') : undefined;
}

function packageFaults(names: readonly string[], types: string | undefined, relations: string | undefined): string[] {
  if (types === undefined || relations === undefined) return ['content types or relationships are missing'];
  const typed = children(readXml(types)).map(({ attributes }) => attributes.Extension ?? attributes.PartName ?? '');
  const parts = names.filter((name) => name !== '[Content_Types].xml');
  const untyped = parts.filter((name) => !typed.includes(name.split('.').at(-1)!) && !typed.includes(`/${name}`));
  const links = children(readXml(relations));
  const dangling = links.filter(({ attributes: { Target = '' } }) => !parts.includes(Target.replace(/^\//, '')));
  return [
    ...untyped.map((name) => `${name} has no content type`),
    ...dangling.map(({ attributes }) => `${attributes.Target} is linked but not there`),
    ...repeated(links.map(({ attributes }) => attributes.Id ?? '')).map((id) => `relationship ${id} comes twice`),
  ];
}

/** Faults of the model part alone. */
export function modelFaults(xml: string): string[] {
  const model = readXml(xml);
  if (model.name !== 'model' || model.attributes.xmlns !== CORE) return [`the root is ${model.name}, not a model`];
  return [...grammarFaults(model), ...metadataFaults(model), ...referenceFaults(model)];
}

function grammarFaults(element: XmlElement): string[] {
  const rule = RULES[element.name];
  if (!rule) return [`${element.name} is unknown`];
  const { needs = [], may = [] } = rule;
  const given = Object.keys(element.attributes).filter((name) => !/^xmlns(?::|$)/.test(name));
  return [
    ...needs.filter((name) => !given.includes(name)).map((name) => `${element.name} lacks ${name}`),
    ...given.filter((name) => ![...needs, ...may].includes(name)).map((name) => `${element.name} has a ${name}`),
    ...childFaults(element, rule),
    ...valueFaults(element),
    ...children(element).flatMap(grammarFaults),
  ];
}

function childFaults(element: XmlElement, { children: wanted, anyOf }: Rule): string[] {
  const names = children(element).map(({ name }) => name);
  if (anyOf) return names.filter((name) => !anyOf.includes(name)).map((name) => `${element.name} holds a ${name}`);
  const pattern = (wanted ?? []).map(([name, times]) => `(?:${name} )${times === '1' ? '' : times}`).join('');
  return new RegExp(`^${pattern}$`).test(names.map((name) => `${name} `).join(''))
    ? []
    : [`${element.name} holds ${[...new Set(names)].join(', ') || 'nothing'}`];
}

function valueFaults({ name, attributes: a }: XmlElement): string[] {
  const wrong = (key: string, sound: boolean) => (sound ? [] : [`${name} ${key}="${a[key]}"`]);
  switch (name) {
    case 'model':
      return wrong('unit', a.unit === undefined || UNITS.includes(a.unit));
    case 'base':
      return wrong('displaycolor', COLOUR.test(a.displaycolor ?? ''));
    case 'vertex':
      return ['x', 'y', 'z'].flatMap((axis) => wrong(axis, NUMBER.test(a[axis] ?? '')));
    case 'object':
      return [...wrong('id', isId(a.id)), ...wrong('type', a.type === undefined || TYPES.includes(a.type))];
    case 'basematerials':
      return wrong('id', isId(a.id));
    case 'item': {
      const cells = a.transform?.split(' ');
      return wrong('transform', !cells || (cells.length === 12 && cells.every((cell) => NUMBER.test(cell))));
    }
    default:
      return [];
  }
}

function isId(text: string | undefined): boolean {
  return /^[1-9]\d*$/.test(text ?? '') && Number(text) < 2 ** 31;
}

function metadataFaults(model: XmlElement): string[] {
  const names = children(model)
    .filter(({ name }) => name === 'metadata')
    .map(({ attributes }) => attributes.name ?? '');
  const unknown = names.filter((name) => {
    const [space, rest] = name.split(':');
    return rest === undefined ? !KNOWN_METADATA.test(name) : model.attributes[`xmlns:${space}`] === undefined;
  });
  return [
    ...unknown.map((name) => `metadata ${name} has no name space`),
    ...repeated(names).map((name) => `metadata ${name} comes twice`),
  ];
}

/** Resources must be named before they are used, corners must be there and differ, and every object must be built. */
function referenceFaults(model: XmlElement): string[] {
  const [resources, build] = ['resources', 'build'].map((name) => children(model).find((one) => one.name === name));
  const known = new Map<string, XmlElement>();
  const faults: string[] = [];
  for (const resource of children(resources)) {
    const { id = '' } = resource.attributes;
    if (known.has(id)) faults.push(`resource ${id} comes twice`);
    if (resource.name === 'object') faults.push(...objectFaults(resource, known));
    known.set(id, resource);
  }
  for (const { attributes } of children(build)) {
    if (known.get(attributes.objectid ?? '')?.name !== 'object')
      faults.push(`item builds ${attributes.objectid}, no object`);
  }
  return faults;
}

function objectFaults({ attributes, content }: XmlElement, known: ReadonlyMap<string, XmlElement>): string[] {
  const { id, pid, pindex } = attributes;
  const materials = pid === undefined ? undefined : known.get(pid);
  const [vertices, triangles] = ['vertices', 'triangles'].map((name) =>
    content
      .filter((one) => typeof one !== 'string')
      .flatMap((mesh) => children(mesh))
      .find((one) => one.name === name),
  );
  const count = children(vertices).length;
  const loose = children(triangles).filter(({ attributes: { v1, v2, v3 } }) => {
    const corners = [v1, v2, v3].map((corner) => (/^\d+$/.test(corner ?? '') ? Number(corner) : Number.NaN));
    return !corners.every((corner) => corner < count) || new Set(corners).size < 3;
  });
  return [
    ...(count < 3 ? [`object ${id} has ${count} corners`] : []),
    ...(children(triangles).length < 4 ? [`object ${id} is not a solid`] : []),
    ...(loose.length > 0 ? [`object ${id} has ${loose.length} facets whose corners are missing or repeated`] : []),
    ...(pid !== undefined && materials?.name !== 'basematerials'
      ? [`object ${id} names the material group ${pid}`]
      : []),
    ...(pid !== undefined && !(Number(pindex) < children(materials).length)
      ? [`object ${id} has material ${pindex}`]
      : []),
  ];
}

function children(element: XmlElement | undefined): XmlElement[] {
  return (element?.content ?? []).filter((one) => typeof one !== 'string');
}

function repeated(names: readonly string[]): string[] {
  return names.filter((name, i) => names.indexOf(name) !== i);
}
