import { fromCore, toCore } from '../../core/units/convert.ts';
import { fieldText } from '../quantity/format.ts';
import { parseNow } from '../quantity/parse-quantity.ts';
import type { QuantityDefinition } from '../quantity/quantity-definition.ts';

/** The text one step up (1) or down (−1); nothing where the text is no quantity or the step leaves the limits. */
export function stepText(text: string, steps: number, definition: QuantityDefinition): string | undefined {
  const current = parseNow(text, definition);
  if (current.kind !== 'quantity') return undefined;
  const shown = fromCore(current.value, definition.displayUnit);
  const stepped = shown + steps * definition.step;
  const next = fieldText(toCore(stepped, definition.displayUnit), definition);
  const hasDecimalComma = text.includes(',') && !text.includes('.');
  const written = hasDecimalComma ? next.replace('.', ',') : next;
  return parseNow(written, definition).kind === 'quantity' ? written : undefined;
}
