// @vitest-environment jsdom
import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useEffect } from 'react';
import { describe, expect, test } from 'vitest';
import { SENSOR_LID } from '../../../src/app/demos/sensor-lid.ts';
import { DerivationsProvider } from '../../../src/app/derivation/derivations-provider.tsx';
import { nextNumber, withNextTest, withoutTest } from '../../../src/app/questions/test-log/test-edits.ts';
import TestLog from '../../../src/app/questions/test-log/test-log.tsx';
import { openDoor } from '../../../src/app/state/door.ts';
import { useSheet } from '../../../src/app/state/sheet-context.ts';
import { SheetProvider } from '../../../src/app/state/sheet-provider.tsx';
import type { JointDocument, TestRecord } from '../../../src/storage/document.ts';
import { documentWithTests, testRecord } from '../../support/bench-tests.ts';
import { FAULTY_TESTS } from '../../support/faulty-tests.ts';
import { expectRelative } from '../../support/published.ts';

let seen: JointDocument = SENSOR_LID;
function Watch() {
  const { document, undo } = useSheet();
  useEffect(() => {
    seen = document;
  }, [document]);
  return (
    <button type="button" onClick={undo}>
      undo
    </button>
  );
}
const shown = (document: JointDocument = SENSOR_LID) => {
  render(
    <SheetProvider first={document}>
      <DerivationsProvider>
        <TestLog />
      </DerivationsProvider>
      <Watch />
    </SheetProvider>,
  );
  return userEvent.setup();
};
const theTest = (index: number): TestRecord => {
  const found = seen.tests[index];
  if (found === undefined) throw new Error(`there is no test ${index}`);
  return found;
};
async function typed(user: ReturnType<typeof userEvent.setup>, label: string | RegExp, text: string) {
  const field = screen.getByLabelText(label);
  await user.clear(field);
  await user.type(field, `${text}{Enter}`);
}

