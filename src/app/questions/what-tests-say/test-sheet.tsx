import type { ProofRow } from '../../../core/bench/proof-rows.ts';
import { type LastingLoad, PROOF_HOLD } from '../../../core/evidence/proof-plan.ts';
import { decimalText, durationText, forceText, temperatureText } from '../../../wording/amount.ts';
import { SETTING_NAMES } from '../../../wording/names.ts';
import { insertName } from '../../joint/drawer/insert-name.ts';
import { BenchSheet } from '../../shell/bench-sheet.tsx';
import { useFindings, useSheetValue } from '../../state/sheet-context.ts';
import { scaleText } from './scale-text.ts';

interface TestSheetProps {
  readonly row: ProofRow;
  /** To rely on, N. */
  readonly load: number;
  readonly leverRatio: number;
  /** Absent: a short load is meant. */
  readonly lasting?: LastingLoad;
  /** The joint in service, °C. */
  readonly warmth: number;
  readonly onClose: () => void;
}

/** One page for the bench: how far to pull, and a line for each coupon to write on. */
export function TestSheet({ row, load, leverRatio, lasting, warmth, onClose }: TestSheetProps) {
  const name = useSheetValue(({ journal }) => journal.present.name);
  const { joint: found, shown } = useFindings();
  const { reading } = row;
  return (
    <BenchSheet title={`Proof pull: ${name}`} onClose={onClose}>
      <ul>
        <li>
          {shown ? `Insert ${insertName(shown.insert)}, ` : ''}
          {found.host.material.name}, {SETTING_NAMES[found.setting]}. Printed, set and pulled on, by:
        </li>
        <li>
          To rely on {forceText(load)}
          {lasting ? ` for ${durationText(lasting.hours)}` : ''}: pull each of {row.count} with{' '}
          {forceText(row.proofLoad.value)} at the insert.
        </li>
        <li>
          Hold it for {PROOF_HOLD.usual} s, until the reading stands still ({PROOF_HOLD.least} to{' '}
          {PROOF_HOLD.greatest} s are common practice), at {temperatureText(warmth)}, as warm as the joint
          gets.
        </li>
        <li>
          {reading.kind === 'reading'
            ? `The scale shows ${scaleText(reading.reading.value)} with lever ratio ${decimalText(leverRatio, 2)}; add what it shows with the idle lever.`
            : `The scale ends below that: take a lever ratio of ${decimalText(reading.leverRatio.value, 2)} or more.`}
        </li>
        <li>
          Shield the coupon, wear eye protection, stand out of the line of the pull. Your workshop’s rules
          come first.
        </li>
      </ul>
      <table>
        <caption>All of them must hold. Whatever gave way, write how.</caption>
        <thead>
          <tr>
            <th scope="col">Coupon</th>
            <th scope="col">bore before setting</th>
            <th scope="col">scale showed</th>
            <th scope="col">held for, s</th>
            <th scope="col">held, or broke how</th>
            <th scope="col">note</th>
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: row.count }, (_, place) => place + 1).map((number) => (
            <tr key={number}>
              <th scope="row">{number}</th>
              <td />
              <td />
              <td />
              <td />
              <td />
            </tr>
          ))}
        </tbody>
      </table>
    </BenchSheet>
  );
}
