import { createContext, useContext } from 'react';

/** Which number of the page stands open: one at a time. */
export interface Derivations {
  /** Id of the number that is open; null when none is. */
  readonly opened: string | null;
  readonly toggle: (id: string) => void;
  readonly close: (id: string) => void;
  /** Where the derivations of a row appear, by the name of the slot. */
  readonly places: ReadonlyMap<string, HTMLElement>;
  readonly setPlace: (slot: string, element: HTMLElement | null) => void;
}

export const DerivationsContext = createContext<Derivations | null>(null);

/** Name of the slot that the numbers of a row open in, where they name none themselves. */
export const RowSlotContext = createContext<string | null>(null);

export function useDerivations(): Derivations {
  const derivations = useContext(DerivationsContext);
  if (derivations === null) throw new Error('A computed value stands outside of DerivationsProvider.');
  return derivations;
}
