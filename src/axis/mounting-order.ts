/** In this order parts go back: what the motor sits on, what the screw runs in, what holds it. */
const ORDER = ['motor-plate', 'nut', 'twin-nut', 'adapter', 'collar', 'coupling', 'sleeve', 'end-holder'];

/** Parts in the order in which they are mounted; those that nobody knows a place for come last. */
export function inMountingOrder<Part extends { readonly report: { readonly part: string } }>(
  parts: readonly Part[],
): Part[] {
  const place = ({ report: { part } }: Part) => (ORDER.includes(part) ? ORDER.indexOf(part) : ORDER.length);
  return [...parts].sort((a, b) => place(a) - place(b));
}