describe('TestLog', () => {
  test('begins a test with the joint’s own set-up, in kg, and the reading under the hand', async () => {
    const user = shown();
    await user.click(screen.getByRole('button', { name: 'Enter test 1' }));
    expect(theTest(0)).toMatchObject({
      id: 'test-1',
      material: 'petg',
      setting: 'heat-set',
      unit: 'kgf',
      wallLines: 5,
      infill_percent: 20,
    });
    expect(screen.getByLabelText(/^Reading/)).toHaveFocus();
    await typed(user, /^Reading/, '41,5');
    expect(theTest(0).value).toBe(41.5);
    expect(screen.getByText('41.5 kg')).toBeInTheDocument();
  });
  test('begins the next with the set-up of the last, without its reading and note', async () => {
    const user = shown();
    await user.click(screen.getByRole('button', { name: 'Enter test 1' }));
    await typed(user, /^Reading/, '38');
    await user.selectOptions(screen.getByLabelText('How it ended'), 'boss split');
    await typed(user, 'Note', 'cracked along a layer');
    await user.click(screen.getByRole('button', { name: 'Enter test 2' }));
    expect(theTest(0)).toMatchObject({ value: 38, result: 'boss-split', note: 'cracked along a layer' });
    expect(theTest(1)).toMatchObject({ id: 'test-2', value: 0, result: 'boss-split', note: '' });
  });
  test('takes a reading in another unit of force, and refuses a torque with its reason', async () => {
    const user = shown();
    await user.click(screen.getByRole('button', { name: 'Enter test 1' }));
    await typed(user, /^Reading/, '392.266 N');
    expectRelative(theTest(0).value, 40);
    await typed(user, /^Reading/, '1.2 N·m');
    expect(screen.getByRole('alert')).toHaveTextContent(/Not taken/);
    expectRelative(theTest(0).value, 40);
  });
  test('gives a torque test a unit and an end of its own', async () => {
    const user = shown();
    await user.click(screen.getByRole('button', { name: 'Enter test 1' }));
    await user.selectOptions(screen.getByLabelText('Test'), 'Turned by torque');
    expect(theTest(0)).toMatchObject({ kind: 'torque-out', unit: 'N·m', result: 'insert-turned' });
    expect(theTest(0)).not.toHaveProperty('greatest');
    const ends = within(screen.getByLabelText('How it ended')).getAllByRole('option');
    expect(ends.map(({ textContent }) => textContent)).not.toContain('insert out, clean');
  });
  test('takes the good lines of a pasted table, and names the others with their reason', async () => {
    const user = shown();
    await user.click(screen.getByRole('button', { name: 'Read a table of tests' }));
    const field = await screen.findByLabelText(/^A table of tests/);
    await user.click(field);
    await user.paste('insert;reading;how it ended\nwide-four;41,5 kg;boss split\nwide-four;lots;held');
    expect(screen.getByRole('status')).toHaveTextContent('One line becomes a test; one is not taken:');
    expect(screen.getByText(/^Line 3, reading: “lots” is no number/)).toBeInTheDocument();
    await user.click(screen.getByRole('button', { name: 'Take the test' }));
    expect(seen.tests).toHaveLength(1);
    expect(theTest(0)).toMatchObject({
      id: 'test-1',
      insert: 'wide-four',
      value: 41.5,
      result: 'boss-split',
    });
    expect(field).toHaveValue('insert,reading,how it ended\nwide-four,lots,held\n');
    expect(screen.getByText('Taken: one test.')).toBeInTheDocument();
    await user.clear(field);
    await user.paste('insert,reading,how it ended\nwide-four,52,held');
    await user.click(screen.getByRole('button', { name: 'Take the test' }));
    expect(seen.tests.map(({ id, value }) => [id, value])).toEqual([
      ['test-1', 41.5],
      ['test-2', 52],
    ]);
    expect(screen.queryByLabelText(/^A table of tests/)).not.toBeInTheDocument();
  });
  test('reports each of many bad lines, the first at once and the others when asked', async () => {
    const user = shown();
    await user.click(screen.getByRole('button', { name: 'Read a table of tests' }));
    await user.click(await screen.findByLabelText(/^A table of tests/));
    await user.paste(`reading\n${'lots\n'.repeat(45)}`);
    expect(screen.getByText(/^Line 21, reading/)).toBeInTheDocument();
    expect(screen.queryByText(/^Line 46, reading/)).not.toBeInTheDocument();
    await user.click(screen.getByText('and 25 more'));
    expect(await screen.findByText(/^Line 46, reading/)).toBeInTheDocument();
  });
  test('lets a person say which column is which', async () => {
    const user = shown();
    await user.click(screen.getByRole('button', { name: 'Read a table of tests' }));
    await user.click(await screen.findByLabelText(/^A table of tests/));
    await user.paste('mass,when\n37,2026-03-09');
    expect(screen.getByRole('status')).toHaveTextContent('one is not taken');
    await user.selectOptions(screen.getByLabelText('reading'), 'mass');
    await user.selectOptions(screen.getByLabelText('date'), 'when');
    await user.click(screen.getByRole('button', { name: 'Take the test' }));
    expect(theTest(0)).toMatchObject({ value: 37, unit: 'kgf', date: '2026-03-09' });
  });
  test('says at each row what it says of the bond, or why it is left out', async () => {
    const record = (changes: Partial<TestRecord>): TestRecord => ({
      ...testRecord(changes),
      insert: 'tall-five',
    });
    await openDoor();
    shown({
      ...SENSOR_LID,
      tests: [
        record({ id: 'test-1', value: 107 }),
        record({ id: 'test-2', value: 50, kind: 'proof-pull', result: 'held' }),
        record({ id: 'test-3', setting: 'nut', value: 88 }),
        record({ id: 'test-4', value: 0 }),
      ],
    });
    const [pulled, proof, nut, empty] = screen.getAllByRole('listitem').map(({ textContent }) => textContent);
    expect(pulled).toMatch(/insert out, with plastic bond 0\.\d\d/);
    expect(proof).toMatch(/held held: bond at least 0\.\d\d/);
    expect(nut).toContain('says nothing of the bond');
    expect(empty).toContain('Left out. It has no reading yet.');
    await userEvent.click(screen.getByRole('button', { name: /^test 1, Bond factor that a coupon showed/ }));
    const opened = screen.getByRole('region', { name: /^Derivation: test 1/ });
    expect(opened).toHaveTextContent('load at the insert, lever included');
    // 107 kg are 1049 N.
    expect(opened).toHaveTextContent(/1,050\sN/);
  });
  test.each(Object.entries(FAULTY_TESTS))(
    'keeps a row of the fault %s to be put right, and says at it why it is left out',
    async (_, { record, says, joint = {} }) => {
      const faulty = testRecord({ ...record, id: 'test-2' });
      const user = shown(documentWithTests([testRecord(), faulty], joint));
      const [, row] = within(screen.getByRole('list')).getAllByRole('listitem');
      if (row === undefined) throw new Error('there are two rows');
      expect(row).toHaveTextContent(/Left out\./);
      expect(row).toHaveTextContent(says);
      expect(theTest(1)).toEqual(faulty);
      await user.click(within(row).getByRole('button', { name: 'Edit test 2' }));
      await user.type(within(row).getByLabelText('Note'), 'looked at it{Enter}');
      expect(theTest(1)).toEqual({ ...faulty, note: 'looked at it' });
    },
  );
  test('lets a material, a printer and a lever that cannot be be put right at the row', async () => {
    await openDoor();
    const user = shown(
      documentWithTests([testRecord({ material: 'bakelite', printer: 'cellar', leverRatio: 0 })]),
    );
    await user.click(screen.getByRole('button', { name: 'Edit test 1' }));
    const select = (label: string) => screen.getByRole('combobox', { name: label });
    expect(select('Printed in')).toHaveDisplayValue('“bakelite”, not in the tables');
    expect(select('Printer')).toHaveDisplayValue('“cellar”, not among your printers');
    await user.selectOptions(select('Printed in'), 'PETG');
    await user.selectOptions(select('Printer'), 'Attic printer');
    await typed(user, 'Lever ratio', '1');
    expect(screen.getByRole('listitem')).not.toHaveTextContent('Left out');
    expect(theTest(0)).toMatchObject({ material: 'petg', printer: 'attic', leverRatio: 1 });
  });
  test('takes three equal pulls of three coupons for three, each with its number', async () => {
    const user = shown(documentWithTests([]));
    for (const number of [1, 2, 3]) {
      await user.click(screen.getByRole('button', { name: `Enter test ${number}` }));
      await typed(user, /^Reading/, '107');
    }
    expect(seen.tests.map(({ coupon }) => coupon)).toEqual([1, 2, 3]);
    expect(screen.getByRole('list')).not.toHaveTextContent('Left out');
    await typed(user, 'Number on the coupon', '2');
    expect(screen.getByRole('list')).toHaveTextContent('It is the same as test 2 in everything');
  });
  test('counts the coupons on from the number that was typed', async () => {
    const user = shown();
    await user.click(screen.getByRole('button', { name: 'Enter test 1' }));
    await typed(user, 'Number on the coupon', '12');
    await user.click(screen.getByRole('button', { name: 'Enter test 2' }));
    expect(theTest(1)).toMatchObject({ id: 'test-2', coupon: 13 });
    expect(screen.getAllByRole('listitem')[0]).toHaveTextContent('test 1 coupon 12,');
  });
  test('doubts the unit of newtons written as kilograms, and puts it right by a press', async () => {
    await openDoor();
    const user = shown(documentWithTests([testRecord({ value: 550 })]));
    const row = screen.getByRole('listitem');
    expect(row).toHaveTextContent(
      'Look at the unit. 550 kg is far from what such an insert bears; 550 N would be usual.',
    );
    await user.click(within(row).getByRole('button', { name: 'It was N' }));
    expect(theTest(0)).toMatchObject({ value: 550, unit: 'N' });
    expect(screen.getByRole('listitem')).not.toHaveTextContent('Look at the unit');
  });
  test('shows the latest hundred of very many, whatever is left out, and the others when asked', async () => {
    const many = Array.from({ length: 130 }, (_, index) =>
      testRecord({ id: `test-${index + 1}`, coupon: index + 1, value: index === 4 ? -1 : 100 + (index % 7) }),
    );
    const user = shown(documentWithTests(many));
    expect(screen.getAllByRole('listitem')).toHaveLength(101);
    expect(screen.getAllByRole('listitem')[0]).toHaveTextContent(/^test 5 .*Left out/);
    expect(screen.getByText(/^29 earlier ones are not shown/)).toBeInTheDocument();
    await user.click(screen.getByRole('button', { name: 'Show them' }));
    expect(screen.getAllByRole('listitem')).toHaveLength(130);
  });
  test('asks for a photo by a press that says what it is of', async () => {
    const user = shown();
    await user.click(screen.getByRole('button', { name: 'Enter test 1' }));
    expect(screen.getByLabelText('Photo of the coupon Take or choose one')).toHaveAttribute('type', 'file');
  });
  test('leaves the focus where it is when an edit is undone', async () => {
    const user = shown();
    await user.click(screen.getByRole('button', { name: 'Enter test 1' }));
    await typed(user, /^Reading/, '38');
    const undo = screen.getByRole('button', { name: 'undo' });
    await user.click(undo);
    expect(theTest(0).value).toBe(0);
    expect(undo).toHaveFocus();
    await user.click(screen.getByRole('button', { name: 'Close test 1' }));
    await user.click(screen.getByRole('button', { name: 'Edit test 1' }));
    expect(screen.getByLabelText(/^Reading/)).toHaveFocus();
  });
  test('takes a test out, and gives its number to nobody while a higher one is there', async () => {
    const user = shown();
    await user.click(screen.getByRole('button', { name: 'Enter test 1' }));
    await user.click(screen.getByRole('button', { name: 'Enter test 2' }));
    await user.click(screen.getByRole('button', { name: 'Take out test 1' }));
    expect(seen.tests.map(({ id }) => id)).toEqual(['test-2']);
    expect(screen.getByRole('button', { name: 'Enter test 3' })).toBeInTheDocument();
  });
});

describe('the edits of the log', () => {
  const later = { ...SENSOR_LID, tests: [] };
  test('count on from the highest number', () => {
    const first = withNextTest(later, { insert: 'tall-five', date: '2026-03-09' });
    expect(first.id).toBe('test-1');
    expect(nextNumber(first.edit.value as TestRecord[])).toBe(2);
  });
  test('leave the other tests as they were', () => {
    const one = withNextTest(later, { insert: 'tall-five', date: '2026-03-09' }).edit.value as TestRecord[];
    const two = withNextTest({ ...later, tests: one }, { insert: 'slim-long', date: '2026-03-10' }).edit
      .value as TestRecord[];
    expect(two).toHaveLength(2);
    expect(two[1]).toMatchObject({ insert: 'tall-five', date: '2026-03-10' });
    expect(withoutTest({ ...later, tests: two }, 'test-2').value).toEqual(one);
  });
});
