import { type CheckSourceId, titleOfSource } from '../fixtures/published/sources.ts';
import { type Check, type CheckedHow, deviationOf, printedValue, toleranceOf } from './check.ts';
import { markdownTable } from './markdown-table.ts';
import { ERRATA, WITHOUT_PUBLISHED_VALUE } from './prose.ts';
import { ALL_CHECKS, SUBJECTS, type Subject } from './subjects.ts';

const MINUS = '−';
const signed = (text: string): string => text.replace('-', MINUS);

const decimalsOf = (printed: string): number => printed.split('.')[1]?.length ?? 0;

/** One digit more than the source prints; a row of a table as it is held. */
const oursOf = (check: Check): string =>
  signed(check.computed().toFixed(decimalsOf(check.printed) + (check.kind === 'computed' ? 1 : 0)));

const percent = (value: number, decimals: number): string => {
  const text = value.toFixed(decimals);
  return `${signed(Number(text) === 0 ? (0).toFixed(decimals) : text)} %`;
};

const relative = (check: Check, amount: number): number => (100 * amount) / Math.abs(printedValue(check));

/** As the source prints it, with its unit. */
export const printedText = (check: Check): string =>
  check.unit === '-' ? check.printed : `${check.printed} ${check.unit}`;

/** The reasons of tolerances that are not half a digit, each once, in the order of the rows. */
const reasonsOf = (checks: readonly Check[]): readonly string[] => [
  ...new Set(checks.flatMap(({ tolerance }) => (tolerance === undefined ? [] : [tolerance.why]))),
];

/** Decimals that show a tolerance in per cent with two figures, never fewer than two. */
const decimalsFor = (check: Check): number =>
  Math.max(2, 1 - Math.floor(Math.log10(relative(check, toleranceOf(check)))));

function toleranceText(check: Check, reasons: readonly string[]): string {
  const amount = percent(relative(check, toleranceOf(check)), decimalsFor(check));
  return check.tolerance === undefined ? amount : `${amount} (${reasons.indexOf(check.tolerance.why) + 1})`;
}

function rowOf(check: Check, reasons: readonly string[]): readonly string[] {
  return [
    check.quantity,
    `\`${check.formula}\``,
    printedText(check),
    oursOf(check),
    percent(relative(check, deviationOf(check)), decimalsFor(check)),
    toleranceText(check, reasons),
    `${check.source}, ${check.place}`,
    check.how,
  ];
}

const HEAD = ['quantity', 'formula', 'published', 'ours', 'deviation', 'tolerance', 'source', 'how known'];
const RECOMPUTED_HEAD = HEAD.map((word) => (word === 'published' ? 'recomputed' : word));
const TABLE_HEAD = HEAD.map((word) => (word === 'formula' ? 'table' : word));

function part(lead: string, head: readonly string[], checks: readonly Check[]): readonly string[] {
  if (checks.length === 0) return [];
  const reasons = reasonsOf(checks);
  const notes = reasons.map((why, index) => `${index + 1}. ${why}`).join('\n');
  return [
    lead,
    markdownTable(
      head,
      checks.map((check) => rowOf(check, reasons)),
    ),
    ...(notes === '' ? [] : [`Tolerances of their own:\n\n${notes}`]),
  ];
}

const isRecomputed = ({ how }: Check) => how === 'recomputed';
const isTable = ({ kind }: Check) => kind === 'table';
const isPublished = (check: Check) => !isRecomputed(check) && !isTable(check);

function subjectText({ title, checks }: Subject): readonly string[] {
  return [
    `## ${title}`,
    ...part('Published, and worked out by the core:', HEAD, checks.filter(isPublished)),
    ...part(
      'Rows of a table that saved documents name, against their print:',
      TABLE_HEAD,
      checks.filter(isTable),
    ),
    ...part(
      'Not published: the same formula worked out apart from the program.',
      RECOMPUTED_HEAD,
      checks.filter(isRecomputed),
    ),
  ];
}

const HOWS: readonly CheckedHow[] = ['read', 'reprint', 'from memory'];

function summary(): string {
  const count = (checks: readonly Check[], how: CheckedHow) =>
    String(checks.filter((check) => check.how === how).length);
  const line = (words: string, checks: readonly Check[]) => [
    words,
    ...HOWS.map((how) => count(checks, how)),
    String(checks.length),
  ];
  const published = ALL_CHECKS.filter(isPublished);
  const tables = ALL_CHECKS.filter((check) => isTable(check) && !isRecomputed(check));
  return markdownTable(
    ['', ...HOWS, 'all'],
    [
      line('published values that the core works out', published),
      line('rows of tables against their print', tables),
    ],
  );
}

function farthest(): string {
  const shares = ALL_CHECKS.filter(isPublished).map((check) => Math.abs(relative(check, deviationOf(check))));
  const within = (limit: number) => shares.filter((share) => share <= limit).length;
  return `Of the ${shares.length} published values ${within(0.1)} are met within 0.1 %, ${within(1)} within 1 %, all within their tolerance; the farthest is ${percent(Math.max(...shares), 1)} off, for want of digits in the print.`;
}

function sources(): string {
  const ids = [...new Set(ALL_CHECKS.map(({ source }): CheckSourceId => source))].toSorted();
  return markdownTable(
    ['id', 'title', 'values'],
    ids.map((id) => [id, titleOfSource(id), String(ALL_CHECKS.filter(({ source }) => source === id).length)]),
  );
}

const recomputedCount = ALL_CHECKS.filter(isRecomputed).length;

/** The text of docs/verification.md. */
export const verificationText = (): string =>
  `${[
    '# Verification',
    'What this program makes of the inputs of published examples and tables, beside what they print. Written by `npm run verification` from the rows in `tests/verification`; every row is a test, and a test compares this file with what the rows give.',
    `${summary()}`,
    `${recomputedCount} further values are no publication: the same formula, worked out apart from the program. They stand in parts of their own and are not counted.`,
    farthest(),
    '- “read”: opened and read. “reprint”: read in a third party’s print of it. “from memory”: remembered, to be confirmed before it is quoted.\n- Tolerance: half a unit of the last printed digit, in per cent of the value, unless a note gives another with its reason.\n- Deviation: ours less published, in per cent of the published value.',
    ...SUBJECTS.flatMap(subjectText),
    '## Errata of the sources',
    ERRATA.map((text, index) => `${index + 1}. ${text}`).join('\n'),
    '## Finite elements',
    'Where no closed form is published, an insert bonded in its host was solved by finite elements with a general-purpose solver: compliance of the host, evenness of the shear along the knurl, tension below the insert. The set-up meets Lamé’s ring within 0.3 % and a sheared ring within 0.01 %; the program’s compliance meets the solutions within 20 %. Model, results and limits: [finite-element.md](finite-element.md). Tests: `tests/core/finite-element`.',
    '## What has no published value',
    'These numbers of the model are estimates. They are marked ≈ on the page, and a coupon of the own printer, material and iron replaces them.',
    markdownTable(['quantity', 'state'], WITHOUT_PUBLISHED_VALUE),
    '## Sources',
    sources(),
  ].join('\n\n')}\n`;
