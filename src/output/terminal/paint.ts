/** Ways to set text apart on a terminal. */
export interface Paint {
  readonly bold: (text: string) => string;
  readonly dim: (text: string) => string;
  readonly good: (text: string) => string;
  readonly warn: (text: string) => string;
  readonly bad: (text: string) => string;
}

/** Escape codes where colour is wanted, the bare text elsewhere. */
export function paint(colour: boolean): Paint {
  const code = (on: number, off: number) => (text: string) => (colour ? `\u001b[${on}m${text}\u001b[${off}m` : text);
  return { bold: code(1, 22), dim: code(2, 22), good: code(32, 39), warn: code(33, 39), bad: code(31, 39) };
}
