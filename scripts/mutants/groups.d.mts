export declare const FOLDERS: Readonly<Record<string, readonly string[]>>;
export declare function sourcesOf(group: string): string;
export declare function globbed(glob: string): RegExp;
