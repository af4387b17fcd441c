import type { ExtremeValue } from '../../../core/evidence/outlier.ts';
import type { Variation } from '../../../core/evidence/sample-summary.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { decimalText, percentText } from '../../../wording/amount.ts';
import { wordsOfNoPlot } from '../../../wording/sample-report.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';

const VARIATION = 'coefficient of variation, 95 % interval';

interface VariationLineProps {
  readonly slot: string;
  readonly of: string;
  readonly variation: Variation | undefined;
}

/** "7 %, 4 % to 20 %"; so few values may leave the upper end open. */
export function VariationLine({ slot, of, variation }: VariationLineProps) {
  const own = `${slot} ${VARIATION}`;
  const share = (derived: Derived, what: string) => {
    const text = percentText(derived.value);
    return <ComputedValue derived={derived} text={text} label={`${of}, ${what}, ${text}`} />;
  };
  return (
    <DerivationRow slot={own}>
      <tr>
        <th scope="row">{VARIATION}</th>
        <td data-name="normal">
          <span>
            {variation === undefined ? 'takes two' : share(variation.value, 'coefficient of variation')}
            {variation?.low === undefined ? null : (
              <>
                , {share(variation.low, 'coefficient of variation, lower end')} to{' '}
                {variation.high === undefined
                  ? 'no upper end'
                  : share(variation.high, 'coefficient of variation, upper end')}
              </>
            )}
          </span>
        </td>
        <td data-empty>–</td>
      </tr>
      <DerivationSlot name={own} columns={3} />
    </DerivationRow>
  );
}

const FARTHEST = 'farthest value, deviations from the mean; limit';

interface FarthestLineProps {
  readonly slot: string;
  readonly of: string;
  readonly extreme: ExtremeValue;
}

/** How far out the farthest value lies, and how far one of a sound sample may. */
export function FarthestLine({ slot, of, extreme }: FarthestLineProps) {
  const own = `${slot} ${FARTHEST}`;
  const shown = (derived: Derived, what: string) => {
    const text = decimalText(derived.value, 2);
    return <ComputedValue derived={derived} text={text} label={`${of}, ${what}, ${text}`} />;
  };
  return (
    <DerivationRow slot={own}>
      <tr>
        <th scope="row">{FARTHEST}</th>
        <td data-name="normal">
          {extreme.kind === 'refused' ? (
            wordsOfNoPlot(extreme)
          ) : (
            <span>
              {shown(extreme.statistic, 'farthest value, deviations from the mean')};{' '}
              {shown(extreme.critical, 'limit of the farthest value')}
            </span>
          )}
        </td>
        <td data-empty>–</td>
      </tr>
      <DerivationSlot name={own} columns={3} />
    </DerivationRow>
  );
}
