import { type RefObject, useLayoutEffect } from 'react';

/** Room that a message keeps from the edge of the window, px. */
const EDGE = 16;

/**
 * Shifts the messages of fields that lie on a drawing, so that none is cut off by the edge of the window.
 * After every drawing: messages come and go with what is typed.
 */
export function useMessagesInView(ref: RefObject<HTMLElement | null>): void {
  useLayoutEffect(() => {
    for (const message of ref.current?.querySelectorAll<HTMLElement>('[data-refused] > [role="alert"]') ??
      []) {
      message.style.marginLeft = '';
      const { left, right } = message.getBoundingClientRect();
      const beyond = right - (document.documentElement.clientWidth - EDGE);
      if (left < EDGE) message.style.marginLeft = `${EDGE - left}px`;
      else if (beyond > 0) message.style.marginLeft = `${-beyond}px`;
    }
  });
}
