const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const CODES = new TextEncoder().encode(LETTERS);

/**
 * Bytes as base64.
 * @source rfc-4648
 * @example base64(new Uint8Array([77, 97])) // 'TWE='
 */
export function base64(bytes: Uint8Array): string {
  const text = new Uint8Array(4 * Math.ceil(bytes.length / 3)).fill(61);
  let to = 0;
  for (let i = 0; i < bytes.length; i += 3) {
    const a = bytes[i]!;
    const b = bytes[i + 1] ?? 0;
    const c = bytes[i + 2] ?? 0;
    text[to] = CODES[a >> 2]!;
    text[to + 1] = CODES[((a & 3) << 4) | (b >> 4)]!;
    if (i + 1 < bytes.length) text[to + 2] = CODES[((b & 15) << 2) | (c >> 6)]!;
    if (i + 2 < bytes.length) text[to + 3] = CODES[c & 63]!;
    to += 4;
  }
  return new TextDecoder().decode(text);
}
