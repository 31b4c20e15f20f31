import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FinishedPart } from '../../fleet/finished-part.js';
import { FOLDERS, partFolder, placements } from '../../fleet/names.js';
import { plateModel } from '../../fleet/plate-model.js';
import { type Bed, layOut, type Plate, type PlateItem, type PlateRow } from '../../fleet/plates.js';
import { printedWayUp } from '../../output/on-bed.js';
import { readStl } from '../../output/read-stl.js';
import type { Mesh } from '../../solid/mesh.js';

/** Plates as written, and what is larger than the bed. */
export interface WrittenPlates {
  readonly rows: readonly PlateRow[];
  readonly tooLarge: readonly string[];
}

/** Lays all pieces of a run out on beds, and writes a 3MF a plate. */
export function writePlates(
  fleet: string,
  items: readonly PlateItem[],
  bed: Bed,
  out: string,
  write: (file: string, content: Uint8Array) => void,
): WrittenPlates {
  const { plates, tooLarge } = layOut(items, bed);
  const counts = new Map<string, number>();
  const rows = plates.map((plate): PlateRow => {
    const material = plate.material.replace(/[^\w.-]+/g, '-');
    const number = (counts.get(material) ?? 0) + 1;
    counts.set(material, number);
    const file = `${FOLDERS.plates}/${material}-${String(number).padStart(3, '0')}.3mf`;
    write(file, plateModel(plate, `${fleet} ${material} ${number}`, meshesOf(plate, out)));
    return { file, material: plate.material, pieces: listed(plate) };
  });
  return { rows, tooLarge: tooLarge.map(({ label }) => label) };
}

/** One item a body of a part of a machine; `body` is its file in the part's folder. */
export function plateItems({ machine, role, quantity, spare, made }: FinishedPart): PlateItem[] {
  const placed = new Map(placements(made, machine, role).map(({ name, to }) => [name, to.split('/').at(-1)!]));
  return made.bodies.flatMap((row): PlateItem[] => {
    const { file, material, turn_over: turnOver } = row;
    const label = placed.get(file)?.replace(/\.stl$/, '');
    if (label === undefined) return [];
    const body = `${partFolder(made)}/${file}`;
    return [{ body, label, material, turnOver, bounds: printedWayUp(row), count: quantity + spare }];
  });
}

function meshesOf({ pieces }: Plate, out: string): Map<string, Mesh> {
  const bodies = new Set(pieces.map(({ body }) => body));
  return new Map([...bodies].map((body) => [body, readStl(new Uint8Array(readFileSync(join(out, body))))]));
}

function listed({ pieces }: Plate): PlateRow['pieces'] {
  const counts = new Map<string, number>();
  for (const { label } of pieces) counts.set(label, (counts.get(label) ?? 0) + 1);
  return [...counts].map(([label, count]) => ({ label, count }));
}
