/** What is used of the 3MF Consortium's library; it ships no types. */
declare module '@3mfconsortium/lib3mf' {
  interface Held {
    delete(): void;
  }
  export interface Corner extends Held {
    get_Coordinates0(): number;
    get_Coordinates1(): number;
    get_Coordinates2(): number;
  }
  interface MeshObject extends Held {
    GetName(): string;
    GetVertexCount(): number;
    GetTriangleCount(): number;
    GetVertex(index: number): Corner;
    IsManifoldAndOriented(): boolean;
  }
  interface BuildItem extends Held {
    GetPartNumber(): string;
    HasObjectTransform(): boolean;
  }
  interface Reader extends Held {
    SetStrictModeActive(active: boolean): void;
    ReadFromFile(name: string): void;
    GetWarningCount(): number;
    GetWarning(index: number): { readonly return: string };
  }
  interface Model extends Held {
    QueryReader(kind: '3mf'): Reader;
    GetMeshObjects(): Held & { MoveNext(): boolean; GetCurrentMeshObject(): MeshObject };
    GetBuildItems(): Held & { MoveNext(): boolean; GetCurrent(): BuildItem };
  }
  interface Library {
    readonly FS: { writeFile(name: string, bytes: Uint8Array): void };
    readonly CWrapper: new () => Held & { CreateModel(): Model };
  }
  export default function lib3mf(): Promise<Library>;
}
