/** A sheet longer than this stands in no address. */
const LONGEST = 40_000;

/** The part of the address that holds a sheet: packed, in letters that addresses keep. */
export async function linkOf(sheet: string): Promise<string> {
  if (sheet.length > LONGEST) return '';
  const packed = await through(new CompressionStream('deflate-raw'), new TextEncoder().encode(sheet));
  return `#1.${toLetters(packed)}`;
}

/** What an address holds: a sheet, or why it cannot be read. */
export type Held = { readonly sheet: string } | { readonly why: string };

const CUT =
  'the address holds a part, but not all of it: it was cut short on its way; ask for it again, or for the sheet as a file';
const NEWER = 'the address is of a newer page than this one: open it with that, or ask for the sheet as a file';

/** The sheet that an address holds; undefined where it holds none. */
export async function sheetOf(hash: string): Promise<Held | undefined> {
  if (hash.length < 2) return undefined;
  if (/^#[2-9]\./.test(hash)) return { why: NEWER };
  const sheet = await unpacked(hash);
  return sheet === undefined ? { why: CUT } : { sheet };
}

async function unpacked(hash: string): Promise<string | undefined> {
  const letters = /^#1\.([\w-]+)$/.exec(hash)?.[1];
  if (letters === undefined || letters.length > 4 * LONGEST) return undefined;
  try {
    const bytes = await through(new DecompressionStream('deflate-raw'), fromLetters(letters), 8 * LONGEST);
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

async function through(
  stream: CompressionStream | DecompressionStream,
  bytes: Uint8Array<ArrayBuffer>,
  most = Number.POSITIVE_INFINITY,
): Promise<Uint8Array<ArrayBuffer>> {
  const pieces: Uint8Array[] = [];
  let length = 0;
  const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    length += next.value.length;
    if (length > most) throw new RangeError('too long');
    pieces.push(next.value);
  }
  const whole = new Uint8Array(length);
  pieces.reduce((at, piece) => {
    whole.set(piece, at);
    return at + piece.length;
  }, 0);
  return whole;
}

function toLetters(bytes: Uint8Array): string {
  const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

function fromLetters(letters: string): Uint8Array<ArrayBuffer> {
  const text = atob(letters.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(text, (letter) => letter.charCodeAt(0));
}
