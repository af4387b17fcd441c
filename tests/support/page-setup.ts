import { afterEach, vi } from 'vitest';

// Only for tests that opt in to a page with "@vitest-environment jsdom": the other ones stay quick.
if (typeof document !== 'undefined') {
  const { cleanup, configure } = await import('@testing-library/react');
  await import('@testing-library/jest-dom/vitest');
  // One document serves many files: none of them finds what another one has set.
  // A busy machine is slow, not wrong: what is waited for may take long to come.
  configure({ defaultHidden: false, asyncUtilTimeout: 20_000 });
  localStorage.clear();
  history.replaceState(null, '', '/');
  afterEach(() => {
    vi.useRealTimers();
    cleanup();
  });
  // Edits of a page go through its door; a person types later than it takes to load.
  const { openDoor } = await import('../../src/app/state/door.ts');
  await openDoor();
}
