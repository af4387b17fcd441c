import { useSyncExternalStore } from 'react';

/** The narrow drawing serves screens up to 960 px; paper always takes the wide one. */
const NARROW = 'screen and (max-width: 960px)';

/** A page that is built without a screen, as in tests, cannot be asked for its width. */
const page: Partial<Pick<Window, 'matchMedia'>> = globalThis;

const narrowQuery = () => page.matchMedia?.(NARROW);

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
