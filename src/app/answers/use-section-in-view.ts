import { useEffect, useState } from 'react';

/** The line across the window that a section must reach to be the one in view, from the top. */
const READING_LINE = 0.4;

/** The section that is being read, of those named; null above the first and below the last. */
export function useSectionInView<Id extends string>(ids: readonly Id[]): Id | null {
  const [now, setNow] = useState<Id | null>(null);
  useEffect(() => {
    let frame = 0;
    const look = () => {
      frame = 0;
      const line = window.innerHeight * READING_LINE;
      const found = ids.find((id) => {
        const box = document.getElementById(id)?.getBoundingClientRect();
        return box !== undefined && box.top <= line && box.bottom > line;
      });
      setNow(found ?? null);
    };
    const later = () => {
      if (frame === 0) frame = requestAnimationFrame(look);
    };
    look();
    window.addEventListener('scroll', later, { passive: true });
    window.addEventListener('resize', later);
    return () => {
      cancelAnimationFrame(frame);
      window.removeEventListener('scroll', later);
      window.removeEventListener('resize', later);
    };
  }, [ids]);
  return now;
}
