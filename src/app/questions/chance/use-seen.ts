import { type RefObject, useEffect, useRef, useState } from 'react';

/** Whether an element has come into view; once seen it stays so. */
export function useSeen<E extends HTMLElement>(): [RefObject<E | null>, boolean] {
  const element = useRef<E>(null);
  const [isSeen, setSeen] = useState(typeof IntersectionObserver === 'undefined');
  useEffect(() => {
    const watched = element.current;
    if (isSeen || watched === null) return undefined;
    const observer = new IntersectionObserver((entries) => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) setSeen(true);
    });
    observer.observe(watched);
    return () => observer.disconnect();
  }, [isSeen]);
  return [element, isSeen];
}
