import { useEffect, useRef } from 'react';
import { KEPT_KEY, keepJoint } from '../state/keep-joint.ts';
import { useSheetValue } from '../state/sheet-context.ts';
import { useSay } from './say.ts';

const storage = () => window.localStorage;
/** Waits until a run of steps is over, ms. */
const CALM = 300;

/**
 * Keeps each new state of the joint on this device; says so once when the browser does not take it, or when another
 * window of the page keeps a joint in the same place.
 */
export function useAutosave(mayKeep: boolean): void {
  const document = useSheetValue(({ journal }) => journal.present);
  const say = useSay();
  const kept = useRef(document);
  const hasSaid = useRef(false);
  useEffect(() => {
    if (!mayKeep || kept.current === document) return undefined;
    const keep = () => {
      if (kept.current === document) return;
      kept.current = document;
      if (keepJoint(document, storage) || hasSaid.current) return;
      hasSaid.current = true;
      say({ text: 'This browser keeps nothing here: save the joint as a file before you leave.' });
    };
    const timer = setTimeout(keep, CALM);
    // A page that is left before the wait is over keeps at once.
    window.addEventListener('pagehide', keep);
    return () => {
      clearTimeout(timer);
      window.removeEventListener('pagehide', keep);
    };
  }, [document, mayKeep, say]);
  const hasSaidOther = useRef(false);
  useEffect(() => {
    // Heard only of what other windows keep.
    const hear = ({ key, newValue }: StorageEvent) => {
      if (key !== KEPT_KEY || newValue === null || hasSaidOther.current) return;
      hasSaidOther.current = true;
      say({
        text: 'Another window of this page keeps a joint on this device as well, and only what was changed last is kept: save this joint as a file to have both.',
      });
    };
    window.addEventListener('storage', hear);
    return () => window.removeEventListener('storage', hear);
  }, [say]);
}
