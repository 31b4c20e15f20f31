const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** What may have to be written otherwise: marks, control characters, halves of a pair, the last of the plane. */
const SUSPECT = /[&<>"'\p{Cc}\p{Cs}\ufffe\uffff]/gu;

/**
 * A text as it may stand in XML or HTML, between tags or in a quoted attribute. Characters that XML forbids are left
 * out.
 * @example xmlText('<b> & "c"') // '&lt;b&gt; &amp; &quot;c&quot;'
 */
export function xmlText(text: string): string {
  return text.replace(SUSPECT, (character) => ENTITIES[character] ?? (isForbidden(character) ? '' : character));
}

/** Control characters but tab and line ends, halves of a pair, and the two last code points of the plane. */
function isForbidden(character: string): boolean {
  const code = character.codePointAt(0)!;
  if (code < 32) return code !== 9 && code !== 10 && code !== 13;
  return (code >= 0xd800 && code <= 0xdfff) || code === 0xfffe || code === 0xffff;
}
