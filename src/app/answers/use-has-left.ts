import { type RefObject, useEffect, useState } from 'react';

/** All below the window counts as in view: a jump from below it to above it is then noticed, and so is the way back. */
const BELOW = '0px 0px 1000000px 0px';

/** Whether an element has been scrolled out of view upwards. */
export function useHasLeft(ref: RefObject<HTMLElement | null>): boolean {
  const [hasLeft, setHasLeft] = useState(false);
  useEffect(() => {
    const element = ref.current;
    if (element === null || !('IntersectionObserver' in window)) return undefined;
    const observer = new IntersectionObserver(
      ([entry]) => {
        if (entry) setHasLeft(!entry.isIntersecting);
      },
      { rootMargin: BELOW },
    );
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return hasLeft;
}
