import { SOURCES } from '../../src/core/sources/sources.ts';
import { type ExportedFunction, exportedFunctions } from './exported-functions.ts';

export interface DocstringFault {
  readonly function: string;
  readonly rule:
    | 'unknown-source'
    | 'unknown-parameter'
    | 'parameter-missing'
    | 'returns-missing'
    | 'returns-without-unit';
  readonly what: string;
}

interface Tag {
  readonly name: string;
  readonly text: string;
}

/** What the tags of a docstring say, each over as many lines as it takes. */
function tagsOf(docstring: string): readonly Tag[] {
  const text = docstring.replaceAll(/^\s*\* ?/gm, '');
  return [...text.matchAll(/^@(\w+)[ \t]*([\s\S]*?)(?=^@|(?![\s\S]))/gm)].map(
    ([, name = '', words = '']) => ({
      name,
      text: words.trim(),
    }),
  );
}

const firstWord = (text: string): string => text.split(/\s/)[0] ?? '';

/** A type that is nothing but numbers: plain, listed, tabled, or with their derivation. */
const NUMERIC = /^:\s*(?:readonly\s+)?(?:number|Derived|MeasuredLength|Float64Array)\b/;
const isNumeric = ({ returns }: ExportedFunction): boolean => returns === undefined || NUMERIC.test(returns);

const UNIT_IN_BRACKETS = /\[[^\]]+\]/;

function faultsOf(fn: ExportedFunction): readonly DocstringFault[] {
  const tags = tagsOf(fn.docstring);
  const texts = (name: string) => tags.filter((tag) => tag.name === name).map(({ text }) => text);
  if (!tags.some(({ name }) => ['param', 'returns', 'source'].includes(name))) return [];
  const fault = (rule: DocstringFault['rule'], what: string): DocstringFault => ({
    function: fn.name,
    rule,
    what,
  });
  const described = texts('param').map(firstWord);
  const strangers = described.filter((name) => !fn.parameters.includes(name));
  const takenApart = fn.parameters.filter((name) => name === undefined).length;
  const silent = fn.parameters.filter((name) => name !== undefined && !described.includes(name));
  return [
    ...texts('source')
      .map(firstWord)
      .filter((id) => !Object.hasOwn(SOURCES, id))
      .map((id) => fault('unknown-source', id)),
    // One that is taken apart has no name in the signature: the docstring gives it one.
    ...strangers.slice(takenApart).map((name) => fault('unknown-parameter', name)),
    ...(described.length > 0 ? silent.map((name) => fault('parameter-missing', String(name))) : []),
    ...(described.length > 0 && texts('returns').length === 0 && isNumeric(fn)
      ? [fault('returns-missing', '')]
      : []),
    ...(isNumeric(fn)
      ? texts('returns')
          .filter((text) => !UNIT_IN_BRACKETS.test(text))
          .map((text) => fault('returns-without-unit', text))
      : []),
  ];
}

/** Everything in the docstrings of a source text that is not so. */
export const docstringFaults = (path: string, source: string): readonly DocstringFault[] =>
  exportedFunctions(path, source).flatMap(faultsOf);
