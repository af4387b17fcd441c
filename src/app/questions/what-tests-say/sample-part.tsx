import { lazy, Suspense } from 'react';
import { sampleReport } from '../../../core/bench/sample-report.ts';
import type { TestSample } from '../../../core/bench/test-samples.ts';
import type { CharacteristicValue } from '../../../core/evidence/characteristic-value.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { amountText, decimalText } from '../../../wording/amount.ts';
import { TEST_KIND_NAMES } from '../../../wording/bench-tests.ts';
import { wordsOfNoPlot, wordsOfNoValue } from '../../../wording/sample-report.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { PlotTable } from './plot-table.tsx';
import { FarthestLine, VariationLine } from './sample-lines.tsx';
import styles from './what-tests-say.module.css';

const ProbabilityPicture = lazy(() => import('../../charts/probability-picture.tsx'));

interface SamplePartProps {
  readonly of: TestSample;
  readonly name: string;
  /** Of the set-up, for slots that differ. */
  readonly within: string;
}

/** One sample by the statistics in print, for a normal and a lognormal scatter. */
export function SamplePart({ of, name, within }: SamplePartProps) {
  const { summary, log, tolerance, prediction, extreme, plot } = sampleReport(of.sample);
  const what = `${name}, ${TEST_KIND_NAMES[of.kind].toLowerCase()}`;
  const slot = `${within} ${of.insertId} ${of.kind}`;
  const far = extreme.kind === 'named' && extreme.isExtreme ? of.testIds[extreme.place] : undefined;
  return (
    <>
      <table className={styles['table']}>
        <caption>
          {what}: {decimalText(summary.count, 0)} that gave way
          {of.held === 0 ? '' : `; ${decimalText(of.held, 0)} that held not among them`}
        </caption>
        <thead>
          <tr>
            <th scope="col">As in print</th>
            <th scope="col">normal</th>
            <th scope="col">lognormal</th>
          </tr>
        </thead>
        <tbody>
          <Line slot={slot} name="mean" normal={summary.mean} lognormal={log.geometricMean} of={what} />
          <Line
            slot={slot}
            name="standard deviation"
            normal={summary.deviation}
            lognormal={log.logDeviation}
            of={what}
          />
          <VariationLine slot={slot} variation={summary.variation} of={what} />
          <Promised slot={slot} name="95 % hold it, 95 % sure (tolerance factor)" of={what} {...tolerance} />
          <Promised
            slot={slot}
            name="the next holds it, 19 of 20 (prediction factor)"
            of={what}
            {...prediction}
          />
          <FarthestLine slot={slot} extreme={extreme} of={what} />
          {plot.kind === 'plotted' ? (
            <Line
              slot={slot}
              name="straightness of the probability plot"
              normal={plot.normal}
              lognormal={plot.lognormal}
              of={what}
            />
          ) : (
            <Line
              slot={slot}
              name="straightness of the probability plot"
              normal={wordsOfNoPlot(plot)}
              lognormal={wordsOfNoPlot(plot)}
              of={what}
            />
          )}
        </tbody>
      </table>
      {far === undefined ? null : (
        <p className={styles['words']}>
          <b>{far.replace('-', ' ')}</b> lies farther out than scatter alone brings in 19 of 20 samples. It
          stays in all numbers; look at its broken part and its note.
        </p>
      )}
      {plot.kind === 'plotted' ? (
        <Suspense fallback={null}>
          <ProbabilityPicture plot={plot} unit={of.sample.unit} name={what} />
        </Suspense>
      ) : null}
      {plot.kind === 'plotted' ? (
        <PlotTable plot={plot} loads={of.loads} unit={of.sample.unit} slot={slot} />
      ) : null}
    </>
  );
}

interface LineProps {
  readonly slot: string;
  readonly name: string;
  readonly of: string;
  readonly normal: Derived | string | undefined;
  readonly lognormal: Derived | string | undefined;
}

function Line({ slot, name, of, normal, lognormal }: LineProps) {
  const own = `${slot} ${name}`;
  return (
    <DerivationRow slot={own}>
      <tr>
        <th scope="row">{name}</th>
        <td data-name="normal">
          <Value of={normal} what={`${of}, ${name}, normal`} />
        </td>
        <td data-name="lognormal">
          <Value of={lognormal} what={`${of}, ${name}, lognormal`} />
        </td>
      </tr>
      <DerivationSlot name={own} columns={3} />
    </DerivationRow>
  );
}

function Value({ of, what }: { readonly of: Derived | string | undefined; readonly what: string }) {
  if (of === undefined) return 'takes two';
  if (typeof of === 'string') return of;
  const text = amountText(of.value, of.unit);
  return <ComputedValue derived={of} text={text} label={`${what}, ${text}`} />;
}

const shownOf = (found: CharacteristicValue): Derived | string =>
  found.kind === 'value' ? found.value : wordsOfNoValue(found);

const Promised = ({
  normal,
  lognormal,
  ...others
}: Pick<LineProps, 'slot' | 'name' | 'of'> & {
  readonly normal: CharacteristicValue;
  readonly lognormal: CharacteristicValue;
}) => <Line {...others} normal={shownOf(normal)} lognormal={shownOf(lognormal)} />;
