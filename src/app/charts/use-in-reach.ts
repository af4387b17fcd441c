import { type RefObject, useEffect, useState } from 'react';

/** How far above and below the window something counts as in reach: it is ready before it is scrolled to. */
const AROUND = '600px 0px';

/** Whether an element is in the window or near it; true where nobody can tell. */
export function useInReach(ref: RefObject<HTMLElement | null>): boolean {
  const [isNear, setNear] = useState(() => typeof IntersectionObserver === 'undefined');
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
  return isNear;
}
