import { useNarrowScreen } from '../drawing/narrow-screen.ts';
import { useFindings } from '../state/sheet-context.ts';
import styles from './pattern.module.css';
import { PlanFigure } from './plan-figure.tsx';
import { isWorthAPlan, planInput } from './plan-input.ts';
import { edgeWords } from './plan-words.ts';
import { ScrewList } from './screw-list.tsx';

/** The screws in plan with what acts on the part, where there is more than one screw at the load. */
export function PatternPlan() {
  const { joint } = useFindings();
  const isNarrow = useNarrowScreen();
  if (!isWorthAPlan(joint)) return null;
  const input = planInput(joint);
  return (
    <div>
      <PlanFigure input={input} variant={isNarrow ? 'narrow' : 'wide'} />
      <p className={styles.key}>
        Seen from the heads. A cross marks the middle of the screws, a ring with a point a pull towards you;
        two heads mark a moment that tilts the part about the arrow. {edgeWords(input)}
      </p>
    </div>
  );
}

/** The same in a list: what each screw has to hold. */
export function PatternScrews() {
  const { joint } = useFindings();
  return isWorthAPlan(joint) ? <ScrewList input={planInput(joint)} /> : null;
}
