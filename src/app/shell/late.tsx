import { type ReactNode, useDeferredValue, useEffect, useRef, useState } from 'react';
import { useInReach } from '../charts/use-in-reach.ts';
import { whenIdle } from '../questions/when-idle.ts';
import { FindingsContext, useFindings } from '../state/sheet-context.ts';

/** A part so near to the window follows at once: the next turn of a wheel shows it, px. */
const NEAR = 150;

/**
 * A part that follows an edit right after the answers and the drawing, so that these show it first: at once where it
 * is in the window, else when the page has nothing better to do or it comes near. Busy until then.
 */
export function Late({ children }: { readonly children: ReactNode }) {
  const latest = useFindings();
  const [wanted, setWanted] = useState(latest);
  const part = useRef<HTMLDivElement>(null);
  const isInReach = useInReach(part, NEAR);
  if (isInReach && wanted !== latest) setWanted(latest);
  useEffect(
    () => (isInReach || wanted === latest ? undefined : whenIdle(() => setWanted(latest))),
    [isInReach, wanted, latest],
  );
  const findings = useDeferredValue(wanted);
  return (
    <div ref={part} aria-busy={findings !== latest || undefined}>
      <FindingsContext value={findings}>{children}</FindingsContext>
    </div>
  );
}
