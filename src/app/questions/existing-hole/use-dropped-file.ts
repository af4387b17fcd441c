import { type RefObject, useEffect, useEffectEvent, useRef, useState } from 'react';

/** A place that takes a dropped file, and whether one hangs over it. A field beside it is the way without a mouse. */
export function useDroppedFile(
  take: (file: File | undefined) => void,
): [RefObject<HTMLDivElement | null>, boolean] {
  const place = useRef<HTMLDivElement>(null);
  const [isOver, setOver] = useState(false);
  const taken = useEffectEvent(take);
  useEffect(() => {
    const { current } = place;
    if (current === null) return undefined;
    const listening = new AbortController();
    const { signal } = listening;
    current.addEventListener(
      'dragover',
      (event) => {
        event.preventDefault();
        setOver(true);
      },
      { signal },
    );
    current.addEventListener('dragleave', () => setOver(false), { signal });
    current.addEventListener(
      'drop',
      (event) => {
        event.preventDefault();
        setOver(false);
        taken(event.dataTransfer?.files[0]);
      },
      { signal },
    );
    return () => listening.abort();
  }, []);
  return [place, isOver];
}
