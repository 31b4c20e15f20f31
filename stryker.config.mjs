// Mutation testing, a folder at a time: MUTANTS names the sources, MUTANT_TESTS the tests that must notice.
const list = (name) => (process.env[name] ?? '').split(' ').filter((word) => word !== '');

export default {
  testRunner: 'in-process',
  plugins: ['./scripts/mutants/runner.mjs'],
  // its TypeScript preprocessor knows older compilers only; the runner strips types by itself
  tsconfigFile: 'none',
  mutate: list('MUTANTS'),
  // messages are worded freely; figures, comparisons and choices are what must be held
  mutator: { excludedMutations: ['StringLiteral'] },
  coverageAnalysis: 'perTest',
  ignoreStatic: true,
  concurrency: Number(process.env.MUTANT_WORKERS ?? 2),
  // loops without an end are counted, so time is no measure, however busy the machine
  timeoutMS: 300_000,
  tempDirName: '.mutants',
  ignorePatterns: ['/dist', '/out', '/docs', '/bench'],
  reporters: ['json', 'progress-append-only'],
  jsonReporter: { fileName: process.env.MUTANT_REPORT ?? '.mutants/report.json' },
  allowEmpty: true,
  cleanTempDir: 'always',
};
