import { lazy, memo, type ReactNode, Suspense, useCallback } from 'react';
import { Drawer } from '../joint/drawer/drawer.tsx';
import { Given } from '../joint/given/given.tsx';
import { JointPanel } from '../joint/joint-panel.tsx';
import { HowTight } from '../questions/how-tight/how-tight.tsx';
import { Notices } from '../questions/notices/notices.tsx';
import { WhatHole } from '../questions/what-hole/what-hole.tsx';
import { WhichInsert } from '../questions/which-insert/which-insert.tsx';
import { useFindings, useSheetActions } from '../state/sheet-context.ts';
import { shownNotices } from '../state/shown-notices.ts';
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
  return (
    <>
      <main id="sheet" tabIndex={-1}>
        <JointPanel />
        <Given />
        <Part name="The ranking">
          <Ranking />
        </Part>
        <PanelBoundary name="The drawer">
          <Drawer />
        </PanelBoundary>
        <Part name="The hole">
          <TheHole />
        </Part>
        <Part name="My printer">
          <ThePrinter />
        </Part>
        <Part name="A hole that is there">
          <GivenHole />
        </Part>
        <Part name="The torque">
          <TheTorque />
        </Part>
        <Part name="The life of the joint">
          <TheLife />
        </Part>
        <Part name="The chances">
          <TheChances />
        </Part>
        <Part name="The coupons">
          <TheCoupons />
        </Part>
        <Part name="What to know">
          <WhatToKnow />
        </Part>
        <Part name="The tests">
          <Suspense fallback={null}>
            <TestLog />
          </Suspense>
        </Part>
        <Part name="What the tests say">
          <StaleFrame of="answers">
            <Suspense fallback={<section id="tests" aria-busy="true" />}>
              <WhatTestsSay />
            </Suspense>
          </StaleFrame>
        </Part>
        <CalculationLink />
      </main>
      <Late>
        <Footer />
      </Late>
    </>
  );
}

function Part({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    <PanelBoundary name={name}>
      <Late>{children}</Late>
    </PanelBoundary>
  );
}

/** What stands in a part is drawn anew for the findings of that part alone. */
const Ranking = memo(function Ranking() {
  const { edit } = useSheetActions();
  const { joint, drawer, recommendation, shown } = useFindings();
  const choose = useCallback(
    (id: string) => edit('chosenInsert', { path: 'chosenInsert', value: id }),
    [edit],
  );
  if (!shown || recommendation.kind !== 'answered') return null;
  return (
    <StaleFrame of="ranking">
      <WhichInsert
        joint={joint}
        drawer={drawer}
        recommendation={recommendation}
        chosenInsertId={shown.insert.id}
        onChoose={choose}
      />
    </StaleFrame>
  );
});

const TheHole = memo(function TheHole() {
  const { joint, shown } = useFindings();
  if (!shown) return null;
  return (
    <StaleFrame of="answers">
      <WhatHole joint={joint} assessment={shown.assessment} />
    </StaleFrame>
  );
});

const ThePrinter = memo(function ThePrinter() {
  const { shown } = useFindings();
  if (!shown) return null;
  return (
    <Suspense fallback={null}>
      <MyPrinter />
    </Suspense>
  );
});

/** Stands as well where no insert can be computed: the hole that was given may be why, and must stay in reach. */
const GivenHole = memo(function GivenHole() {
  const { stop } = useFindings();
  if (stop) return null;
  return (
    <Suspense fallback={null}>
      <ExistingHole finder={<HoleFinder />} />
    </Suspense>
  );
});

const TheTorque = memo(function TheTorque() {
  const { joint, shown } = useFindings();
  if (!shown) return null;
  return (
    <StaleFrame of="answers">
      <HowTight joint={joint} assessment={shown.assessment} />
    </StaleFrame>
  );
});

const TheLife = memo(function TheLife() {
  const { joint, shown } = useFindings();
  if (!shown) return null;
  return (
    <StaleFrame of="answers">
      <Suspense fallback={<section id="hold" aria-busy="true" />}>
        <WillItHold joint={joint} shown={shown} />
      </Suspense>
    </StaleFrame>
  );
});

const TheChances = memo(function TheChances() {
  const { joint, shown } = useFindings();
  if (!shown) return null;
  return (
    <StaleFrame of="answers">
      <Suspense fallback={null}>
        <HowSure joint={joint} insert={shown.insert} assessment={shown.assessment} />
      </Suspense>
    </StaleFrame>
  );
});

const TheCoupons = memo(function TheCoupons() {
  const { joint, shown } = useFindings();
  if (!shown) return null;
  return (
    <StaleFrame of="answers">
      <Suspense fallback={null}>
        <Coupons joint={joint} assessment={shown.assessment} />
      </Suspense>
    </StaleFrame>
  );
});

const WhatToKnow = memo(function WhatToKnow() {
  const { joint, shown } = useFindings();
  if (!shown) return null;
  return (
    <div className={styles.notices}>
      <Notices notices={shownNotices(joint, shown.insert, shown.assessment)} />
    </div>
  );
});
