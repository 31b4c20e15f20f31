import { InputError } from '../units/faults.js';

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'no permission',
  EPERM: 'not permitted',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  ENOENT: 'no such file or folder',
  ENOTDIR: 'a file is in the way of a folder',
  EEXIST: 'a file is in the way of a folder',
  EISDIR: 'is a folder',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'the links go round in a circle',
  EMFILE: 'too many files are open',
  EBUSY: 'is in use',
  EIO: 'the disk reports a fault',
};

/** Why a disk call failed, in one line; an error that is not the disk's is thrown on. */
export function diskReason(error: unknown): string {
  if (error instanceof InputError) return error.message;
  const code = error instanceof Error && 'code' in error ? String(error.code) : undefined;
  if (code === undefined) throw error;
  return REASONS[code] ?? `the disk answers ${code}`;
}
