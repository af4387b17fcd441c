import { useSyncExternalStore } from 'react';

/** The narrow drawing serves screens up to 960 px; paper always takes the wide one. */
const NARROW = 'screen and (max-width: 960px)';

const narrowQuery = () =>
  typeof window !== 'undefined' && 'matchMedia' in window ? window.matchMedia(NARROW) : undefined;

function subscribe(onChange: () => void): () => void {
  const query = narrowQuery();
  query?.addEventListener('change', onChange);
  return () => query?.removeEventListener('change', onChange);
}

/** True on a screen that is too narrow for notes beside the drawing. */
export function useNarrowScreen(): boolean {
  return useSyncExternalStore(
    subscribe,
    () => narrowQuery()?.matches ?? false,
    () => false,
  );
}
