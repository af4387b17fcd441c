import { lazy, Suspense, useCallback, useEffect, useState } from 'react';
import { Answers } from '../answers/answers.tsx';
import { FIRST_JOINT } from '../demos/demo-list.ts';
import { DerivationsProvider } from '../derivation/derivations-provider.tsx';
import type { Kept } from '../state/kept-joint.ts';
import { useFindingsValue, useSheetValue } from '../state/sheet-context.ts';
import { SheetProvider } from '../state/sheet-provider.tsx';
import styles from './app.module.css';
import { Masthead } from './masthead.tsx';
import { MessageLine } from './message-line.tsx';
import { PanelBoundary } from './panel-boundary.tsx';
import { type Message, SayContext } from './say.ts';
import { useAutosave } from './use-autosave.ts';
import { useHistoryKeys } from './use-history-keys.ts';

/** Words that a joint which may be answered never asks for. */
const StopNotice = lazy(() => import('./stop-notice.tsx').then((module) => ({ default: module.StopNotice })));

/** Comes after the answers, so that they stand there sooner. */
const Sheet = lazy(() => import('./sheet.tsx').then((module) => ({ default: module.Sheet })));

/** The page, beginning with the joint that was kept on this device, or the first demonstration. */
export function App({ kept }: { readonly kept: Kept }) {
  const [message, setMessage] = useState<Message | null>(null);
  useEffect(() => {
    if (kept.kind !== 'set-aside') return;
    // Hardly ever: its words are loaded when they are needed.
    void import('./first-message.ts').then(({ firstMessage }) => firstMessage(kept)).then(setMessage);
  }, [kept]);
  const done = useCallback(() => setMessage(null), []);
  return (
    <SheetProvider first={kept.kind === 'read' ? kept.document : FIRST_JOINT}>
      <SayContext value={setMessage}>
        <DerivationsProvider>
          <Keeper mayKeep={kept.kind !== 'set-aside' || kept.moved} />
          <a className={styles.skip} href="#sheet">
            To the joint
          </a>
          <div className={styles.sheet}>
            <Masthead />
            <MessageLine message={message} onDone={done} />
            <PanelBoundary name="The sheet">
              <Body />
            </PanelBoundary>
          </div>
        </DerivationsProvider>
      </SayContext>
    </SheetProvider>
  );
}

function Body() {
  const stop = useFindingsValue((findings) => findings.stop);
  return (
    <>
      {stop ? (
        <Suspense fallback={null}>
          <StopNotice stop={stop} />
        </Suspense>
      ) : null}
      <Answers />
      <PanelBoundary name="The joint">
        <Suspense fallback={<main id="sheet" className={styles.coming} aria-busy="true" />}>
          <Sheet />
        </Suspense>
      </PanelBoundary>
    </>
  );
}

function Keeper({ mayKeep }: { readonly mayKeep: boolean }) {
  const name = useSheetValue(({ journal }) => journal.present.name);
  useAutosave(mayKeep);
  useHistoryKeys();
  return <title>{`${name}: Knurlwright`}</title>;
}
