import type { JointAssessment } from '../../core/joint/assessment.ts';
import { limitFactor } from '../../core/joint/limit-factor.ts';
import { factorText, forceNumber, forceText, lengthText } from '../../wording/amount.ts';
import { sizeOfInsert } from '../../wording/names.ts';
import { reasonForInsert } from '../../wording/reasons.ts';
import { hasSharesOfLoad } from '../pattern/plan-input.ts';
import type { Shown } from '../state/findings.ts';
import { useFindings } from '../state/sheet-context.ts';
import { Margin, Why } from './answer.tsx';
import styles from './answers.module.css';
import { ComputedAnswer } from './computed-answer.tsx';
import { holdingLimit } from './margins.ts';
import { RULER_WIDTH, Ruler } from './ruler.tsx';
import { linearScale, placeLabels } from './scale.ts';
import { RejectionAnswer, ToldAnswer } from './told-answer.tsx';

interface InsertAnswerProps {
  readonly shown: Shown;
  readonly rankedCount: number;
  readonly drawerCount: number;
}

/** Which insert: its thread and size, what it holds, why it is the one. */
export function InsertAnswer({ shown, rankedCount, drawerCount }: InsertAnswerProps) {
  const { joint } = useFindings();
  const { assessment, insert, rank, rejection } = shown;
  const { knurlDiameter, length } = assessment.dimensions;
  const { designation } = insert.thread;
  const words = `${designation}, ${lengthText(knurlDiameter.estimate.value)} by ${lengthText(length.estimate.value)}`;
  return (
    <>
      <div className={rejection ? `${styles.big} ${styles.struck}` : styles.big}>
        <ComputedAnswer
          derived={[knurlDiameter.estimate, length.estimate]}
          text={
            <>
              <span className={styles.prefix}>{designation}</span>
              <span className={styles.size}>{sizeOfInsert(assessment.dimensions)}</span>
            </>
          }
          label={words}
          look="plain"
        />
        {rejection ? <small className={styles.aside}> out</small> : null}
      </div>
      <HoldRuler assessment={assessment} />
      <HoldMargin assessment={assessment} />
      <Why>
        {rejection ? (
          <>
            <RejectionAnswer joint={joint} insert={insert} rejection={rejection} />{' '}
            {rankedCount === 0 ? 'No insert of the drawer fits this joint.' : 'Another of the drawer fits.'}
          </>
        ) : (
          <ToldAnswer
            sentence={reasonForInsert(assessment, {
              ...(rank === undefined ? {} : { rank }),
              rankedCount,
              drawerCount,
            })}
          />
        )}
      </Why>
    </>
  );
}

/** Over a gap the clamp force asks, else the pull: the given one, or the share of it that the screw gets. */
function useAskers() {
  const { joint } = useFindings();
  const pull = hasSharesOfLoad(joint) ? 'the screw’s pull' : 'your pull';
  return { pull, clamp: 'clamp', torque: 'clamp' } as const;
}

function HoldRuler({ assessment }: { readonly assessment: JointAssessment }) {
  const askers = useAskers();
  const characteristic = assessment.holds.characteristic.value;
  const median = assessment.holds.median.value;
  const limit = holdingLimit(assessment);
  const demand = limit && limit.demand.unit === 'N' ? limit.demand.value : 0;
  const scale = linearScale({ least: 0, greatest: Math.max(median, demand) * 1.06 }, RULER_WIDTH);
  const [asked, held, middle] = [demand, characteristic, median].map((force) => scale.at(force)) as [
    number,
    number,
    number,
  ];
  return (
    <Ruler
      spread={[held, middle]}
      {...(demand < characteristic ? { span: [asked, held] as const } : {})}
      ticks={limit ? [asked, held, middle] : [held, middle]}
      above={placeLabels([{ text: `holds ${forceText(characteristic)}`, at: held }], RULER_WIDTH)}
      below={placeLabels(
        [
          ...(limit ? [{ text: `${askers[limit.path]} ${forceNumber(demand)}`, at: asked }] : []),
          { text: `median ${forceNumber(median)}`, at: middle },
        ],
        RULER_WIDTH,
      )}
    />
  );
}

function HoldMargin({ assessment }: { readonly assessment: JointAssessment }) {
  const askers = useAskers();
  const limit = holdingLimit(assessment);
  const factor = limit && limitFactor(limit);
  if (factor === undefined) {
    const { characteristic } = assessment.holds;
    const held = forceText(characteristic.value);
    return (
      <Margin>
        <b>
          <ComputedAnswer derived={characteristic} text={held} label={`19 of 20 hold ${held}`} />
        </b>{' '}
        in 19 of 20; no load is given
      </Margin>
    );
  }
  const asker = limit?.path === 'pull' ? askers.pull : 'the clamp force';
  const times = factorText(factor.value);
  return (
    <Margin>
      <b>
        <ComputedAnswer derived={factor} text={times} label={`Holds ${times} ${asker}`} />
      </b>{' '}
      {asker}, as a characteristic value
    </Margin>
  );
}
