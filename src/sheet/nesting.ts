/** Deeper than any sheet goes, and shallow enough for a reader that calls itself once a level. */
const DEEPEST = 100;
const WIDEST_INDENT = 400;

/**
 * Tells whether a YAML text may be nested more deeply than a sheet can be, by counting alone: brackets, list marks on
 * one line and indentation. Brackets in words and comments count too, which no sheet has a hundred of.
 */
export function isNestedTooDeeply(text: string): boolean {
  return deepestBracket(text) > DEEPEST || text.split('\n').some((line) => isDeepLine(line));
}

function deepestBracket(text: string): number {
  let [depth, deepest] = [0, 0];
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    if (c === '[' || c === '{') deepest = Math.max(deepest, ++depth);
    else if (c === ']' || c === '}') depth = Math.max(0, depth - 1);
  }
  return deepest;
}

/** Spaces that open a line, or `- - - -` and `? ? ?`, each of which is a level of its own. */
function isDeepLine(line: string): boolean {
  const indent = line.length - line.trimStart().length;
  if (indent > WIDEST_INDENT && indent < line.length) return true;
  let marks = 0;
  for (let i = indent; i < line.length; i++) {
    if (isMark(line[i]) && isBlank(line[i - 1]) && isBlank(line[i + 1])) marks += 1;
  }
  return marks > DEEPEST;
}

function isMark(character: string | undefined): boolean {
  return character === '-' || character === '?' || character === ':';
}

function isBlank(character: string | undefined): boolean {
  return character === undefined || character === ' ' || character === '\t' || character === '\r';
}
