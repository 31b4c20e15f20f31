import lib3mf, { type Corner } from '@3mfconsortium/lib3mf';

/** What the 3MF Consortium's own library finds in a package. */
export interface ReadPackage {
  readonly warnings: readonly string[];
  readonly objects: readonly {
    readonly name: string;
    readonly facets: number;
    readonly isSound: boolean;
    readonly low: readonly number[];
    readonly high: readonly number[];
  }[];
  readonly items: readonly { readonly partNumber: string; readonly hasTransform: boolean }[];
}

let loaded: ReturnType<typeof lib3mf> | undefined;

/**
 * Reads a package with the reference library in strict mode.
 * @throws whatever the library refuses a package with
 */
export async function readStrictly(bytes: Uint8Array): Promise<ReadPackage> {
  loaded ??= lib3mf();
  const library = await loaded;
  // its objects live outside the garbage collector
  const held: { delete(): void }[] = [];
  const hold = <T extends { delete(): void }>(one: T): T => {
    held.push(one);
    return one;
  };
  try {
    library.FS.writeFile('/part.3mf', bytes);
    const model = hold(hold(new library.CWrapper()).CreateModel());
    const reader = hold(model.QueryReader('3mf'));
    reader.SetStrictModeActive(true);
    reader.ReadFromFile('/part.3mf');
    const warnings = Array.from({ length: reader.GetWarningCount() }, (_, i) => reader.GetWarning(i).return);
    const objects: ReadPackage['objects'][number][] = [];
    for (const meshes = hold(model.GetMeshObjects()); meshes.MoveNext(); ) {
      const mesh = hold(meshes.GetCurrentMeshObject());
      const corners = Array.from({ length: mesh.GetVertexCount() }, (_, i) => corner(hold(mesh.GetVertex(i))));
      const along = (pick: (...values: number[]) => number) =>
        [0, 1, 2].map((axis) => corners.reduce((found, one) => pick(found, one[axis]!), corners[0]![axis]!));
      const isSound = mesh.IsManifoldAndOriented();
      const [low, high] = [along(Math.min), along(Math.max)];
      objects.push({ name: mesh.GetName(), facets: mesh.GetTriangleCount(), isSound, low, high });
    }
    const items: ReadPackage['items'][number][] = [];
    for (const all = hold(model.GetBuildItems()); all.MoveNext(); ) {
      const item = hold(all.GetCurrent());
      items.push({ partNumber: item.GetPartNumber(), hasTransform: item.HasObjectTransform() });
    }
    return { warnings, objects, items };
  } finally {
    for (const one of held.reverse()) one.delete();
  }
}

function corner(position: Corner): readonly [number, number, number] {
  return [position.get_Coordinates0(), position.get_Coordinates1(), position.get_Coordinates2()];
}
