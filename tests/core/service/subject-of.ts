import type { Insert } from '../../../src/core/inserts/insert.ts';
import { assess } from '../../../src/core/joint/assess.ts';
import type { AnswerableJoint } from '../../../src/core/joint/stop.ts';
import { askedTorque, type Hold, holdOf } from '../../../src/core/service/hold.ts';
import type { LeverId, Subject } from '../../../src/core/service/lever.ts';
import { LEVERS } from '../../../src/core/service/levers.ts';
import { type Moment, momentsOf } from '../../../src/core/service/moments.ts';
import type { StateId } from '../../../src/core/service/service-state.ts';
import type { Derived } from '../../../src/core/sources/derived.ts';
import type { InsertRecord } from '../../../src/storage/document.ts';
import { answerableJoint, type Changes, theInsert } from '../../support/joints.ts';
import { theRow } from '../../support/the-row.ts';

/** A joint with its insert and the torque it is asked at; a joint without a torque is a fault of the test. */
export interface Asked extends Subject {
  readonly torque: Derived;
}

export function torqueFor(joint: AnswerableJoint, insert: Insert): Derived {
  const torque = askedTorque(assess(joint, insert).torque);
  if (torque === undefined) throw new Error('no torque at all');
  return torque;
}

export function askedOf(changes: Changes = {}, record: Partial<InsertRecord> = {}): Asked {
  const joint = answerableJoint(changes);
  const insert = theInsert(record);
  return { joint, insert, torque: torqueFor(joint, insert) };
}

/** One joint at its own torque. */
export function heldOf(changes: Changes = {}, record: Partial<InsertRecord> = {}): Hold {
  const { joint, insert, torque } = askedOf(changes, record);
  return holdOf(joint, insert, torque);
}

/** A joint at one of its times. */
export const momentWith = (id: StateId, changes: Changes = {}): Moment =>
  theRow(momentsOf(answerableJoint(changes), theInsert()), (moment) => moment.id === id);

export const leverOf = (id: LeverId) => theRow(LEVERS, (lever) => lever.id === id);

/** The subject after a move that is possible. */
export function moved(subject: Subject, id: LeverId, steps: number): Subject {
  const after = leverOf(id).move(subject, steps);
  if (after === undefined) throw new Error(`${id} does not move by ${steps}`);
  return after;
}
