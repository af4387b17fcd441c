import { NO_BREAK_SPACE, valueText } from '../../quantity/format.ts';

/** A force as a hanging scale shows it, in kg. */
export const scaleText = (force: number): string =>
  `${valueText(force, 'kgf', { step: 0.1 })}${NO_BREAK_SPACE}kg`;
