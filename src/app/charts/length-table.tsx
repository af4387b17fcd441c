import { insertDimensions } from '../../core/inserts/insert-dimensions.ts';
import type { Joint } from '../../core/joint/joint.ts';
import { admit } from '../../core/joint/stop.ts';
import type { LengthPoint } from '../../core/recommend/length-curve.ts';
import { type LengthWays, lengthWays } from '../../core/recommend/length-ways.ts';
import type { Derived } from '../../core/sources/derived.ts';
import { forceText, lengthNumber, lengthText, torqueText } from '../../wording/amount.ts';
import { ComputedValue } from '../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../derivation/derivation-slot.tsx';
import styles from './charts.module.css';
import type { Panel } from './length-series.ts';
import { Twin } from './twin.tsx';

interface LengthTableProps {
  readonly joint: Joint;
  readonly panels: readonly Panel[];
}

const COLUMNS = 6;

/** The same content as a table, for whoever cannot see the charts or wants the figures. */
export const LengthTable = ({ joint, panels }: LengthTableProps) => (
  <Twin summary="The charts as a table">
    {panels.map((panel) => (
      <table
        key={panel.knurlDiameter}
        className={styles['table']}
        aria-label={`Knurl ⌀ ${lengthText(panel.knurlDiameter)}`}
      >
        <Caption panel={panel} />
        <thead>
          <tr>
            <th scope="col">Length, mm</th>
            <th scope="col">19 of 20 hold</th>
            <th scope="col">Half hold</th>
            <th scope="col">1 of 20 holds</th>
            <th scope="col">Pulls out at</th>
            <th scope="col">Dial</th>
          </tr>
        </thead>
        <tbody>
          {panel.points.map((point) => (
            <LengthRow key={point.length} joint={joint} panel={panel} point={point} />
          ))}
        </tbody>
      </table>
    ))}
  </Twin>
);

/** The diameter of the panel, which is that of the readings of its insert. */
function Caption({ panel: { knurlDiameter, model } }: { readonly panel: Panel }) {
  const slot = `knurl ${knurlDiameter}`;
  const text = lengthText(knurlDiameter);
  return (
    <DerivationRow slot={slot}>
      <caption>
        Knurl ⌀{' '}
        <ComputedValue
          derived={() => insertDimensions(model).knurlDiameter.estimate}
          text={text}
          label={`Knurl diameter, ${text}`}
        />
        <DerivationSlot name={slot} />
      </caption>
    </DerivationRow>
  );
}

interface LengthRowProps {
  readonly joint: Joint;
  readonly panel: Panel;
  readonly point: LengthPoint;
}

function LengthRow({ joint, panel, point }: LengthRowProps) {
  const { knurlDiameter, model, points } = panel;
  const { length, characteristic, median, upper, jackOutTorque, dial } = point;
  const way = (of: keyof LengthWays) => (): Derived => {
    const admission = admit(joint);
    const lengths = points.map((one) => one.length);
    const found =
      admission.kind === 'stopped' ? undefined : lengthWays(admission.joint, model, { length, lengths })[of];
    if (found === undefined) throw new Error(`a number of the curve without its way: ${of}`);
    return found;
  };
  const slot = `length ${knurlDiameter} ${length}`;
  const of = `${lengthNumber(length)} mm long, knurl ⌀ ${lengthText(knurlDiameter)}`;
  const value = (name: string, text: string, derived: () => Derived) => (
    <ComputedValue derived={derived} text={text} label={`${name}, ${of}, ${text}`} />
  );
  return (
    <DerivationRow slot={slot}>
      <tr>
        <th scope="row">{lengthNumber(length)}</th>
        <td>{value('19 of 20 hold', forceText(characteristic), way('characteristic'))}</td>
        <td>{value('Half hold', forceText(median), way('median'))}</td>
        <td>{value('1 of 20 holds', forceText(upper), way('upper'))}</td>
        <td>{value('Pulls out at', torqueText(jackOutTorque), way('jackOutTorque'))}</td>
        <td>{dial === undefined ? 'none' : value('Dial', torqueText(dial), way('dial'))}</td>
      </tr>
      <DerivationSlot name={slot} columns={COLUMNS} />
    </DerivationRow>
  );
}
