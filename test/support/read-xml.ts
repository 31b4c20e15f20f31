/** An element of an XML text, with its text and elements in their order. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly content: (XmlElement | string)[];
}

const TOKEN = /<\?[^>]*\?>|<(\/?)([\w:.-]+)((?:\s+[\w:.-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/y;
const ENTITIES: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

/**
 * Reads an XML text of elements, attributes and text.
 * @throws Error it is not well formed
 */
export function readXml(text: string): XmlElement {
  const top: XmlElement = { name: '', attributes: {}, content: [] };
  const open = [top];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < text.length) {
    const at = TOKEN.lastIndex;
    const token = TOKEN.exec(text);
    if (!token) throw new Error(`not well formed at ${at}: ${text.slice(at, at + 60)}`);
    const [, closing, name, attributes = '', empty, words] = token;
    if (words !== undefined) {
      if (words.trim() !== '') open.at(-1)!.content.push(plainText(words));
    } else if (name === undefined) continue;
    else if (closing) {
      if (open.pop()?.name !== name || open.length === 0) throw new Error(`${name} is closed at ${at} but not open`);
    } else {
      const element: XmlElement = { name, attributes: attributesOf(attributes), content: [] };
      open.at(-1)!.content.push(element);
      if (!empty) open.push(element);
    }
  }
  const [root, ...others] = top.content;
  if (open.length > 1 || typeof root !== 'object' || others.length > 0)
    throw new Error('there must be one root, closed');
  return root;
}

function attributesOf(text: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const [, name, value] of text.matchAll(/([\w:.-]+)="([^"]*)"/g)) {
    if (found[name!] !== undefined) throw new Error(`${name} is given twice`);
    found[name!] = plainText(value!);
  }
  return found;
}

function plainText(text: string): string {
  if (/&(?!(?:lt|gt|amp|quot|apos|#\d+|#x[\da-fA-F]+);)/.test(text)) throw new Error(`a bare & in ${text}`);
  return text.replace(/&(lt|gt|amp|quot|apos);/g, (_, name: string) => ENTITIES[name]!);
}
