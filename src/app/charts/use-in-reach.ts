import { type RefObject, useEffect, useState } from 'react';

/** How far above and below the window something counts as in reach, px: it is ready before it is scrolled to. */
const AROUND = 600;

/**
 * Whether an element is in the window or near it; true where nobody can tell.
 *
 * @param around - how far above and below the window still counts, px
 */
export function useInReach(ref: RefObject<HTMLElement | null>, around: number = AROUND): boolean {
  const [isNear, setNear] = useState(() => typeof IntersectionObserver === 'undefined');
  useEffect(() => {
    const watched = ref.current;
    if (watched === null || typeof IntersectionObserver === 'undefined') return undefined;
    const observer = new IntersectionObserver(
      (entries) => {
        const latest = entries.at(-1);
        if (latest) setNear(latest.isIntersecting);
      },
      { rootMargin: `${around}px 0px` },
    );
    observer.observe(watched);
    return () => observer.disconnect();
  }, [ref, around]);
  return isNear;
}
