import type { Growth, StrengthFit } from '../../../core/bench/strength-fit.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { amountText, decimalText } from '../../../wording/amount.ts';
import { DIMENSION_NAMES, slopeText } from '../../../wording/strength-fit.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import styles from './what-tests-say.module.css';

interface FitTableProps {
  readonly found: Extract<StrengthFit, { readonly kind: 'fitted' }>;
  readonly title: string;
  readonly slot: string;
}

const COLUMNS = 4;

/** Slopes and powers of a regression with their intervals, and how well it fits. */
export function FitTable({ found, title, slot }: FitTableProps) {
  const { growth, residual, determination, fit } = found;
  const of = (name: string) => `${title}, ${name}`;
  const slopes = (slope: number) => slopeText(slope, found.units.response === 'N' ? 'force' : 'torque');
  return (
    <table className={styles['table']}>
      <caption>
        {title}: {decimalText(fit.points, 0)} coupons that gave way
      </caption>
      <thead>
        <tr>
          <th scope="col">By regression</th>
          <th scope="col">value</th>
          <th scope="col">95 % interval</th>
          <th scope="col">model</th>
        </tr>
      </thead>
      <tbody>
        {growth.map((one) => (
          <GrowthRows key={one.of} growth={one} of={of} slot={slot} slopeText={slopes} />
        ))}
        <Row
          name="share that it explains, R²"
          slot={slot}
          of={of}
          value={determination ?? 'all are equal'}
          text={(value) => decimalText(value, 2)}
        />
        <Row
          name="scatter about it"
          slot={slot}
          of={of}
          value={residual}
          text={(value) => amountText(value, residual.unit)}
        />
      </tbody>
    </table>
  );
}

interface GrowthRowsProps {
  readonly growth: Growth;
  readonly of: (name: string) => string;
  readonly slot: string;
  readonly slopeText: (slope: number) => string;
}

function GrowthRows({ growth, of, slot, slopeText: text }: GrowthRowsProps) {
  const { slope, power, modelPower } = growth;
  const name = DIMENSION_NAMES[growth.of];
  return (
    <>
      <Row
        name={`more for each mm of ${name}`}
        slot={slot}
        of={of}
        value={slope.value}
        ends={slope}
        text={text}
      />
      {power === undefined ? null : (
        <Row
          name={`power of the ${name}`}
          slot={slot}
          of={of}
          value={power.value}
          ends={power}
          model={modelPower}
          text={(value) => decimalText(value, 2)}
        />
      )}
    </>
  );
}

interface RowProps {
  readonly name: string;
  readonly slot: string;
  readonly of: (name: string) => string;
  readonly value: Derived | string;
  readonly ends?: { readonly low: Derived; readonly high: Derived };
  readonly model?: Derived;
  readonly text: (value: number) => string;
}

function Row({ name, slot, of, value, ends, model, text }: RowProps) {
  const own = `${slot} ${name}`;
  const shown = (derived: Derived, what: string) => (
    <ComputedValue
      derived={derived}
      text={text(derived.value)}
      label={`${of(what)}, ${text(derived.value)}`}
    />
  );
  return (
    <DerivationRow slot={own}>
      <tr>
        <th scope="row">{name}</th>
        <td data-name="value">{typeof value === 'string' ? value : shown(value, name)}</td>
        {ends === undefined ? (
          <td data-empty>–</td>
        ) : (
          <td data-name="95 % interval">
            {shown(ends.low, `${name}, lower end`)} to {shown(ends.high, `${name}, upper end`)}
          </td>
        )}
        {model === undefined ? (
          <td data-empty>–</td>
        ) : (
          <td data-name="model">
            <ComputedValue
              derived={model}
              text={decimalText(model.value, 0)}
              label={`${of(`${name}, in the model`)}, ${decimalText(model.value, 0)}`}
            />
          </td>
        )}
      </tr>
      <DerivationSlot name={own} columns={COLUMNS} />
    </DerivationRow>
  );
}
