/** What `new` has a sheet to start from for. */
export const START_KINDS = [
  'nut',
  'adapter',
  'coupling',
  'sleeve',
  'collar',
  'end-holder',
  'motor-plate',
  'coupon',
  'gauge',
  'split-nut',
  'clamped-nut',
  'anti-backlash-nut',
  'nut-holder',
  'catch-nut',
  'bush',
  'axis',
  'fleet',
  'results',
  'trial',
  'demo-results',
] as const;
export type StartKind = (typeof START_KINDS)[number];
