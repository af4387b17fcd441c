import { memo } from 'react';
import type { TestFinding } from '../../../core/bench/evidence.ts';
import { unitInstead } from '../../../core/bench/unit-slip.ts';
import type { TestRecord } from '../../../storage/document.ts';
import {
  readingText,
  sentenceOfTestFault,
  sentenceOfUnitInstead,
  TEST_KIND_NAMES,
  TEST_RESULT_NAMES,
  testUnitText,
} from '../../../wording/bench-tests.ts';
import { wordsOfFinding } from '../../../wording/test-findings.ts';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import type { Choice } from '../../fields/field-props.ts';
import { useDocumentAtPress, useSheetActions } from '../../state/sheet-context.ts';
import { withoutTest } from './test-edits.ts';
import { TestFields } from './test-fields.tsx';
import styles from './test-log.module.css';

interface TestRowProps {
  readonly index: number;
  readonly test: TestRecord;
  readonly inserts: readonly Choice<string>[];
  readonly isOpen: boolean;
  readonly onOpen: (id: string, isOpen: boolean) => void;
  /** What the test says; absent: the joint is stopped, and nothing is asked of its tests. */
  readonly finding?: TestFinding | undefined;
}

/** "test 7": how a coupon and its test are called. */
export const nameOfTest = ({ id }: Pick<TestRecord, 'id'>): string => id.replace('-', ' ');

/** The number on the coupon, where it is another than the test's. */
const couponText = ({ id, coupon }: TestRecord): string =>
  coupon === undefined || id === `test-${coupon}` ? '' : `coupon ${coupon}, `;

/** One test: what was found, and the fields to put it right. */
export const TestRow = memo(function TestRow(props: TestRowProps) {
  const { index, test, inserts, isOpen, onOpen, finding } = props;
  const { edit } = useSheetActions();
  const documentAtPress = useDocumentAtPress();
  const name = nameOfTest(test);
  const leftOut = finding?.fault && sentenceOfTestFault(finding.fault);
  const said = finding && wordsOfFinding(finding);
  const insert = inserts.find(({ value }) => value === test.insert)?.label ?? `“${test.insert}”`;
  return (
    <DerivationRow slot={`log ${test.id}`}>
      <li className={styles.test} data-left-out={leftOut === undefined || test.value === 0 ? undefined : ''}>
        <div className={styles.head}>
          <span className={styles.name}>
            {name}{' '}
            <span className={styles.quiet}>
              {couponText(test)}
              {insert}
            </span>
          </span>
          <span className={styles.reading}>
            <b>{test.value === 0 ? 'no reading yet' : readingText(test)}</b>{' '}
            {TEST_KIND_NAMES[test.kind].toLowerCase()}, {TEST_RESULT_NAMES[test.result]}
            {said === undefined ? null : (
              <span className={styles.said}>
                {' '}
                <Told sentence={said} of={name} />
              </span>
            )}
          </span>
          <span className={styles.presses}>
            <button
              type="button"
              className="go"
              aria-expanded={isOpen}
              aria-label={`${isOpen ? 'Close' : 'Edit'} ${name}`}
              onClick={() => onOpen(test.id, !isOpen)}
            >
              {isOpen ? 'Close' : 'Edit'}
            </button>
            <button
              type="button"
              className="press"
              aria-label={`Take out ${name}`}
              onClick={() => edit('tests', withoutTest(documentAtPress(), test.id))}
            >
              Take out
            </button>
          </span>
        </div>
        {leftOut === undefined ? null : (
          <p className={styles.leftOut}>
            <b>Left out.</b> <Told sentence={leftOut} of={name} />
          </p>
        )}
        <DerivationSlot name={`log ${test.id}`} />
        {finding === undefined ? null : <UnitDoubt index={index} test={test} finding={finding} />}
        {isOpen ? (
          <div data-fields>
            <TestFields index={index} test={test} inserts={inserts} />
          </div>
        ) : null}
      </li>
    </DerivationRow>
  );
});

interface UnitDoubtProps {
  readonly index: number;
  readonly test: TestRecord;
  readonly finding: TestFinding;
}

/** Newtons that were written as kilograms, or the other way round: said, and put right by a press. */
function UnitDoubt({ index, test, finding }: UnitDoubtProps) {
  const { edit } = useSheetActions();
  const { unit } = test;
  const instead = unit === 'kgf' || unit === 'N' ? unitInstead(finding, unit) : undefined;
  if (instead === undefined) return null;
  const path = `tests.${index}.unit`;
  return (
    <p className={styles.leftOut}>
      <b>Look at the unit.</b> {sentenceOfUnitInstead(test, instead)}{' '}
      <button type="button" className="press" onClick={() => edit(path, { path, value: instead })}>
        It was {testUnitText(instead)}
      </button>
    </p>
  );
}
