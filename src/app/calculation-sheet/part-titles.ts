import { conditionOfState, titleOfState } from '../../wording/hold.ts';
import { nameOfMode } from '../../wording/names.ts';
import type { PartId } from './parts.ts';

const TITLES = {
  insert: 'The insert as measured',
  hole: 'The hole',
  host: 'Strengths of the printed part',
  seat: 'Screw and grip',
  preload: 'Clamp force left after the time',
  torque: 'The least torque',
  dial: 'The dial',
  remarks: 'Numbers of what to know',
  loads: 'Limits against their loads, at the dialled torque',
} as const;

/** Heading of a part of the calculation. */
export function titleOfPart(id: PartId): string {
  switch (id.kind) {
    case 'mode':
      return nameOfMode(id.mode);
    case 'allowed':
      return `${nameOfMode(id.mode)}: most torque`;
    case 'state':
      return `${titleOfState(id.state)}, ${conditionOfState(id.state)}`;
    default:
      return TITLES[id.kind];
  }
}

/** The same for every joint; a key for lists. */
export const keyOfPart = (id: PartId): string =>
  'mode' in id ? `${id.kind} ${id.mode}` : id.kind === 'state' ? id.state.id : id.kind;
