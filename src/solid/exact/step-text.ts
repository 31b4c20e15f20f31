/** What the head of a STEP file says. */
export interface StepAbout {
  /** name of the file */
  readonly file: string;
  /** what it holds, in words */
  readonly description: string;
  /** the program and its version */
  readonly writer: string;
}

/**
 * A STEP file as the kernel wrote it, made the same for the same part: a head of our own without a date, occurrences
 * counted from 1, and the description on every product.
 *
 * @param step   what the kernel wrote
 * @param about  what the head says
 * @returns the text  [ASCII, other letters escaped as ISO 10303-21 has it]
 * @source ISO 10303-21, exchange structure: HEADER section, strings
 */
export function steadyStep(step: string, { file, description, writer }: StepAbout): string {
  const head = [
    'HEADER;',
    `FILE_DESCRIPTION((${quoted(description)}),'2;1');`,
    `FILE_NAME(${quoted(file)},'1970-01-01T00:00:00',(''),(''),${quoted(writer)},${quoted(writer)},'');`,
  ].join('\n');
  const schema = step.indexOf('FILE_SCHEMA');
  const start = step.indexOf('HEADER;');
  if (start < 0 || schema < start) throw new Error('the kernel wrote no STEP file');
  let occurrence = 0;
  return `${step.slice(0, start)}${head}\n${step.slice(schema)}`
    .replace(/NEXT_ASSEMBLY_USAGE_OCCURRENCE\(\s*'[^']*'/g, () => `NEXT_ASSEMBLY_USAGE_OCCURRENCE('${++occurrence}'`)
    .replace(
      /(= PRODUCT\(\s*'(?:[^']|'')*',\s*'(?:[^']|'')*',\s*)''/g,
      (_, before: string) => before + quoted(description),
    );
}

/** A text as a STEP string. */
export function quoted(text: string): string {
  const escaped = [...text].map((letter) => {
    if (letter === "'" || letter === '\\') return letter + letter;
    if (/[ -~]/.test(letter)) return letter;
    return `\\X2\\${[...Array(letter.length).keys()].map((i) => letter.charCodeAt(i).toString(16).toUpperCase().padStart(4, '0')).join('')}\\X0\\`;
  });
  return `'${escaped.join('')}'`;
}
