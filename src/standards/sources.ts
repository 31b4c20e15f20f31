/** Where a figure comes from. */
export interface Source {
  /** what the work is called */
  readonly title: string;
  /** edition or year; empty where none was noted */
  readonly edition: string;
  /** what was taken from it, and how far it can be trusted */
  readonly note: string;
}

/**
 * The bibliography. Every `@source` in a doc comment and every group of table rows names a key of this list.
 * `memory` stands beside figures recalled without a page at hand: they agree with the rule given, no more.
 */
export const SOURCES = {
  'iso-2901': {
    title: 'ISO 2901, ISO metric trapezoidal screw threads: basic and design profiles',
    edition: '',
    note: 'Profile, crest clearance by pitch. Clearance for pitch 1.5 to 6 confirmed through published tables; above by rule.',
  },
  'iso-2902': {
    title: 'ISO 2902, ISO metric trapezoidal screw threads: general plan',
    edition: '',
    note: 'Which pitch goes with which diameter. Plan confirmed; the row 11 mm is uncertain in its preferred pitch.',
  },
  'iso-2903': {
    title: 'ISO 2903, ISO metric trapezoidal screw threads: tolerances',
    edition: '2016',
    note: 'es, Td and the 7e limits of seven threads confirmed; TD2, TD1, grades 8 and 9, multi-start factors from memory.',
  },
  'iso-2904': {
    title: 'ISO 2904, ISO metric trapezoidal screw threads: basic dimensions',
    edition: '',
    note: 'Rows by formula; those marked in the tests were read on published pages.',
  },
  'iso-261': {
    title: 'ISO 261 and ISO 262, ISO general purpose metric screw threads: general plan and selected sizes',
    edition: '',
    note: 'Coarse M3 to M12 confirmed; larger sizes and fine pitches from memory.',
  },
  'iso-724': {
    title: 'ISO 724, ISO general purpose metric screw threads: basic dimensions',
    edition: '',
    note: 'Formulas confirmed against M3 to M12.',
  },
  'iso-965-1': {
    title: 'ISO 965-1, ISO general purpose metric screw threads: tolerances, principles and basic data',
    edition: '',
    note: '6g of M3 to M5 confirmed; the rest from memory, agreeing with the formulas of the standard.',
  },
  'asme-b1.5': {
    title: 'ASME B1.5, Acme screw threads',
    edition: '1997',
    note: 'Formulas of class 2G confirmed on five threads; allowances of 3G and 4G and the nut major from memory.',
  },
  'asme-b1.1': {
    title: 'ASME B1.1, Unified inch screw threads',
    edition: '2003',
    note: 'Series and tolerance formulas from memory; 1/4-20 agrees with published limits.',
  },
  'asme-b1.2': {
    title: 'ASME B1.2, Gages and gaging for unified inch screw threads',
    edition: '1983',
    note: 'Measurement over three wires, lead angle term included; formula from memory, constants derived.',
  },
  'iso-76': {
    title: 'ISO 76, Rolling bearings: static load ratings',
    edition: '',
    note: 'Formulas of thrust and deep-groove ball bearings from memory.',
  },
  'iso-104': {
    title: 'ISO 104, Rolling bearings: thrust bearings, boundary dimensions',
    edition: '',
    note: 'Three rows of the series 511, four trade sizes below them and two needle cages confirmed through published tables; the rest from memory.',
  },
  'iso-4762': {
    title: 'ISO 4762, Hexagon socket head cap screws',
    edition: '',
    note: 'Heads confirmed; length series from memory.',
  },
  'iso-4032': { title: 'ISO 4032, Hexagon regular nuts (style 1)', edition: '', note: 'Confirmed.' },
  'iso-7089': {
    title: 'ISO 7089, Plain washers, normal series',
    edition: '',
    note: 'M3 to M8 confirmed; M2, M2.5 memory.',
  },
  'iso-7379': {
    title: 'ISO 7379, Hexagon socket head shoulder screws',
    edition: '',
    note: 'Shoulders and heads of M5, M6 and M8 confirmed; tolerance of the length and the length series from memory.',
  },
  'iso-15': {
    title: 'ISO 15, Rolling bearings: radial bearings: boundary dimensions, general plan',
    edition: '',
    note: 'Sizes of 605, 606, 608, 625, 626, 629, 6000 to 6002 and 6200 to 6204 seen in two public tables; other rows and chamfers from memory.',
  },
  'iso-273': { title: 'ISO 273, Clearance holes for bolts and screws', edition: '1979', note: 'Confirmed.' },
  'din-103': {
    title: 'DIN 103, ISO metric screw thread: trapezoidal screw thread',
    edition: '',
    note: 'That a rolled root may be 0.15 of the pitch thinner, confirmed through published tables.',
  },
  'din-6885': { title: 'DIN 6885-1 and ISO 773, Parallel keys', edition: '', note: 'Confirmed to 30 mm.' },
  'din-740': {
    title: 'DIN 740-2, Flexible shaft couplings: parameters and design principles',
    edition: '',
    note: 'Structure and several factors from memory; temperature, start and service factors confirmed.',
  },
  'nema-ics-16': {
    title: 'NEMA ICS 16, Motion and position control motors, controls and feedback devices',
    edition: '',
    note: 'Bolt squares, pilots and shaft diameters confirmed; customary shafts and flats are common practice.',
  },
  'tightening-chart': {
    title: 'published tightening charts for steel screws',
    edition: '',
    note: 'Seating torques confirmed for metal in metal; not meant for printed plastic.',
  },
  'textbook-design': {
    title: 'machine design textbook: power screws (chapter 8), columns (table 4-2), set screws (table 7-4)',
    edition: '',
    note: 'Power screw problem 8-4 and column end factors confirmed; example 8-1 and the holding powers from memory, recomputed.',
  },
  'textbook-design-b': {
    title: 'machine design textbook: power screws, example 16-1',
    edition: '',
    note: 'Confirmed through a companion computation.',
  },
  'textbook-design-c': {
    title: 'machine design textbook: power screws, example 17.2',
    edition: '',
    note: 'Answer from memory, recomputed.',
  },
  'textbook-design-d': {
    title: 'machine design textbook: Acme power screw 1.25-5, lifting 1000 lbf',
    edition: '',
    note: 'From memory, recomputed.',
  },
  'textbook-design-e': {
    title: 'machine design textbook: power screws, example 10.1, double Acme 1 in',
    edition: '',
    note: 'From memory, recomputed; the book uses the flank angle in the normal plane.',
  },
  'textbook-statics': {
    title: 'statics textbook: square-threaded screws, section 5.6.1, problem 2',
    edition: '',
    note: 'Confirmed.',
  },
  'screw-guide': {
    title: 'published engineering guides for power screws and ball screws',
    edition: '',
    note: 'Critical speed with end factors, column load, 80 % of the one and half of the other, confirmed.',
  },
  'plastics-handbook': {
    title: 'handbook tables on the friction, wear and creep of plastics',
    edition: '',
    note: 'Published figures differ by factors of 2 to 10: read them as ranges.',
  },
  'stress-tables': {
    title: 'handbook tables of stress concentration: stepped flat bar with shoulder fillets, in bending',
    edition: '',
    note: 'Coefficients confirmed through published pages; another fit from memory lies within 7 %.',
  },
  'creep-sheets': {
    title: "makers' creep and relaxation sheets of moulded plastics",
    edition: '',
    note: 'From memory; no creep rupture of prints beyond some days has been published. Check values: polycarbonate at 1.9 % strain confirmed.',
  },
  'pipe-derating': {
    title: "Machinery's Handbook, 31st edition, derating of PVC pipe over temperature (table 14)",
    edition: '31',
    note: 'Confirmed: 1, 0.88, 0.75, 0.62, 0.50, 0.40, 0.30, 0.22 at 23 to 60 °C.',
  },
  'common-practice': {
    title: 'common practice of the workshop',
    edition: '',
    note: 'Editable defaults that give way to a measured value.',
  },
  derived: { title: 'derived from the stated formula', edition: '', note: 'Arithmetic shown beside the figure.' },
  memory: {
    title: 'recalled without a page at hand',
    edition: '',
    note: 'Agrees with the rule named; do not rest a test on it alone.',
  },
} as const satisfies Readonly<Record<string, Source>>;

/** A key of the bibliography. */
export type SourceKey = keyof typeof SOURCES;
