import type { Chance } from '../../../core/chance/chance-result.ts';
import { countInThousand, type Draw } from '../../../core/chance/counted.ts';
import { inThousand } from '../../../wording/chance.ts';
import { ComputedValue } from '../../derivation/computed-value.tsx';

interface CountProps {
  readonly chance: Chance;
  readonly draw: Draw;
  /** What is counted. */
  readonly what: string;
}

/** How many of a thousand joints something is true of. */
export function Count({ chance, draw, what }: CountProps) {
  const text = inThousand(chance.probability);
  return (
    <ComputedValue
      derived={() => countInThousand(chance, draw)}
      text={text}
      label={`${what}, ${text} of 1,000`}
    />
  );
}
