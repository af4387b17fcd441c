import { type RefObject, useEffect, useRef, useState } from 'react';

/** How far below the window something counts as near. */
const AHEAD = '600px';

/** Whether an element is in the window or about to be; true from then on, and where nobody can tell. */
export function useNear<E extends HTMLElement>(): [RefObject<E | null>, boolean] {
  const element = useRef<E>(null);
  const [isNear, setIsNear] = useState(() => typeof IntersectionObserver === 'undefined');
  useEffect(() => {
    const watched = element.current;
    if (watched === null || isNear) return undefined;
    const observer = new IntersectionObserver(
      ([entry]) => {
        if (entry?.isIntersecting) setIsNear(true);
      },
      { rootMargin: AHEAD },
    );
    observer.observe(watched);
    return () => observer.disconnect();
  }, [isNear]);
  return [element, isNear];
}
