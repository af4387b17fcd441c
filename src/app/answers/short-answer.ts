import { diameterNumber, torqueNumber } from '../../wording/amount.ts';
import { sizeOfInsert } from '../../wording/names.ts';
import type { Findings } from '../state/findings.ts';
import type { QuestionId } from './questions.ts';

/** The value alone, as it fits in a line. */
export function shortAnswer(id: Exclude<QuestionId, 'hold' | 'tests'>, { stop, shown }: Findings): string {
  if (stop) return 'withheld';
  if (!shown) return 'none';
  const { dimensions, hole, torque } = shown.assessment;
  switch (id) {
    case 'insert':
      return `${shown.insert.thread.designation} ${sizeOfInsert(dimensions)}`;
    case 'hole':
      return `⌀ ${diameterNumber(hole.drawn.value)} mm`;
    case 'tight':
      return torque.kind === 'window' ? `${torqueNumber(torque.dial.value)} N·m` : 'none fits';
  }
}
