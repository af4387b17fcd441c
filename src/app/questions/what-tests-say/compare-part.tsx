import { lazy, Suspense, useMemo, useState } from 'react';
import { compareWays, RATIOS_TO_SEE, type WayComparison } from '../../../core/bench/compare-ways.ts';
import type { TestFinding } from '../../../core/bench/evidence.ts';
import {
  COMPARED_BY,
  type ComparedBy,
  type Way,
  type WaysOfSetup,
  waysOfSetups,
} from '../../../core/bench/ways.ts';
import { insertDimensions } from '../../../core/inserts/insert-dimensions.ts';
import { decimalText, percentText } from '../../../wording/amount.ts';
import { TEST_KIND_NAMES, TEST_SETTING_NAMES } from '../../../wording/bench-tests.ts';
import { AXIS_NAMES } from '../../../wording/names.ts';
import { wordsOfNoComparison, wordsOfTooMany } from '../../../wording/sample-report.ts';
import { COMPARED_BY_NAMES, type NamesOfWays, NOTHING_TO_COMPARE, nameOfWay } from '../../../wording/ways.ts';
import { ChoiceField } from '../../fields/choice-field.tsx';
import { HOST_MATERIALS } from '../../joint/choices.ts';
import { insertName } from '../../joint/drawer/insert-name.ts';
import { useNamesOfWays } from './names.ts';
import { couponsText, WayNotes } from './way-notes.tsx';
import { WayTable } from './way-table.tsx';
import styles from './what-tests-say.module.css';

const RatioPicture = lazy(() => import('../../charts/ratio-picture.tsx'));

/** Coupons made in one way beside those made in another: how many times as strong, and how sure that is. */
export function ComparePart({ findings }: { readonly findings: readonly TestFinding[] }) {
  const found = useMemo(
    () => new Map(COMPARED_BY.map((by) => [by, waysOfSetups(findings, by)] as const)),
    [findings],
  );
  const [chosen, choose] = useState<ComparedBy>();
  const isThere = (by: ComparedBy): boolean => (found.get(by) ?? []).length > 0;
  const by = chosen ?? COMPARED_BY.find(isThere) ?? 'batch';
  const setups = found.get(by) ?? [];
  const choices = COMPARED_BY.map((one) => ({
    value: one,
    label: isThere(one) ? COMPARED_BY_NAMES[one] : `${COMPARED_BY_NAMES[one]}: nothing yet`,
  }));
  return (
    <section className={styles['setup']}>
      <h3>One way against another</h3>
      <p className={styles['words']}>
        How many times as strong as coupons made in one way are those made in another? An interval that holds
        1 has not told them apart.
      </p>
      <div className={styles['fields']}>
        <ChoiceField label="Compare by" choices={choices} value={by} onTake={choose} />
      </div>
      {setups.length === 0 ? <p className={styles['press']}>{NOTHING_TO_COMPARE[by]}</p> : null}
      {setups.map((setup) => (
        <SetupWays key={keyOf(setup, by)} setup={setup} by={by} />
      ))}
    </section>
  );
}

const keyOf = ({ insertId, kind, materialId, printer, axis, setting }: WaysOfSetup, by: ComparedBy): string =>
  JSON.stringify([by, insertId, kind, materialId, printer, axis, setting]);

function SetupWays({ setup, by }: { readonly setup: WaysOfSetup; readonly by: ComparedBy }) {
  const [chosen, choose] = useState<number>();
  const names = useNamesOfWays();
  const against = chosen !== undefined && setup.ways[chosen] ? chosen : firstThatCompares(setup.ways);
  const compared = useMemo(() => compareWays(setup.ways, against, by), [setup, against, by]);
  const insert = setup.ways[0]?.tests[0]?.insert;
  const length = insert === undefined ? 0 : insertDimensions(insert).length.estimate.value;
  const nameOf = ({ made }: Way) => nameOfWay(made, names, length);
  const below = setup.ways[against];
  if (below === undefined) return null;
  const title = titleOf(setup, insert === undefined ? setup.insertId : insertName(insert), names);
  const rows = compared.map((one) => ({
    name: `${nameOf(one.way)}, ${couponsText(one.way.sample.values.length)}`,
    needs: needsOf(one),
    ...(one.comparison.kind === 'refused'
      ? { instead: wordsOfNoComparison(one.comparison) }
      : { ratio: numbersOf(one.comparison.ratio.estimate) }),
  }));
  return (
    <>
      {setup.ways.length > 2 ? (
        <div className={styles['fields']}>
          <ChoiceField
            label="Over"
            choices={setup.ways.map((way, index) => ({ value: String(index), label: nameOf(way) }))}
            value={String(against)}
            onTake={(index) => choose(Number(index))}
          />
        </div>
      ) : null}
      <Suspense fallback={null}>
        <RatioPicture rows={rows} title={title} against={nameOf(below)} />
      </Suspense>
      <WayTable
        compared={compared}
        nameOf={nameOf}
        caption={`Strength over that of “${nameOf(below)}”, ${couponsText(below.sample.values.length)}`}
        slot={`ways ${keyOf(setup, by)}`}
      />
      <WayNotes
        setup={setup}
        compared={compared}
        by={by}
        names={names}
        nameOf={nameOf}
        slot={`ways scatter ${keyOf(setup, by)}`}
      />
    </>
  );
}

/** A way of one coupon compares with nothing. */
const firstThatCompares = (ways: readonly Way[]): number =>
  Math.max(
    0,
    ways.findIndex(({ sample }) => sample.values.length > 1),
  );

const numbersOf = ({
  value,
  low,
  high,
}: Extract<WayComparison['comparison'], { readonly kind: 'compared' }>['ratio']['estimate']) => ({
  value: value.value,
  low: low.value,
  high: high.value,
});

/** "to see 10 %: 12 of each" */
const needsOf = ({ needed }: WayComparison): readonly string[] =>
  needed.map((one, place) => {
    const share = percentText((RATIOS_TO_SEE[place] ?? 1) - 1);
    const count = one.kind === 'refused' ? wordsOfTooMany(one) : decimalText(one.each.value, 0);
    return `to see ${share}: ${count} of each`;
  });

/** Insert, test and set-up: what the ways have in common. */
function titleOf(setup: WaysOfSetup, insert: string, names: NamesOfWays): string {
  const material = HOST_MATERIALS.find(({ value }) => value === setup.materialId)?.label ?? setup.materialId;
  return [
    insert,
    TEST_KIND_NAMES[setup.kind].toLowerCase(),
    material,
    ...(setup.setting === undefined ? [] : [TEST_SETTING_NAMES[setup.setting]]),
    ...(setup.printer === undefined ? [] : [names.printer(setup.printer)]),
    AXIS_NAMES[setup.axis],
  ].join(', ');
}
