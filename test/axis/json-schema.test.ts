import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, it } from 'vitest';
import { axisJsonSchema } from '../../src/axis/json-schema.js';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { readYaml } from '../../src/sheet/read-yaml.js';
import { AXIS, axisWith } from '../support/axis-sheets.js';

const takes = new Ajv2020({ strict: false }).compile(axisJsonSchema());

it('takes what is made, and a part by any name', () => {
  expect(takes(AXIS), JSON.stringify(takes.errors)).toBe(true);
  expect(takes(readYaml(startSheet('axis')).value), JSON.stringify(takes.errors)).toBe(true);
  expect(takes(axisWith({ parts: { nut: { part: 'adapter', anything: 1 } } }))).toBe(true);
  expect(takes(axisWith({ parts: { coupling: { motor: { temperature: '60 C' } } } }))).toBe(true);
});

it('refuses fields that neither an axis nor the kind of a section has', () => {
  expect(takes(axisWith({ lenghts: {} }))).toBe(false);
  expect(takes(axisWith({ parts: { nut: { bodi: {} } } }))).toBe(false);
});
