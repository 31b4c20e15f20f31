/** How a call ended; where several things happened, the highest counts. */
export const EXIT = {
  /** cautions and accepted fails included */
  done: 0,
  /** a check failed, its part was not written */
  failed: 1,
  /** the input or the call is wrong */
  wrong: 2,
  /** our own fault */
  internal: 3,
} as const;
