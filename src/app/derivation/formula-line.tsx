import { type ReactNode, useEffect, useRef, useState } from 'react';
import styles from './formula.module.css';

interface FormulaLineProps {
  /** What a screen reader calls the line when it stands alone. */
  readonly label: string;
  readonly className: string | undefined;
  readonly children: ReactNode;
}

/** A formula on a line of its own. One that is wider than the page scrolls, and can then be reached by keys. */
export function FormulaLine({ label, className, children }: FormulaLineProps) {
  const line = useRef<HTMLParagraphElement>(null);
  const formula = useRef<HTMLSpanElement>(null);
  const [isWider, setWider] = useState(false);
  useEffect(() => {
    if (line.current === null || formula.current === null || typeof ResizeObserver === 'undefined')
      return undefined;
    const { current } = line;
    // The observer tells after the layout that the browser does anyway; asking sooner would make it do a second one.
    const observer = new ResizeObserver(() => setWider(current.scrollWidth > current.clientWidth));
    // The line keeps its width when what stands in it grows: both are watched.
    observer.observe(current);
    observer.observe(formula.current);
    return () => observer.disconnect();
  }, []);
  return (
    <p
      ref={line}
      className={className}
      {...(isWider ? { tabIndex: 0, role: 'group', 'aria-label': label } : {})}
    >
      <span ref={formula} className={styles['whole']}>
        {children}
      </span>
    </p>
  );
}
