import { PanelBoundary } from '../../shell/panel-boundary.tsx';
import styles from './given.module.css';
import { GivenClamped } from './given-clamped.tsx';
import { GivenFactors } from './given-factors.tsx';
import { GivenHost } from './given-host.tsx';
import { GivenLoads } from './given-loads.tsx';
import { GivenScrew } from './given-screw.tsx';
import { GivenSetting } from './given-setting.tsx';
import { GivenTool } from './given-tool.tsx';

/** Every input of the joint, the drawer apart. */
export function Given() {
  return (
    <section className={styles.given} id="given" aria-labelledby="given-heading">
      <h2 id="given-heading">Given</h2>
      <PanelBoundary name="The list of inputs">
        <div className={styles.columns}>
          <div>
            <GivenLoads />
            <GivenTool />
            <GivenFactors />
          </div>
          <div>
            <GivenHost />
          </div>
          <div>
            <GivenClamped />
            <GivenScrew />
            <GivenSetting />
          </div>
        </div>
      </PanelBoundary>
    </section>
  );
}
