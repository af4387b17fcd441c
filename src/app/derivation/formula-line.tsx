import { type ReactNode, useEffect, useLayoutEffect, useRef, useState } from 'react';

interface FormulaLineProps {
  /** What a screen reader calls the line when it stands alone. */
  readonly label: string;
  readonly className: string | undefined;
  readonly children: ReactNode;
}

/** A formula on a line of its own. One that is wider than the page scrolls, and can then be reached by keys. */
export function FormulaLine({ label, className, children }: FormulaLineProps) {
  const line = useRef<HTMLParagraphElement>(null);
  const [isWider, setWider] = useState(false);
  const measure = () => {
    const { current } = line;
    if (current !== null) setWider(current.scrollWidth > current.clientWidth);
  };
  // After each render, for what stands in the line may have changed.
  useLayoutEffect(measure);
  useEffect(() => {
    const { current } = line;
    if (current === null || typeof ResizeObserver === 'undefined') return undefined;
    const observer = new ResizeObserver(() => setWider(current.scrollWidth > current.clientWidth));
    // The line keeps its width when what stands in it grows: both are watched.
    for (const watched of [current, ...current.children]) observer.observe(watched);
    const frame = requestAnimationFrame(() => setWider(current.scrollWidth > current.clientWidth));
    return () => {
      cancelAnimationFrame(frame);
      observer.disconnect();
    };
  }, []);
  return (
    <p
      ref={line}
      className={className}
      {...(isWider ? { tabIndex: 0, role: 'group', 'aria-label': label } : {})}
    >
      {children}
    </p>
  );
}
