import { lazy, memo, Suspense, useCallback } from 'react';
import { Drawer } from '../joint/drawer/drawer.tsx';
import { Given } from '../joint/given/given.tsx';
import { JointPanel } from '../joint/joint-panel.tsx';
import { HowTight } from '../questions/how-tight/how-tight.tsx';
import { Notices } from '../questions/notices/notices.tsx';
import { WhatHole } from '../questions/what-hole/what-hole.tsx';
import { WhichInsert } from '../questions/which-insert/which-insert.tsx';
import { useFindings, useSheetActions } from '../state/sheet-context.ts';
import { CalculationLink } from './calculation-link.tsx';
import { Footer } from './footer.tsx';
import { Late } from './late.tsx';
import { PanelBoundary } from './panel-boundary.tsx';
import styles from './sheet.module.css';
import { StaleFrame } from './stale-frame.tsx';

const WillItHold = lazy(() =>
  import('../questions/will-it-hold/will-it-hold.tsx').then((module) => ({ default: module.WillItHold })),
);

const TestLog = lazy(() => import('../questions/test-log/test-log.tsx'));

const WhatTestsSay = lazy(() => import('../questions/what-tests-say/what-tests-say.tsx'));

/** Comes with the one question that asks for it. */
const HoleFinder = lazy(() =>
  import('../questions/existing-hole/hole-finder.tsx').then((module) => ({ default: module.HoleFinder })),
);
const ExistingHole = lazy(() => import('../questions/existing-hole/existing-hole.tsx'));

const MyPrinter = lazy(() => import('../questions/my-printer/my-printer.tsx'));

const Coupons = lazy(() => import('../questions/coupons/coupons-when-near.tsx'));

const HowSure = lazy(() => import('../questions/chance/chance.tsx'));

/** The body of the sheet: the joint, what is given, the questions in their order, the foot. */
export function Sheet() {
  const { shown } = useFindings();
  return (
    <>
      <main id="sheet" tabIndex={-1}>
        <JointPanel />
        <Given isDrawn={shown !== undefined} />
        <Late>
          <Ranking />
        </Late>
        <PanelBoundary name="The drawer">
          <Drawer />
        </PanelBoundary>
        <Late>
          <Questions />
        </Late>
        <PanelBoundary name="The tests">
          <Suspense fallback={null}>
            <TestLog />
          </Suspense>
        </PanelBoundary>
        <PanelBoundary name="What the tests say">
          <StaleFrame of="answers">
            <Suspense fallback={<section id="tests" aria-busy="true" />}>
              <WhatTestsSay />
            </Suspense>
          </StaleFrame>
        </PanelBoundary>
        {shown ? <CalculationLink shown={shown} /> : null}
      </main>
      <Footer />
    </>
  );
}

const Ranking = memo(function Ranking() {
  const { edit } = useSheetActions();
  const { joint, drawer, recommendation, shown } = useFindings();
  const choose = useCallback(
    (id: string) => edit('chosenInsert', { path: 'chosenInsert', value: id }),
    [edit],
  );
  if (!shown || recommendation.kind !== 'answered') return null;
  return (
    <PanelBoundary name="The ranking">
      <StaleFrame of="ranking">
        <WhichInsert
          joint={joint}
          drawer={drawer}
          recommendation={recommendation}
          chosenInsertId={shown.insert.id}
          onChoose={choose}
        />
      </StaleFrame>
    </PanelBoundary>
  );
});

const GivenHole = () => (
  <PanelBoundary name="A hole that is there">
    <Suspense fallback={null}>
      <ExistingHole finder={<HoleFinder />} />
    </Suspense>
  </PanelBoundary>
);

const ThePrinter = () => (
  <PanelBoundary name="My printer">
    <Suspense fallback={null}>
      <MyPrinter />
    </Suspense>
  </PanelBoundary>
);

const Questions = memo(function Questions() {
  const { joint, shown, stop } = useFindings();
  // No insert can be computed: a hole that was given may be why, and its fields must stay in reach.
  if (!shown) return stop ? null : <GivenHole />;
  const { assessment } = shown;
  return (
    <>
      <PanelBoundary name="The hole">
        <StaleFrame of="answers">
          <WhatHole joint={joint} assessment={assessment} />
        </StaleFrame>
      </PanelBoundary>
      <ThePrinter />
      <GivenHole />
      <PanelBoundary name="The torque">
        <StaleFrame of="answers">
          <HowTight joint={joint} assessment={assessment} />
        </StaleFrame>
      </PanelBoundary>
      <PanelBoundary name="The life of the joint">
        <StaleFrame of="answers">
          <Suspense fallback={<section id="hold" aria-busy="true" />}>
            <WillItHold joint={joint} shown={shown} />
          </Suspense>
        </StaleFrame>
      </PanelBoundary>
      <PanelBoundary name="The chances">
        <StaleFrame of="answers">
          <Suspense fallback={null}>
            <HowSure joint={joint} insert={shown.insert} assessment={assessment} />
          </Suspense>
        </StaleFrame>
      </PanelBoundary>
      <PanelBoundary name="The coupons">
        <StaleFrame of="answers">
          <Suspense fallback={null}>
            <Coupons joint={joint} assessment={assessment} />
          </Suspense>
        </StaleFrame>
      </PanelBoundary>
      <PanelBoundary name="What to know">
        <div className={styles.notices}>
          <Notices notices={assessment.notices} />
        </div>
      </PanelBoundary>
    </>
  );
});
