import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './theme/tokens.css';
import './theme/ground.css';
import { App } from './shell/app.tsx';
import { keptJoint } from './state/kept-joint.ts';
import { keptTheme, showTheme } from './theme/theme.ts';

const root = document.getElementById('root');
if (root) {
  const storage = () => window.localStorage;
  // Before anything is painted.
  showTheme(keptTheme(storage), document.documentElement);
  const kept = keptJoint(storage);
  createRoot(root).render(
    <StrictMode>
      <App kept={kept} />
    </StrictMode>,
  );
}

if (import.meta.env.PROD && 'serviceWorker' in navigator) {
  void navigator.serviceWorker.register('./sw.js');
}
