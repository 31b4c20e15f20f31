// biome-ignore lint/suspicious/noExplicitAny: the package's own types are 1.6 MB, and it need not be installed
export type OpenCascade = any;
// biome-ignore lint/suspicious/noExplicitAny: as above
export type OcShape = any;

/** Handles of the kernel live outside the garbage collector. */
interface Handle {
  delete(): void;
}

/** The kernel at work on a part. */
export interface Session {
  readonly oc: OpenCascade;
  /** marks a handle to be freed in the end */
  readonly keep: <T extends Handle>(handle: T) => T;
}

/** Runs work on the kernel's objects and frees every one that was kept, the last first. */
export function inSession<T>(oc: OpenCascade, work: (session: Session) => T): T {
  const kept: Handle[] = [];
  const keep = <T extends Handle>(handle: T): T => {
    kept.push(handle);
    return handle;
  };
  try {
    return work({ oc, keep });
  } finally {
    for (const handle of kept.reverse()) handle.delete();
  }
}
