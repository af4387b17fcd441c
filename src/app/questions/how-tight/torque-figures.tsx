import type { JointAssessment } from '../../../core/joint/assessment.ts';
import type { Derived } from '../../../core/sources/derived.ts';
import { SCALE_UNITS, torqueOnScale } from '../../../core/torque/tool-scale.ts';
import { forceText, percentText, significantText, torqueNumber } from '../../../wording/amount.ts';
import { MODE_EVENTS } from '../../../wording/names.ts';
import { figure, type Sentence, said } from '../../../wording/sentence.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';
import { DerivationRow, DerivationSlot } from '../../derivation/derivation-slot.tsx';
import { Told } from '../../derivation/told.tsx';
import styles from './how-tight.module.css';

const COLUMNS = 2 + SCALE_UNITS.length;

/** The ends and the dial in the units of torque tools, and the clamp force that the dial gives. */
export function TorqueFigures({ assessment }: { readonly assessment: JointAssessment }) {
  const { torque } = assessment;
  return (
    <div className={styles['figures']}>
      <div className={styles['scroll']}>
        <table className={styles['table']}>
          <caption className="out-of-sight">Torque in the units of torque tools</caption>
          <thead>
            <tr>
              <th scope="col">Torque</th>
              {['N·m', ...SCALE_UNITS].map((unit) => (
                <th key={unit} scope="col">
                  {unit}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <DerivationRow slot="torque">
              {torque.kind === 'window' && <TorqueRow name="Dial" derived={torque.dial} isDial />}
              <TorqueRow name="Least: the joint stays closed" derived={torque.least} />
              <TorqueRow name={`Most: ${MODE_EVENTS[torque.limitedBy]} beyond`} derived={torque.most} />
              <DerivationSlot name="torque" columns={COLUMNS} />
            </DerivationRow>
          </tbody>
        </table>
      </div>
      <DerivationRow slot="clamp-force">
        <p className={styles['clamp']}>
          <Told sentence={clampSentence(assessment)} />
        </p>
        <DerivationSlot name="clamp-force" />
      </DerivationRow>
    </div>
  );
}

/** Clamp force at the dial, and what is left of it at both ends of what is known of creep. */
function clampSentence({ torque, preloadLeft, preloadLeftAtBest }: JointAssessment): Sentence {
  const force = (derived: Derived, what: string) => figure(derived, forceText(derived.value), what);
  const share = (derived: Derived, what: string) => figure(derived, percentText(derived.value), what);
  const atDial =
    torque.kind === 'window'
      ? said`At the dial the screw clamps with ${force(torque.clampForceLow, 'Smallest clamp force')} to ${force(torque.clampForceHigh, 'Largest clamp force')}: friction and tool at their two ends, the smaller one after relaxation. `
      : '';
  const otherEnd = preloadLeftAtBest
    ? said` at the careful end, which counts; up to ${share(preloadLeftAtBest, 'Share of the clamp force left at best')} at the other, as little is known of creep`
    : '';
  return said`${atDial}Of the clamp force, ${share(preloadLeft, 'Share of the clamp force left')} is left after the time under load${otherEnd}.`;
}

interface TorqueRowProps {
  readonly name: string;
  readonly derived: Derived;
  readonly isDial?: boolean;
}

function TorqueRow({ name, derived, isDial }: TorqueRowProps) {
  const text = torqueNumber(derived.value);
  return (
    <tr className={isDial ? styles['dialRow'] : undefined}>
      <th scope="row">{name}</th>
      <td data-unit="N·m">
        <ComputedValue derived={derived} text={text} label={`${name}, ${text} N·m`} />
      </td>
      {SCALE_UNITS.map((unit) => {
        const onScale = torqueOnScale(derived, unit);
        const number = significantText(onScale.value);
        return (
          <td key={unit} data-unit={unit}>
            <ComputedValue derived={onScale} text={number} label={`${name}, ${number} ${unit}`} />
          </td>
        );
      })}
    </tr>
  );
}
