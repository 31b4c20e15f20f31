export interface Survivor {
  readonly file: string;
  readonly location: { readonly start: { readonly line: number } };
}
export declare function listed(group: string, folder?: string): string[];
export declare function places(group: string, bullets: readonly string[]): Set<string>;
export declare function withoutReason<T extends Survivor>(group: string, survivors: readonly T[], folder?: string): T[];
