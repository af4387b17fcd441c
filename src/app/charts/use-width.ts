import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The width that an element has, px, followed as it changes; what is assumed before it is known. */
export function useWidth<E extends HTMLElement>(assumed: number): [RefObject<E | null>, number] {
  const element = useRef<E>(null);
  const [width, setWidth] = useState(assumed);
  useLayoutEffect(() => {
    const watched = element.current;
    if (watched === null) return undefined;
    const take = () => {
      if (watched.clientWidth > 0) setWidth(watched.clientWidth);
    };
    take();
    if (typeof ResizeObserver === 'undefined') return undefined;
    const observer = new ResizeObserver(take);
    observer.observe(watched);
    return () => observer.disconnect();
  }, []);
  return [element, width];
}
