import type { Finding } from '../../judge/check.js';

type Asking = Pick<Finding, 'missing'>;

/** Fields that nobody told, each once; a section that is missing stands for the fields in it. */
export function untoldFields(findings: readonly Asking[]): string[] {
  const fields = [...new Set(findings.flatMap(({ missing = [] }) => missing))];
  return fields.filter((field) => !fields.some((other) => isWithin(field, other)));
}

/** Whether a finding waits for a field, or for one within it. */
export function waitsFor({ missing = [] }: Asking, field: string): boolean {
  return missing.some((one) => one === field || isWithin(one, field));
}

function isWithin(field: string, section: string): boolean {
  return field.startsWith(`${section}.`);
}
