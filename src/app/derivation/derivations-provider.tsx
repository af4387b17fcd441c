import { type ReactNode, useCallback, useMemo, useState } from 'react';
import { type Derivations, DerivationsContext } from './derivation-context.ts';

/** Stands once round the page: knows which derivation is open and where each row keeps its place for one. */
export function DerivationsProvider({ children }: { readonly children: ReactNode }) {
  const [opened, setOpened] = useState<string | null>(null);
  const [places, setPlaces] = useState<ReadonlyMap<string, HTMLElement>>(() => new Map());
  const toggle = useCallback((id: string) => setOpened((now) => (now === id ? null : id)), []);
  const close = useCallback((id: string) => setOpened((now) => (now === id ? null : now)), []);
  const setPlace = useCallback((slot: string, element: HTMLElement | null) => {
    setPlaces((before) => {
      const after = new Map(before);
      if (element === null) after.delete(slot);
      else after.set(slot, element);
      return after;
    });
  }, []);
  const derivations = useMemo<Derivations>(
    () => ({ opened, toggle, close, places, setPlace }),
    [opened, toggle, close, places, setPlace],
  );
  return <DerivationsContext value={derivations}>{children}</DerivationsContext>;
}
