// Runs tests for mutation testing in one process that loads the sources once: a mutant is switched on, the tests that
// reach it run until one fails. Vitest itself would load all files anew for every mutant, which takes seconds each.
import { readdirSync } from 'node:fs';
import { register } from 'node:module';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { declareClassPlugin, PluginKind, tokens } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  determineHitLimitReached,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { globbed } from './groups.mjs';
import { collect, TESTS } from './test-tree.mjs';

/** Gates that only run all cases again, what is said of the texts of sources, and what makes whole parts, tries cures or draws long. */
const LEFT_OUT = new RegExp(
  [
    'gives units, sources and examples',
    'has a case for each word',
    'closed solids?\\b',
    'is closed',
    'comes? out closed',
    '^an end holder lists ',
    'bytes twice',
    'three bodies that pass',
    '^from small to large',
    'tried in them, and nothing else is',
    'ways that were tried',
    '^cures of a nut that floats',
    '^(first order|distributions) against',
    '^random ',
    'brute force',
    'the mesh\\b|the solid\\b',
    'is made from the demo sheet',
    'puts a rim into the carriage',
  ].join('|'),
);

class InProcess {
  static inject = tokens();

  times = new Map();
  mutants = mutantsHere();

  capabilities() {
    return { reloadEnvironment: false };
  }

  async init() {
    register('./hooks.mjs', import.meta.url);
    const load = (path) => import(pathToFileURL(resolve(path)).href);
    await load('test/support/seed.ts');
    for (const path of testFiles((process.env.MUTANT_TESTS ?? '').split(' '))) await collect(path, () => load(path));
  }

  async dryRun() {
    const tests = await this.run(wantedTests(), { bail: false });
    for (const { id, timeSpentMs } of tests) this.times.set(id, timeSpentMs);
    return { status: DryRunStatus.Complete, tests, mutantCoverage: this.mutants.mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    const wanted = new Set(testFilter);
    const asked = this.quickFirst(wantedTests().filter(({ id }) => testFilter === undefined || wanted.has(id)));
    Object.assign(this.mutants, { activeMutant: activeMutant.id, hitLimit, hitCount: 0 });
    const tests = await this.run(asked, { bail: true });
    const { hitCount } = this.mutants;
    Object.assign(this.mutants, { activeMutant: undefined, hitLimit: undefined, hitCount: undefined });
    const endless = determineHitLimitReached(hitCount, hitLimit);
    return toMutantRunResult(endless ?? { status: DryRunStatus.Complete, tests });
  }

  /** As long as nothing has failed, the quick ones have a say before the slow ones. */
  quickFirst(tests) {
    const time = ({ id }) => this.times.get(id) ?? 0;
    return [...tests].sort((a, b) => time(a) - time(b));
  }

  /** Runs tests in their order; what a suite prepares is prepared anew in each run. */
  async run(tests, { bail }) {
    const prepared = new Set();
    const results = [];
    for (const test of tests) {
      const started = performance.now();
      const failure = await this.failureOf(test, prepared);
      const about = { id: test.id, name: test.name, fileName: resolve(test.file) };
      const took = { timeSpentMs: performance.now() - started };
      results.push(
        failure === undefined
          ? { ...about, ...took, status: TestStatus.Success }
          : { ...about, ...took, status: TestStatus.Failed, failureMessage: failure },
      );
      if (bail && failure !== undefined) break;
    }
    for (const suite of prepared) for (const work of suite.after) await work();
    return results;
  }

  async failureOf(test, prepared) {
    try {
      for (const suite of test.suites.filter((one) => !prepared.has(one))) {
        prepared.add(suite);
        for (const work of suite.before) await work();
      }
      this.mutants.currentTestId = test.id;
      await test.run();
      return undefined;
    } catch (error) {
      return String(error?.stack ?? error);
    } finally {
      this.mutants.currentTestId = undefined;
    }
  }
}

/** Where instrumented sources look which mutant is on, and count what they reach. */
function mutantsHere() {
  globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {};
  return globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE];
}

function wantedTests() {
  return TESTS.filter(({ name }) => !LEFT_OUT.test(name));
}

/** Files below `test` by globs. */
function testFiles(globs) {
  const patterns = globs.map(globbed);
  const files = readdirSync('test', { recursive: true, encoding: 'utf8' }).map((name) => join('test', name));
  return files.filter((path) => patterns.some((pattern) => pattern.test(path))).sort();
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'in-process', InProcess)];
