import type { JointAssessment } from '../../core/joint/assessment.ts';
import { chanceText, diameterNumber, lengthNumber, lengthText } from '../../wording/amount.ts';
import { reasonForHole } from '../../wording/reasons.ts';
import { AnswerUnit, Margin, Why } from './answer.tsx';
import styles from './answers.module.css';
import { ComputedAnswer } from './computed-answer.tsx';
import { BELL_HEIGHT, Bell, RULER_WIDTH, Ruler } from './ruler.tsx';
import { bellPath, linearScale, placeLabels } from './scale.ts';
import { ToldAnswer } from './told-answer.tsx';

/** How much of the line lies outside of what fits, on either side, over what fits. */
const ROOM = 0.75;

/** What hole: the diameter to draw or the one that is given, its depth, and the chance that the printed bore fits. */
export function HoleAnswer({ assessment }: { readonly assessment: JointAssessment }) {
  const { existing, drawn, boreAsPrinted, printError, depth, window } = assessment.hole;
  const chance = chanceText(window.chance.value);
  const isDeep = !existing || existing.depth !== undefined;
  return (
    <>
      <div className={styles.big}>
        <ComputedAnswer
          derived={existing ? boreAsPrinted : [boreAsPrinted, printError, drawn]}
          text={
            <>
              <span className={styles.prefix}>⌀</span>
              {diameterNumber(drawn.value)}
            </>
          }
          label={`Hole ${existing ? 'that is there' : 'to draw'}, diameter ${lengthText(drawn.value)}`}
          look="plain"
        />
        <AnswerUnit unit="mm" />
        <small className={styles.aside}>
          {' '}
          <ComputedAnswer
            derived={depth}
            text={lengthNumber(depth.value)}
            label={`Depth ${isDeep ? (existing ? 'of it' : 'to draw') : 'needed'}, ${lengthText(depth.value)}`}
            look="plain"
          />{' '}
          {isDeep ? 'deep' : 'needed'}
        </small>
      </div>
      <FitRuler assessment={assessment} />
      <Margin>
        <b>
          <ComputedAnswer
            derived={window.chance}
            text={chance}
            label={`Chance that ${existing ? 'it fits' : 'a printed bore fits'}, ${chance}`}
          />
        </b>{' '}
        {existing ? 'is the chance that it fits' : 'printed bores will fit'}
      </Margin>
      <Why>
        <ToldAnswer sentence={reasonForHole(assessment)} />
      </Why>
    </>
  );
}

function FitRuler({ assessment }: { readonly assessment: JointAssessment }) {
  const { window } = assessment.hole;
  const [smallest, largest] = [window.smallest.value, window.largest.value];
  const [expected, standardDeviation] = [window.expected.value, window.standardDeviation.value];
  const room = ROOM * (largest - smallest);
  const ends = { least: smallest - room, greatest: largest + room };
  const scale = linearScale(ends, RULER_WIDTH);
  const span = [scale.at(smallest), scale.at(largest)] as const;
  return (
    <Ruler
      behind={<Bell path={bellPath({ expected, standardDeviation }, scale, ends, BELL_HEIGHT)} />}
      span={span}
      ticks={span}
      needle={scale.at(expected)}
      below={placeLabels(
        [
          { text: 'pilot drops in', at: span[0] },
          { text: 'knurl still bites', at: span[1] },
        ],
        RULER_WIDTH,
        2,
      )}
    />
  );
}
