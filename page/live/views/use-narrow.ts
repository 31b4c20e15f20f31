import { useEffect, useState } from 'preact/hooks';

/** A phone held upright: there is room for one thing beside the drawing. */
const NARROW = '(max-width: 599px)';

/** Whether the page is as narrow as a phone, now and when it is turned. */
export function useNarrow(): boolean {
  const [isNarrow, setNarrow] = useState(() => matchMedia(NARROW).matches);
  useEffect(() => {
    const query = matchMedia(NARROW);
    const tell = () => setNarrow(query.matches);
    query.addEventListener('change', tell);
    return () => query.removeEventListener('change', tell);
  }, []);
  return isNarrow;
}
