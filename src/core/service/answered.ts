import { faultOf } from '../inserts/insert-faults.ts';
import { noRoomAtAll } from '../joint/room-for-insert.ts';
import { stopOf } from '../joint/stop.ts';
import type { Subject } from './lever.ts';

/** Whether a moved subject is still one that the door and the program answer: no stop, an insert that can exist, room for it. */
export const isAnswered = ({ joint, insert }: Subject): boolean =>
  stopOf(joint) === undefined &&
  faultOf(insert, joint.holes.fit) === undefined &&
  noRoomAtAll(joint, insert) === undefined;
