/** Columns that most tables have. */
export const USUAL_COLUMNS = [
  'coupon',
  'date',
  'insert',
  'kind',
  'value',
  'unit',
  'result',
  'setting',
  'material',
  'printer',
  'leverRatio',
  'bore_mm',
  'batch',
  'note',
] as const;

/** Columns that a thorough bench keeps besides. */
export const FURTHER_COLUMNS = [
  'axis',
  'wallLines',
  'infill_percent',
  'resolution',
  'greatest',
  'ironTemperature_degC',
  'settingTime_s',
] as const;

/** What a column of a table of tests can be. */
export const COLUMN_KEYS = [...USUAL_COLUMNS, ...FURTHER_COLUMNS] as const;

export type ColumnKey = (typeof COLUMN_KEYS)[number];

/** Which column of the table holds what; a key without a column is taken from the set-up. */
export type Columns = Readonly<Partial<Record<ColumnKey, number>>>;

/** Words that headers of benches use, folded. */
const HEADER_WORDS: Readonly<Record<ColumnKey, readonly string[]>> = {
  coupon: [
    'coupon',
    'number',
    'coupon number',
    'number on the coupon',
    'test number',
    'no',
    'no.',
    'nr',
    'nr.',
    '#',
  ],
  date: ['date', 'day', 'datum'],
  insert: ['insert', 'size', 'part'],
  kind: ['kind', 'test', 'type'],
  value: ['value', 'reading', 'force', 'torque', 'load', 'kg', 'kgf', 'n', 'nm', 'result value'],
  unit: ['unit', 'units'],
  result: ['result', 'failure', 'how it ended', 'outcome', 'broke'],
  setting: ['setting', 'set', 'method', 'way of setting'],
  material: ['material', 'filament', 'plastic'],
  printer: ['printer', 'machine'],
  leverRatio: ['lever', 'lever ratio', 'leverratio'],
  bore_mm: ['bore', 'hole', 'bore_mm'],
  batch: ['batch', 'group', 'what was varied', 'variant'],
  note: ['note', 'notes', 'remark', 'comment'],
  axis: ['axis', 'insert axis', 'axis against the build', 'direction', 'orientation'],
  wallLines: ['walls', 'wall lines', 'perimeters'],
  infill_percent: ['infill', 'infill density'],
  resolution: ['resolution', 'step', 'scale step', 'step of the instrument'],
  greatest: ['greatest', 'greatest reading', 'capacity'],
  ironTemperature_degC: ['iron', 'iron temperature', 'temperature'],
  settingTime_s: ['setting time', 'time to set', 'seconds'],
};

const folded = (header: string): string =>
  header
    .toLowerCase()
    .replace(/[[({,].*$/, '')
    .replace(/\s+/g, ' ')
    .trim();

/** The columns that the words of a header propose; a person has the last word. */
export function proposedColumns(header: readonly string[]): Columns {
  const names = header.map(folded);
  const found = COLUMN_KEYS.flatMap((key) => {
    const at = names.findIndex((name) => name === key.toLowerCase() || HEADER_WORDS[key].includes(name));
    return at < 0 ? [] : [[key, at] as const];
  });
  return Object.fromEntries(found);
}

/** A unit that stands in the header instead of the cells: "Force [kg]", "torque (N·m)", "reading, N". */
export const unitInHeader = (header: string): string | undefined =>
  (/[[(]([^\])]+)[\])]/.exec(header) ?? /, *([^,]+)$/.exec(header))?.[1];
