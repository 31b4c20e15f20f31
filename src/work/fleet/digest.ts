import { createHash, webcrypto } from 'node:crypto';

/** SHA-256 as base64, as security policies name it. */
export function sha256Base64(content: string): string {
  return createHash('sha256').update(content).digest('base64');
}

/** SHA-256 as hexadecimal digits. */
export function sha256(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}

/** The same of bytes, worked out beside what this thread does. */
export async function sha256Aside(content: Uint8Array): Promise<string> {
  return Buffer.from(await webcrypto.subtle.digest('SHA-256', content)).toString('hex');
}
