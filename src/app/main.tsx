import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './theme/tokens.css';
import './theme/ground.css';
import { App } from './shell/app.tsx';
import { openDoor } from './state/door.ts';
import { isSomethingKept } from './state/keep-joint.ts';
import type { Kept } from './state/kept-joint.ts';
import { keptTheme, showTheme } from './theme/theme.ts';

const root = document.getElementById('root');
if (root) {
  const storage = () => window.localStorage;
  // Before anything is painted.
  showTheme(keptTheme(storage), document.documentElement);
  const show = (kept: Kept) =>
    createRoot(root).render(
      <StrictMode>
        <App kept={kept} />
      </StrictMode>,
    );
  // A kept joint goes through the door first; a first visit does not wait for it.
  if (isSomethingKept(storage)) {
    void Promise.all([import('./state/kept-joint.ts'), openDoor()]).then(([{ keptJoint }]) =>
      show(keptJoint(storage)),
    );
  } else show({ kind: 'nothing' });
  void openDoor();
}

if (import.meta.env.PROD && 'serviceWorker' in navigator) {
  void navigator.serviceWorker.register('./sw.js');
}
