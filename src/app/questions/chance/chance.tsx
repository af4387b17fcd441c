import { useMemo, useState } from 'react';
import { type Draw, drawnQuantile } from '../../../core/chance/counted.ts';
import type { Insert } from '../../../core/inserts/insert.ts';
import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Joint } from '../../../core/joint/joint.ts';
import { entryFrom } from '../../../core/sources/derived.ts';
import { torqueText } from '../../../wording/amount.ts';
import { linesOfDrawnFrom, sentenceOfForces, sentenceOfSampling } from '../../../wording/chance.ts';
import { figure, plainText, type Sentence } from '../../../wording/sentence.ts';
import { STANDINGS } from '../../../wording/standing.ts';
import { type ChanceClient, runChance, runChanceOverTorque } from '../../../workers/chance-client.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import { QuestionSection } from '../question-section.tsx';
import styles from './chance.module.css';
import { ChanceTables } from './chance-tables.tsx';
import { CurveChart } from './curve-chart.tsx';
import { curveTorques, derivedSettingOf, settingOf } from './curve-shapes.ts';
import { ForceChart } from './force-chart.tsx';
import { OutcomeTable } from './outcome-table.tsx';
import { SamplingLine } from './sampling-line.tsx';
import type { Sampled as Sampling, SamplingState } from './sampling-state.ts';
import { SeedField } from './seed-field.tsx';
import { useSampling } from './use-sampling.ts';
import { useSeen } from './use-seen.ts';

export interface ChanceProps {
  readonly joint: Joint;
  readonly insert: Insert;
  readonly assessment: JointAssessment;
  readonly client?: ChanceClient;
}

const CLIENT: ChanceClient = { runChance, runChanceOverTorque };
const FIRST_SEED = 1;
const ASIDE =
  'The window takes the careful end of everything at once. Here each joint draws its own friction, bore and plastic, and is counted; no factor of safety is in it.';

/** What becomes of many joints like this one when each has its own friction, bore and plastic. */
export default function ChanceQuestion({ joint, insert, assessment, client = CLIENT }: ChanceProps) {
  return (
    <QuestionSection id="sure" question="How sure?" aside={ASIDE}>
      {settingOf(assessment.torque) > 0 ? (
        <Sampled joint={joint} insert={insert} assessment={assessment} client={client} />
      ) : (
        <p>No torque leaves every part of this joint whole, so there is nothing to sample.</p>
      )}
    </QuestionSection>
  );
}

function Sampled({ joint, insert, assessment, client }: Required<ChanceProps>) {
  const { torque } = assessment;
  const [seed, setSeed] = useState(FIRST_SEED);
  const [element, isSeen] = useSeen<HTMLDivElement>();
  const question = useMemo(
    () => ({ joint, insert, torque: settingOf(torque), torques: curveTorques(torque), window: torque, seed }),
    [joint, insert, torque, seed],
  );
  const sampling = useSampling(client, question, isSeen);
  const { found } = sampling.state;
  return (
    <div ref={element}>
      <SamplingLine sampling={sampling} />
      {found && <Findings found={found} isStale={found.question !== sampling.asked} />}
      <div className={styles['seed']}>
        <SeedField seed={seed} onTake={setSeed} />
      </div>
    </div>
  );
}

interface FindingsProps {
  readonly found: NonNullable<SamplingState['found']>;
  readonly isStale: boolean;
}

function Findings({ found, isStale }: FindingsProps) {
  const { result, curve, question } = found;
  const { window, seed } = question;
  const { sign, words } = STANDINGS.estimate;
  const tool = derivedSettingOf(window);
  const draw = { seed, torque: entryFrom(tool), from: result.drawnFrom };
  const setting = figure(tool, torqueText(result.torque));
  return (
    <div className={isStale ? styles['stale'] : undefined} data-stale={isStale || undefined}>
      {isStale && <p className={styles['tag']}>Stale: sampled before the last change</p>}
      <DerivationRow slot="chance">
        <p className={styles['words']}>
          <Told sentence={sentenceOfSampling(result.samples, setting, window.kind === 'window')} />{' '}
          <Told sentence={sentenceOfForces(forcesOf(result, draw))} />{' '}
          <span className="line">
            {sign} {words}
          </span>
        </p>
        <DerivationSlot name="chance" />
      </DerivationRow>
      <OutcomeTable result={result} draw={draw} />
      <ForceChart result={result} />
      <CurveChart curve={curve} torque={window} />
      <ChanceTables result={result} curve={curve} draw={draw} />
      <h3 className={styles['heading']}>What each joint is drawn from</h3>
      <ul className={styles['ranges']}>
        {linesOfDrawnFrom(result.drawnFrom, question.joint.tool.deviation).map((line) => (
          <Drawn key={plainText(line)} line={line} />
        ))}
      </ul>
    </div>
  );
}

function forcesOf({ clampForceQuantiles, samples }: Sampling['result'], draw: Draw) {
  const { low, median, high } = clampForceQuantiles;
  return {
    low: drawnQuantile(low, samples, draw),
    median: drawnQuantile(median, samples, draw),
    high: drawnQuantile(high, samples, draw),
  };
}

function Drawn({ line }: { readonly line: Sentence }) {
  const slot = `chance ${plainText(line)}`;
  return (
    <DerivationRow slot={slot}>
      <li>
        <p className={styles['words']}>
          <Told sentence={line} />
        </p>
        <DerivationSlot name={slot} />
      </li>
    </DerivationRow>
  );
}
