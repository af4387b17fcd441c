import { type RefObject, useEffect, useRef } from 'react';

/** Runs something when Escape is pressed within an element; those round it are not told. */
export function useEscape(element: RefObject<HTMLElement | null>, onEscape: (() => void) | undefined): void {
  const latest = useRef(onEscape);
  useEffect(() => {
    latest.current = onEscape;
  });
  const isHeard = onEscape !== undefined;
  useEffect(() => {
    const watched = element.current;
    if (watched === null || !isHeard) return undefined;
    const take = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      event.stopPropagation();
      latest.current?.();
    };
    watched.addEventListener('keydown', take);
    return () => watched.removeEventListener('keydown', take);
  }, [element, isHeard]);
}
