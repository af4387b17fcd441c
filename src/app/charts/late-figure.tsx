import {
  type ComponentType,
  type RefObject,
  startTransition,
  useEffect,
  useEffectEvent,
  useState,
} from 'react';
import { flushSync } from 'react-dom';
import styles from './charts.module.css';
import { useInReach } from './use-in-reach.ts';
import { useWidth } from './use-width.ts';

interface LateFigureProps<Content extends object> {
  /** The same object while nothing in it has changed. */
  readonly content: Content;
  /** Kept between renders, so that it is drawn anew for another content or width only. */
  readonly drawing: ComponentType<Content & { readonly width: number }>;
}

const ASSUMED_WIDTH = 1030;

/**
 * A figure that is long work to draw. It follows an edit after the answers, and only while it can be seen or its table
 * stands open; out of reach it keeps its last drawing, marked as stale, until somebody comes near.
 */
export function LateFigure<Content extends object>({ content, drawing: Drawing }: LateFigureProps<Content>) {
  const [figure, width] = useWidth<HTMLElement>(ASSUMED_WIDTH);
  const isInReach = useInReach(figure);
  const isOpen = useIsOpen(figure);
  const [drawn, setDrawn] = useState(content);
  const isWanted = isInReach || isOpen;
  useEffect(() => {
    if (isWanted) startTransition(() => setDrawn(content));
  }, [isWanted, content]);
  const drawNow = useEffectEvent(() => flushSync(() => setDrawn(content)));
  useEffect(() => {
    // The page is laid out for paper as soon as those who listen have been told.
    const print = () => drawNow();
    window.addEventListener('beforeprint', print);
    return () => window.removeEventListener('beforeprint', print);
  }, []);
  const isStale = drawn !== content;
  return (
    <figure
      ref={figure}
      className={styles['figure']}
      aria-busy={isStale || undefined}
      data-stale={isStale || undefined}
    >
      <Drawing {...drawn} width={width} />
    </figure>
  );
}

/** Whether the table of a figure stands open. */
function useIsOpen(figure: RefObject<HTMLElement | null>): boolean {
  const [isOpen, setOpen] = useState(false);
  useEffect(() => {
    const watched = figure.current;
    const look = () => setOpen(watched?.querySelector('details[open]') !== null);
    // The event does not rise, but is met on its way down.
    watched?.addEventListener('toggle', look, { capture: true });
    return () => watched?.removeEventListener('toggle', look, { capture: true });
  }, [figure]);
  return isOpen;
}
