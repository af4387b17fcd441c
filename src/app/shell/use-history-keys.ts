import { useEffect, useEffectEvent } from 'react';
import { useSheetActions } from '../state/sheet-context.ts';

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.matches('input:not([type="radio"]), textarea, [contenteditable]');

/** Undo and redo by the keys of the system; inside a field they belong to its text. */
export function useHistoryKeys(): void {
  const { undo, redo } = useSheetActions();
  const pressed = useEffectEvent((event: KeyboardEvent) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return;
    const key = event.key.toLowerCase();
    if (key === 'z' && !event.shiftKey) undo();
    else if (key === 'y' || (key === 'z' && event.shiftKey)) redo();
    else return;
    event.preventDefault();
  });
  useEffect(() => {
    const listen = (event: KeyboardEvent) => pressed(event);
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, []);
}
