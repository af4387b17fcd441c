/** The ground the sheet is shown on; 'system' follows the device. */
export type Theme = 'system' | 'light' | 'dark';

export const THEMES: readonly { readonly value: Theme; readonly label: string }[] = [
  { value: 'system', label: 'as the system' },
  { value: 'light', label: 'light' },
  { value: 'dark', label: 'dark' },
];

const KEY = 'knurlwright theme';

const isTheme = (text: string | null): text is Theme => THEMES.some(({ value }) => value === text);

/** The theme chosen earlier on this device; 'system' where there is none or storage is closed. */
export function keptTheme(storage: () => Storage): Theme {
  try {
    const text = storage().getItem(KEY);
    return isTheme(text) ? text : 'system';
  } catch {
    return 'system';
  }
}

/** Keeps the choice for the next visit where the browser allows it. */
export function keepTheme(theme: Theme, storage: () => Storage): void {
  try {
    if (theme === 'system') storage().removeItem(KEY);
    else storage().setItem(KEY, theme);
  } catch {
    // Private windows and closed storage: the choice holds for this visit.
  }
}

/** Puts the theme on the page. */
export function showTheme(theme: Theme, root: HTMLElement): void {
  if (theme === 'system') root.removeAttribute('data-theme');
  else root.setAttribute('data-theme', theme);
}
