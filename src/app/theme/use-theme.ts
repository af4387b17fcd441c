import { useLayoutEffect, useState } from 'react';
import { keepTheme, keptTheme, showTheme, type Theme } from './theme.ts';

const storage = () => window.localStorage;

/** The theme in force and how to change it. */
export function useTheme(): readonly [Theme, (theme: Theme) => void] {
  const [theme, setTheme] = useState<Theme>(() => keptTheme(storage));
  useLayoutEffect(() => showTheme(theme, document.documentElement), [theme]);
  const choose = (next: Theme) => {
    setTheme(next);
    keepTheme(next, storage);
  };
  return [theme, choose];
}
