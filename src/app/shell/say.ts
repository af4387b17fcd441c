import { createContext, useContext } from 'react';

/** Something the page has to tell, in a line of its own below the title. */
export interface Message {
  readonly text: string;
  /** Reasons, one a line. */
  readonly lines?: readonly string[];
  readonly isFault?: boolean;
  readonly offer?: { readonly label: string; readonly apply: () => void };
}

export const SayContext = createContext<(message: Message) => void>(() => undefined);

export const useSay = (): ((message: Message) => void) => useContext(SayContext);
