import type { SeatFinding } from '../core/joint/assessment.ts';
import { lengthText } from './amount.ts';
import { nameOfSeat } from './names.ts';

const CONSEQUENCES = {
  'on-insert': 'The clamp force closes in screw, part and brass, and the plastic does not feel it.',
  'on-plastic': 'The clamp force stands on the plastic, so the screw itself pulls at the insert.',
  'over-gap':
    'The clamp force has to cross the gap through the plastic, so the screw itself pulls at the insert.',
  'far-side': 'The screw draws the insert into its shoulder.',
} as const satisfies Record<SeatFinding['kind'], string>;

function reasonSentence(seat: SeatFinding): string {
  const hole = lengthText(seat.clearanceHole);
  const knurl = lengthText(seat.knurlDiameter);
  switch (seat.reason) {
    case 'clearance-smaller-than-knurl':
      return `The part seats on brass: its hole of ${hole} is smaller than the knurl of ${knurl}.`;
    case 'clearance-reaches-knurl':
      return `The part seats on plastic: its hole of ${hole} reaches past the knurl of ${knurl}.`;
    case 'gap-open':
      return `A gap of ${lengthText(seat.gap)} is open between the part and the insert.`;
    case 'insert-sunk':
      return `The insert sits ${lengthText(seat.sunk)} below the face, so the part bears on plastic first.`;
    case 'insert-from-far-side':
      return 'The insert is set from behind.';
    case 'overruled':
      return `You say that the part bears ${nameOfSeat(seat.kind)}; the sizes alone would put it ${nameOfSeat(seat.fromGeometry)}.`;
  }
}

/** Where the clamped part bears, why, and what that does with the clamp force. */
export const seatSentence = (seat: SeatFinding): string =>
  `${reasonSentence(seat)} ${CONSEQUENCES[seat.kind]}`;
