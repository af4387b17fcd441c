import type { TakenQuantity } from '../quantity/parsed-quantity.ts';
import type { QuantityDefinition } from '../quantity/quantity-definition.ts';

/** A reason from the joint itself, such as a pilot that is no thinner than the knurl. */
export interface FieldProblem {
  /** Sentences that follow "Not taken." */
  readonly message: string;
  readonly repair?: Repair;
}

/** One press that puts a field right. */
export interface Repair {
  readonly label: string;
  readonly apply: () => void;
}

/** row: label left, value right, in a list. bare: the input alone with its name, to lie on a drawing. */
export type FieldLayout = 'row' | 'bare';

export interface FieldCommonProps {
  readonly label: string;
  readonly layout?: FieldLayout;
  /** A further sentence for the description, such as why the range ends where it does. */
  readonly note?: string;
  readonly problem?: FieldProblem | undefined;
  /** Tells when an error begins and ends to show, so that answers can be marked as stale. */
  readonly onRefused?: (refused: boolean) => void;
  /** Width of the input in figures; by the text when absent. */
  readonly width?: number;
}

export interface QuantityFieldProps extends FieldCommonProps {
  readonly definition: QuantityDefinition;
  /** The meant quantity, core unit; null where nothing is known yet. */
  readonly value: number | null;
  readonly onTake: (value: number, taken: TakenQuantity) => void;
  /** Given: an empty field is an answer (not known), not an error. */
  readonly onClear?: () => void;
  /** The quantity as the subject of a sentence, "A pull"; by default its kind. */
  readonly noun?: string;
  /** In place of the unit's symbol beside the input; '' for none. */
  readonly unitShown?: string;
}

export interface ReadingsFieldProps extends FieldCommonProps {
  /** What each reading is. */
  readonly definition: QuantityDefinition;
  /** The meant readings, core unit, in the order typed. */
  readonly readings: readonly number[];
  readonly onTake: (readings: readonly number[]) => void;
  readonly noun?: string;
  readonly unitShown?: string;
  readonly least?: number;
  readonly most?: number;
}

export interface Choice<Value extends string> {
  readonly value: Value;
  readonly label: string;
  /** Options with the same group stand together under it. */
  readonly group?: string;
}

export interface ChoiceFieldProps<Value extends string> extends FieldCommonProps {
  readonly value: Value;
  readonly choices: readonly Choice<Value>[];
  readonly onTake: (value: Value) => void;
}
