import { lazy, Suspense, useMemo, useState } from 'react';
import type { SetupEvidence } from '../../../core/bench/evidence.ts';
import { differencesOf } from '../../../core/bench/made-alike.ts';
import { type StrengthFit, strengthFit } from '../../../core/bench/strength-fit.ts';
import {
  PUT_OVER,
  type PutOver,
  type StrengthGroup,
  strengthGroups,
} from '../../../core/bench/strength-points.ts';
import { decimalText } from '../../../wording/amount.ts';
import { TEST_KIND_NAMES } from '../../../wording/bench-tests.ts';
import {
  DIMENSION_NAMES,
  PUT_OVER_NAMES,
  sentenceOfGrowth,
  sentenceOfNoFit,
  sentenceOfTwoSizes,
} from '../../../wording/strength-fit.ts';
import { sentenceOfVaried, spanText } from '../../../wording/ways.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import { ChoiceField } from '../../fields/choice-field.tsx';
import { FitTable } from './fit-table.tsx';
import { useNamesOfWays } from './names.ts';
import { SizeTable } from './size-table.tsx';
import styles from './what-tests-say.module.css';

const StrengthPicture = lazy(() => import('../../charts/strength-picture.tsx'));

const CHOICES = (Object.keys(PUT_OVER) as PutOver[]).map((value) => ({
  value,
  label: PUT_OVER_NAMES[value],
}));

/** Strength over length and diameter by regression, for whoever opens it. */
export function StrengthPart({ setup }: { readonly setup: SetupEvidence }) {
  const [isOpen, setOpen] = useState(false);
  const [over, setOver] = useState<PutOver>('length');
  const fits = useMemo(
    () =>
      (isOpen ? strengthGroups(setup, over) : []).map((group) => ({
        group,
        found: strengthFit(group.points, { over: PUT_OVER[over], kind: group.kind }),
      })),
    [isOpen, setup, over],
  );
  const within = `${setup.printer ?? ''} ${setup.material} ${setup.setting}`;
  return (
    <details className={styles['more']} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary className="go">Strength over length and diameter, by regression</summary>
      {isOpen ? (
        <>
          <div className={styles['fields']}>
            <ChoiceField label="Strength over" choices={CHOICES} value={over} onTake={setOver} />
          </div>
          {fits.length === 0 ? (
            <p className={styles['press']}>
              No coupon of this set-up gave way, and a regression is made of those.
            </p>
          ) : null}
          {fits.map(({ group, found }) =>
            found.kind === 'refused' ? null : (
              <Group
                key={slotOf(group, within)}
                group={group}
                found={found}
                over={over}
                slot={slotOf(group, within)}
              />
            ),
          )}
          <NoFits fits={fits} over={over} />
        </>
      ) : null}
    </details>
  );
}

const slotOf = ({ kind, kept }: StrengthGroup, within: string): string =>
  `strength ${within} ${kind} ${kept?.of ?? ''} ${kept?.least ?? ''}`;

interface Fit {
  readonly group: StrengthGroup;
  readonly found: StrengthFit;
}

/** Groups without a regression, those of one reason together. */
function NoFits({ fits, over }: { readonly fits: readonly Fit[]; readonly over: PutOver }) {
  const reasons = new Map<string, string[]>();
  for (const { group, found } of fits) {
    if (found.kind !== 'refused') continue;
    const sentence = sentenceOfNoFit(found, over);
    reasons.set(sentence, [...(reasons.get(sentence) ?? []), titleOf(group)]);
  }
  if (reasons.size === 0) return null;
  return (
    <ul className={styles['notes']}>
      {[...reasons].map(([sentence, titles]) => (
        <li key={sentence}>
          <b>{titles.join('; ')}:</b> {sentence}
        </li>
      ))}
    </ul>
  );
}

interface GroupProps {
  readonly group: StrengthGroup;
  readonly found: Extract<StrengthFit, { readonly kind: 'fitted' }>;
  readonly over: PutOver;
  readonly slot: string;
}

function Group({ group, found, over, slot }: GroupProps) {
  const title = titleOf(group);
  return (
    <section className={styles['group']}>
      <Suspense fallback={null}>
        <StrengthPicture found={found} points={group.points} title={title} />
      </Suspense>
      <FitTable found={found} title={title} slot={slot} />
      <SizeTable found={found} points={group.points} slot={slot} />
      <Notes found={found} group={group} over={over} slot={slot} />
    </section>
  );
}

function Notes({ found, group, over, slot }: GroupProps) {
  const names = useNamesOfWays();
  const tests = group.points.map(({ test }) => test);
  // Each diameter has its own bore.
  const differences = differencesOf(tests, [], over === 'length' ? [] : ['bore']);
  const varied = sentenceOfVaried(differences, names);
  return (
    <ul className={styles['notes']}>
      {found.growth.map((growth) => (
        <DerivationRow key={growth.of} slot={`${slot} growth ${growth.of}`}>
          <li>
            <Told sentence={sentenceOfGrowth(growth)} of={titleOf(group)} />
            <DerivationSlot name={`${slot} growth ${growth.of}`} />
          </li>
        </DerivationRow>
      ))}
      {found.over.map((of, place) =>
        found.sizes[place] === 2 ? <li key={of}>{sentenceOfTwoSizes(of)}</li> : null,
      )}
      {varied === '' ? null : <li>{varied}</li>}
      {group.held === 0 ? null : (
        <li>
          Not among the points: {decimalText(group.held, 0)} that held, or broke elsewhere. The line may lie
          too low.
        </li>
      )}
    </ul>
  );
}

/** "Pulled out, knurl ⌀ 4.6 mm" */
function titleOf({ kind, kept }: StrengthGroup): string {
  const test = TEST_KIND_NAMES[kind];
  return kept === undefined ? test : `${test}, ${DIMENSION_NAMES[kept.of]} ${spanText(kept)}`;
}
