import { type RefObject, useEffect, useState } from 'react';

/** Whether an element has been scrolled out of view upwards. */
export function useHasLeft(ref: RefObject<HTMLElement | null>): boolean {
  const [hasLeft, setHasLeft] = useState(false);
  useEffect(() => {
    const element = ref.current;
    if (element === null || !('IntersectionObserver' in window)) return undefined;
    const observer = new IntersectionObserver(([entry]) => {
      if (entry) setHasLeft(!entry.isIntersecting && entry.boundingClientRect.bottom <= 0);
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return hasLeft;
}
