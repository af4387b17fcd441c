import { describe, expect, test } from 'vitest';
import { keepTheme, keptTheme } from '../../../src/app/theme/theme.ts';

function storageWith(map: Map<string, string>): () => Storage {
  return () => ({
    length: map.size,
    clear: () => map.clear(),
    getItem: (key) => map.get(key) ?? null,
    key: () => null,
    removeItem: (key) => void map.delete(key),
    setItem: (key, value) => void map.set(key, value),
  });
}

describe('the kept theme', () => {
  test('is the one chosen last', () => {
    const storage = storageWith(new Map());
    keepTheme('dark', storage);
    expect(keptTheme(storage)).toBe('dark');
    keepTheme('system', storage);
    expect(keptTheme(storage)).toBe('system');
  });
  test('follows the system where what is kept is no theme', () => {
    expect(keptTheme(storageWith(new Map([['knurlwright theme', 'sepia']])))).toBe('system');
  });
  test('follows the system where storage is closed', () => {
    const closed = () => {
      throw new Error('closed');
    };
    keepTheme('dark', closed);
    expect(keptTheme(closed)).toBe('system');
  });
});
