import type { UnitSymbol } from '../../core/units/units.ts';

/** How people write a unit, beside its symbol. Letters of either case, except in `EXACT`. */
const NAMES: Readonly<Partial<Record<UnitSymbol, readonly string[]>>> = {
  mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  µm: ['µm', 'μm', 'um', 'micron', 'microns', 'micrometre', 'micrometres', 'micrometer', 'micrometers'],
  cm: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
  m: ['metre', 'metres', 'meter', 'meters'],
  in: ['in', 'inch', 'inches', '"', '″', '”', '“', "''", '’’', '′′'],
  thou: ['thou', 'thous', 'mil', 'mils'],
  N: ['newton', 'newtons'],
  kN: ['kilonewton', 'kilonewtons'],
  kgf: ['kgf', 'kg', 'kgs', 'kp', 'kilogram-force', 'kilogram', 'kilograms'],
  gf: ['gf', 'gram-force', 'gram', 'grams'],
  lbf: ['lbf', 'lb', 'lbs', 'pound', 'pounds', 'pound-force'],
  ozf: ['ozf', 'oz', 'ounce', 'ounces'],
  '°C': ['°c', 'ºc', '℃', 'degc', 'deg c', 'celsius'],
  '°F': ['°f', 'ºf', '℉', 'degf', 'deg f', 'fahrenheit'],
  K: ['kelvin', 'kelvins'],
  bar: ['bar'],
  psi: ['psi', 'lbf/in²', 'lbf/in^2'],
  ksi: ['ksi'],
  s: ['s', 'sec', 'secs', 'second', 'seconds'],
  min: ['min', 'mins', 'minute', 'minutes'],
  h: ['h', 'hr', 'hrs', 'hour', 'hours'],
  day: ['d', 'day', 'days'],
  week: ['w', 'wk', 'wks', 'week', 'weeks'],
  month: ['mo', 'month', 'months'],
  year: ['y', 'yr', 'yrs', 'year', 'years'],
  '×': ['×', 'x', 'times', 'fold'],
  '%': ['%', 'percent', 'per cent'],
  rad: ['rad', 'radian', 'radians'],
  '°': ['°', 'º', 'deg', 'degree', 'degrees'],
};

/** Where another case would be another unit, or none. */
const EXACT: Readonly<Partial<Record<UnitSymbol, readonly string[]>>> = {
  m: ['m'],
  N: ['N'],
  kN: ['kN', 'KN', 'kn'],
  gf: ['g'],
  K: ['K'],
  '°C': ['C'],
  '°F': ['F'],
  MPa: ['MPa', 'Mpa', 'MPA', 'mpa', 'N/mm²', 'N/mm^2', 'N/mm2'],
  GPa: ['GPa', 'Gpa', 'GPA', 'gpa'],
  kPa: ['kPa', 'KPa', 'kpa'],
};

const POUND = 'lbf|lbs|lb';
const OUNCE = 'ozf|oz';
const INCH = 'inches|inch|in';
const FOOT = 'feet|foot|ft';
const KILOGRAM = 'kgf|kg|kp';

/** Torque: a force and an arm with a dot, a star, a hyphen, a space or nothing between. */
const PRODUCTS: readonly (readonly [symbol: UnitSymbol, first: string, second: string])[] = [
  ['N·m', 'n', 'm'],
  ['N·mm', 'n', 'mm'],
  ['cN·m', 'cn', 'm'],
  ['kgf·cm', KILOGRAM, 'cm'],
  ['kgf·m', KILOGRAM, 'm'],
  ['lbf·in', POUND, INCH],
  ['lbf·in', INCH, POUND],
  ['lbf·ft', POUND, FOOT],
  ['lbf·ft', FOOT, POUND],
  ['ozf·in', OUNCE, INCH],
  ['ozf·in', INCH, OUNCE],
];

const BETWEEN = String.raw`(?:\s*[·⋅∙•.*]\s*|-|\s+|)`;
const NO_LETTER_AFTER = String.raw`(?![\p{L}°²³])`;

interface Spelling {
  readonly symbol: UnitSymbol;
  readonly pattern: RegExp;
}

const escaped = (text: string) => text.replace(/[/^*.$+?()[\]{}|\\]/g, String.raw`\$&`);

function spellingsOf(
  names: Readonly<Partial<Record<UnitSymbol, readonly string[]>>>,
  flags: string,
): Spelling[] {
  return Object.entries(names).map(([symbol, forms]) => {
    const longestFirst = forms.toSorted((a, b) => b.length - a.length).map(escaped);
    return {
      symbol: symbol as UnitSymbol,
      pattern: new RegExp(`(?:${longestFirst.join('|')})${NO_LETTER_AFTER}`, flags),
    };
  });
}

const SPELLINGS: readonly Spelling[] = [
  ...PRODUCTS.map(([symbol, first, second]) => ({
    symbol,
    pattern: new RegExp(`(?:${first})${BETWEEN}(?:${second})${NO_LETTER_AFTER}`, 'iuy'),
  })),
  ...spellingsOf(NAMES, 'iuy'),
  ...spellingsOf(EXACT, 'uy'),
];

/** The longest unit that begins at a place in a text. */
export function unitAt(
  text: string,
  place: number,
): { readonly symbol: UnitSymbol; readonly length: number } | undefined {
  let longest: { readonly symbol: UnitSymbol; readonly length: number } | undefined;
  for (const { symbol, pattern } of SPELLINGS) {
    pattern.lastIndex = place;
    const length = pattern.exec(text)?.[0].length ?? 0;
    if (length > (longest?.length ?? 0)) longest = { symbol, length };
  }
  return longest;
}

/** The unit that a text is as a whole. */
export function unitNamed(text: string): UnitSymbol | undefined {
  const found = unitAt(text, 0);
  return found?.length === text.length ? found.symbol : undefined;
}
