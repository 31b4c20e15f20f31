/** A line of text on the flange, beside the body. */
export interface Mark {
  readonly text: string;
  readonly style: 'raised' | 'engraved';
}
