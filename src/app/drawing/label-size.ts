import { type DimensionId, dimensionDocs } from './dimension-ids.ts';
import { dimensionValue, plainValue } from './plain-value.ts';
import type { SectionInput } from './section-input.ts';
import { textWidth } from './text-width.ts';
import type { Variant } from './view.ts';

export type Arrangement = 'block' | 'row';

export interface LabelSize {
  readonly width: number;
  readonly height: number;
}

export interface LabelStyle {
  readonly variant: Variant;
  readonly arrangement: Arrangement;
}

/** Type sizes, heights of a line and the paper beside the text, px. */
const TYPE = {
  wide: {
    value: 18,
    main: 23,
    name: 13,
    valueLine: 21,
    mainLine: 30,
    nameLine: 15,
    margin: 8,
    mainMargin: 16,
    between: 6,
  },
  narrow: {
    value: 16,
    main: 19,
    name: 12.5,
    valueLine: 19,
    mainLine: 25,
    nameLine: 13,
    margin: 4,
    mainMargin: 6,
    between: 4,
  },
};
/** A field is at least as wide as this. */
const LEAST_FIELD = '0.00';
/** What is measured stands in its field with the digits of a caliper, every sign as wide as a figure and a little more. */
const MEASURED_DIGITS = 2;
const FIELD_EXTRA = 0.6;

/** The answer's own values are larger. */
export const mainDimensions: readonly DimensionId[] = ['hole-depth', 'bore-drawn'];

const narrowNames: Partial<Record<DimensionId, string>> = { 'bore-drawn': '', 'boss-least': 'boss ≥' };
/** From the far side the floor of the hole is a shoulder over the insert. */
const farSideNames: Partial<Record<DimensionId, string>> = { floor: 'shoulder' };

/** A hole that is there is not to be drawn. */
const GIVEN_NAMES = { 'as-drawn': 'drawn', 'as-measured': 'measured' } as const;

/** The small name beside a value. */
export function labelName(input: SectionInput, id: DimensionId, variant: Variant): string {
  const short = variant === 'narrow' ? narrowNames[id] : undefined;
  const given = id === 'bore-drawn' && input.hole.given ? GIVEN_NAMES[input.hole.given] : undefined;
  const far = input.insert.side === 'far-side' ? farSideNames[id] : undefined;
  return short ?? far ?? given ?? dimensionDocs[id].name;
}

/** Room that a value with its small name takes, above one another or side by side. */
export function labelSize(
  input: SectionInput,
  id: DimensionId,
  { variant, arrangement }: LabelStyle,
): LabelSize {
  const type = TYPE[variant];
  const isMain = mainDimensions.includes(id);
  const valueType = isMain ? { size: type.main, isBold: true as const } : { size: type.value };
  const value = Math.max(
    textWidth(LEAST_FIELD, valueType),
    textWidth(plainValue(input, id), valueType),
    id === 'insert-length' ? measuredWidth(input, type.value) : 0,
  );
  const name = textWidth(labelName(input, id, variant), { size: type.name });
  const line = isMain ? type.mainLine : type.valueLine;
  const margin = isMain ? type.mainMargin : type.margin;
  return arrangement === 'block'
    ? { width: Math.max(value, name) + margin, height: line + (name > 0 ? type.nameLine : 0) + 2 }
    : { width: value + name + (name > 0 ? type.between : 0) + margin, height: line + 2 };
}

/** Width of the field of the insert's measured length. */
function measuredWidth(input: SectionInput, size: number): number {
  const signs = dimensionValue(input, 'insert-length').toFixed(MEASURED_DIGITS).length;
  return (signs + FIELD_EXTRA) * textWidth('0', { size });
}
