import { PanelBoundary } from '../../shell/panel-boundary.tsx';
import { useFindingsValue } from '../../state/sheet-context.ts';
import styles from './given.module.css';
import { GivenClamped } from './given-clamped.tsx';
import { GivenFactors } from './given-factors.tsx';
import { GivenHost } from './given-host.tsx';
import { GivenLoads } from './given-loads.tsx';
import { GivenPattern } from './given-pattern.tsx';
import { GivenScrew } from './given-screw.tsx';
import { GivenSetting } from './given-setting.tsx';
import { GivenTool } from './given-tool.tsx';

/** Every input of the joint, the drawer apart; loads, tool and screws stand beside the drawing while there is one. */
export function Given() {
  const isDrawn = useFindingsValue(({ shown }) => shown !== undefined);
  return (
    <section className={styles.given} id="given" aria-labelledby="given-heading">
      <h2 id="given-heading">Given</h2>
      <PanelBoundary name="The list of inputs">
        <div className={styles.columns}>
          {isDrawn ? null : (
            <div>
              <GivenLoads />
              <GivenTool />
            </div>
          )}
          <div>
            <GivenHost />
          </div>
          <div>
            <GivenClamped />
            <GivenSetting />
          </div>
          <div>
            <GivenScrew />
            <GivenFactors />
          </div>
        </div>
        {isDrawn ? null : <GivenPattern />}
      </PanelBoundary>
    </section>
  );
}
