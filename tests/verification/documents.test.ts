import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { MEANINGS } from '../../src/wording/symbol-meanings.ts';
import { DOCUMENTS } from './documents.ts';
import { markdownTable } from './markdown-table.ts';
import { nomenclatureRows } from './nomenclature-text.ts';
import { ALL_CHECKS } from './subjects.ts';
import { printedText } from './verification-text.ts';

const root = join(import.meta.dirname, '..', '..');

describe('the written documents', () => {
  test.each(Object.entries(DOCUMENTS))('%s is what `npm run verification` writes', (path, textOf) => {
    expect(readFileSync(join(root, path), 'utf8')).toBe(textOf(root));
  });
  test('show each check with its printed value', () => {
    const text = DOCUMENTS['docs/verification.md']?.(root) ?? '';
    for (const check of ALL_CHECKS) expect(text).toContain(`| ${printedText(check)} `);
  });
});

describe('the nomenclature', () => {
  const rows = nomenclatureRows(root);
  test('has every meaning, and one sign with one meaning once', () => {
    expect(new Set(rows.map(({ meaning }) => meaning))).toEqual(new Set(Object.values(MEANINGS)));
    const names = rows.map(({ symbol, meaning }) => `${symbol}: ${meaning}`);
    expect(names).toEqual([...new Set(names)]);
  });
  test.each(rows.map(({ symbol, meaning, unit, files }) => [symbol, meaning, unit, files] as const))(
    'knows the unit of %s, %s, and where it is used',
    (symbol, _meaning, unit, files) => {
      expect(unit, `${symbol}: give its unit in nomenclature-text.ts`).not.toBe('');
      if (symbol.startsWith('u(') || symbol === 'x') return;
      expect(files, `${symbol} stands in no file of the core`).not.toBe('');
    },
  );
});

describe('markdownTable', () => {
  test('sets its columns in line and keeps bars inside a cell', () => {
    expect(
      markdownTable(
        ['a', 'bb'],
        [
          ['x̄', '|V|'],
          ['μ′ long', '1'],
        ],
      ),
    ).toBe(
      ['| a       | bb    |', '| ------- | ----- |', '| x̄       | \\|V\\| |', '| μ′ long | 1     |'].join(
        '\n',
      ),
    );
  });
});
