import type { Insert } from '../../core/inserts/insert.ts';
import type { AnswerableJoint } from '../../core/joint/stop.ts';
import {
  type Known,
  type KnownWays,
  type PreloadCurve,
  preloadWays,
  type StrengthPoint,
  strengthWays,
} from '../../core/service/curves.ts';
import { decimalText, percentText, significantText, temperatureText } from '../../wording/amount.ts';
import { ComputedValue } from '../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../derivation/derivation-slot.tsx';
import styles from './charts.module.css';
import { Twin } from './twin.tsx';

interface HoldTablesProps {
  readonly joint: AnswerableJoint;
  readonly insert: Insert;
  readonly curves: readonly PreloadCurve[];
  readonly strength: readonly StrengthPoint[];
}

/** Every so many points of the strength curve make a row. */
const EVERY = 4;

/** The same content as tables, for whoever cannot see the charts or wants the figures. */
export const HoldTables = ({ joint, insert, curves, strength }: HoldTablesProps) => (
  <Twin summary="The curves as tables">
    <table className={styles['table']}>
      <caption>Clamp force left over time</caption>
      <thead>
        <tr>
          <th scope="col">After, h</th>
          {curves.map(({ temperature }) => (
            <th key={temperature} scope="col">
              at {temperatureText(temperature)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {curves[0]?.points.map(({ hours }, index) => (
          <DerivationRow key={hours} slot={`preload ${hours}`}>
            <tr>
              <th scope="row">{significantText(hours, 2)}</th>
              {curves.map(({ temperature, points }) => (
                <td key={temperature}>
                  <KnownShare
                    known={points[index]}
                    ways={() => preloadWays(joint, insert, { temperature, hours })}
                    what={`After ${significantText(hours, 2)} h at ${temperatureText(temperature)}`}
                  />
                </td>
              ))}
            </tr>
            <DerivationSlot name={`preload ${hours}`} columns={1 + curves.length} />
          </DerivationRow>
        ))}
      </tbody>
    </table>
    <table className={styles['table']}>
      <caption>Strength left over temperature</caption>
      <thead>
        <tr>
          <th scope="col">Temperature, °C</th>
          <th scope="col">Strength left</th>
        </tr>
      </thead>
      <tbody>
        {strength
          .filter((_, index) => index % EVERY === 0)
          .map(({ temperature, ...known }) => (
            <DerivationRow key={temperature} slot={`strength ${temperature}`}>
              <tr>
                <th scope="row">{decimalText(temperature, 0)}</th>
                <td>
                  <KnownShare
                    known={known}
                    ways={() => strengthWays(joint.host.material, temperature)}
                    what={`Strength at ${temperatureText(temperature)}`}
                  />
                </td>
              </tr>
              <DerivationSlot name={`strength ${temperature}`} columns={2} />
            </DerivationRow>
          ))}
      </tbody>
    </table>
  </Twin>
);

interface KnownShareProps {
  readonly known: Known | undefined;
  readonly ways: () => KnownWays;
  readonly what: string;
}

/** What is left at the careful end, and after it what the other end would leave where that is another figure. */
function KnownShare({ known, ways, what }: KnownShareProps) {
  if (known === undefined) return null;
  const [careful, best] = [percentText(known.careful), percentText(known.best)];
  return (
    <>
      <ComputedValue derived={() => ways().careful} text={careful} label={`${what}, ${careful}`} />
      {careful === best ? null : (
        <>
          , at best{' '}
          <ComputedValue derived={() => ways().best} text={best} label={`${what}, at best ${best}`} />
        </>
      )}
    </>
  );
}
