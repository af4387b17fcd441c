import { type RefObject, useEffect, useState } from 'react';
import { flushSync } from 'react-dom';

/** How far above and below the window something counts as in reach: it is ready before it is scrolled to. */
const AROUND = '600px 0px';

/**
 * Whether an element can be seen now, or soon: it is in the window or near it, or the page is about to be printed.
 * True where nobody can tell.
 */
export function useInReach(ref: RefObject<HTMLElement | null>): boolean {
  const [isNear, setNear] = useState(() => typeof IntersectionObserver === 'undefined');
  const [isPrinted, setPrinted] = useState(false);
  useEffect(() => {
    const watched = ref.current;
    if (watched === null || typeof IntersectionObserver === 'undefined') return undefined;
    const observer = new IntersectionObserver(
      (entries) => {
        const latest = entries.at(-1);
        if (latest) setNear(latest.isIntersecting);
      },
      { rootMargin: AROUND },
    );
    observer.observe(watched);
    return () => observer.disconnect();
  }, [ref]);
  useEffect(() => {
    // The page is laid out for paper as soon as those who listen have been told.
    const begin = () => flushSync(() => setPrinted(true));
    const end = () => setPrinted(false);
    window.addEventListener('beforeprint', begin);
    window.addEventListener('afterprint', end);
    return () => {
      window.removeEventListener('beforeprint', begin);
      window.removeEventListener('afterprint', end);
    };
  }, []);
  return isNear || isPrinted;
}
