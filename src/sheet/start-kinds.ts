/** What `new` has a sheet to start from for. */
export const START_KINDS = [
  'nut',
  'adapter',
  'coupling',
  'sleeve',
  'coupon',
  'fleet',
  'results',
  'trial',
  'demo-results',
] as const;
export type StartKind = (typeof START_KINDS)[number];
