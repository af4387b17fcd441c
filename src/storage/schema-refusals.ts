import type * as z from 'zod/mini';
import type { Refusal } from './refusal.ts';

const valueAt = (root: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, key) => (typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined),
    root,
  );

const shown = (value: unknown): string => {
  if (typeof value === 'string') return value.length > 40 ? `${value.slice(0, 40)}…` : value;
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (value === null) return 'null';
  return Array.isArray(value) ? 'a list' : `${/^[aeiou]/.test(typeof value) ? 'an' : 'a'} ${typeof value}`;
};

/** Turns what the schema found into refusals of our own, one for each place. */
export function schemaRefusals(issues: readonly z.core.$ZodIssue[], input: unknown): Refusal[] {
  return issues.flatMap((issue) => refusalsOf(issue, input));
}

function refusalsOf(issue: z.core.$ZodIssue, input: unknown): Refusal[] {
  const path = issue.path.map(String).join('.');
  const value = valueAt(input, issue.path);
  const one = (code: Refusal['code'], facts: Refusal['facts']): Refusal[] => [{ path, code, facts }];
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        path: path === '' ? key : `${path}.${key}`,
        code: 'unknown-key',
        facts: {},
      }));
    case 'too_small':
      return issue.origin === 'number' || issue.origin === 'int'
        ? one('below-limit', { value: shown(value), least: Number(issue.minimum) })
        : one('too-few', { least: Number(issue.minimum) });
    case 'too_big':
      return issue.origin === 'number' || issue.origin === 'int'
        ? one('above-limit', { value: shown(value), greatest: Number(issue.maximum) })
        : one('too-many', { greatest: Number(issue.maximum) });
    case 'invalid_value':
      return value === undefined
        ? one('missing', { choices: issue.values.map(String).join(', ') })
        : one('not-a-choice', { value: shown(value), choices: issue.values.map(String).join(', ') });
    case 'invalid_union':
      return value === undefined
        ? one('missing', { choices: choicesOf(issue) })
        : one('not-a-choice', { value: shown(value), choices: choicesOf(issue) });
    case 'invalid_type':
      if (value === undefined) return one('missing', { wanted: issue.expected });
      if (issue.expected === 'int') return one('not-whole', { value: shown(value) });
      return one('wrong-kind', { value: shown(value), wanted: issue.expected });
    // The schema asks for none of these.
    case 'custom':
    case 'invalid_element':
    case 'invalid_format':
    case 'invalid_key':
    case 'not_multiple_of':
      return one('wrong-kind', { value: shown(value), wanted: issue.code });
  }
}

/** The kinds that a value may have, as the schema lists them. */
const choicesOf = (issue: Extract<z.core.$ZodIssue, { code: 'invalid_union' }>): string =>
  'options' in issue ? (issue.options ?? []).map(String).join(', ') : '';
