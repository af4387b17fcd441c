import { memo } from 'react';
import type { SeatFinding } from '../../core/joint/assessment.ts';
import type { JointDocument } from '../../storage/document.ts';
import { SEAT_NAMES } from '../../wording/names.ts';
import { seatSentence } from '../../wording/seat.ts';
import { useSheetActions, useSheetValue } from '../state/sheet-context.ts';
import styles from './seat-choice.module.css';

type SeatInput = JointDocument['joint']['seat'];

const SEATS: readonly { readonly value: SeatInput; readonly label: string }[] = [
  { value: 'from-geometry', label: 'as the sizes say' },
  { value: 'on-insert', label: SEAT_NAMES['on-insert'] },
  { value: 'on-plastic', label: SEAT_NAMES['on-plastic'] },
  { value: 'over-gap', label: SEAT_NAMES['over-gap'] },
  { value: 'far-side', label: SEAT_NAMES['far-side'] },
];

/** Where the clamped part bears: found from the sizes unless a person says otherwise; only seats that the insert's side allows. */
export const SeatChoice = memo(function SeatChoice() {
  const { edit } = useSheetActions();
  const seat = useSheetValue(({ journal }) => journal.present.joint.seat);
  const isFarSide = useSheetValue(({ journal }) => journal.present.joint.insertSide === 'far-side');
  const seats = SEATS.filter(
    ({ value }) => value === 'from-geometry' || (value === 'far-side') === isFarSide,
  );
  return (
    <fieldset className={styles.seat}>
      <legend className={styles.legend}>The part bears</legend>
      {seats.map(({ value, label }) => (
        <label key={value}>
          <input
            type="radio"
            name="seat"
            value={value}
            checked={seat === value}
            onChange={() => edit('joint.seat', { path: 'joint.seat', value })}
          />
          <span>{label}</span>
        </label>
      ))}
    </fieldset>
  );
});

/** Why it bears there, and what that does with the clamp force. */
export const SeatReason = ({ seat }: { readonly seat: SeatFinding }) => (
  <p className={styles.reason}>{seatSentence(seat)}</p>
);
