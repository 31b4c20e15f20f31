/** Lets the browser do what waits: scrolling, taps, paint. */
export function pause(): Promise<void> {
  return new Promise((go) => setTimeout(go));
}
