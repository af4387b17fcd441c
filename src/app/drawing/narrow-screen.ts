import { useCallback, useState, useSyncExternalStore } from 'react';

/** The narrow drawing serves screens up to 960 px; paper always takes the wide one. */
const NARROW = 'screen and (max-width: 960px)';

/** A page that is built without a screen, as in tests, cannot be asked for its width. */
const page: Partial<Pick<Window, 'matchMedia'>> = globalThis;

/** True on a screen that is too narrow for notes beside the drawing. */
export function useNarrowScreen(): boolean {
  // Asked for once: the browser parses the words anew each time.
  const [query] = useState(() => page.matchMedia?.(NARROW));
  const subscribe = useCallback(
    (onChange: () => void) => {
      query?.addEventListener('change', onChange);
      return () => query?.removeEventListener('change', onChange);
    },
    [query],
  );
  return useSyncExternalStore(
    subscribe,
    () => query?.matches ?? false,
    () => false,
  );
}
