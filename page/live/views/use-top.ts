import { useEffect } from 'preact/hooks';

/** A step begins at its top, wherever the last one was left. */
export function useTop(): void {
  useEffect(() => scrollTo(0, 0), []);
}
