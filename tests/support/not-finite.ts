/** Every number anywhere in a value that is none, with where it stands. */
export function notFinite(value: unknown, path = '', seen = new Set<object>()): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value !== 'object' || value === null || seen.has(value)) return [];
  seen.add(value);
  return Object.entries(value).flatMap(([key, part]) => notFinite(part, `${path}.${key}`, seen));
}
