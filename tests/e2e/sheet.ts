import { expect as briefly, type Locator, type Page } from '@playwright/test';

/** How long a state may take to come before a test gives up: long, for machines that do other work besides. */
export const expect = briefly.configure({ timeout: 20_000 });
export const PATIENCE = { timeout: 120_000 } as const;

/** The questions of the sheet that every joint answers at the top. */
export const QUESTIONS = [
  'Which insert?',
  'What hole?',
  'How tight?',
  'Will it hold?',
  'What did my tests say?',
] as const;
/** Those that are answered with a number where no test has been entered. */
export const NUMBERED = QUESTIONS.slice(0, 4);
export type Question = (typeof QUESTIONS)[number];

/** The demonstration joints, the one of the first visit first. */
export const DEMOS = [
  'Sensor lid',
  'Camera bracket',
  'Motor plate',
  'Far-side mount',
  'Parts box',
  'Meter cover',
  'Loom clamp',
] as const;
export type Demo = (typeof DEMOS)[number];

/** Opens the page and waits until all of it stands there: the foot comes last. */
export async function openPage(page: Page): Promise<void> {
  await page.goto('./');
  await expectWholeSheet(page);
}

export async function expectWholeSheet(page: Page): Promise<void> {
  await expect(page.getByRole('contentinfo')).toBeVisible();
}

export const jointName = (page: Page): Locator => page.getByRole('heading', { level: 1 });

/** Presses a name in the list of other joints. */
export async function chooseJoint(page: Page, press: string, name: string = press): Promise<void> {
  await page.getByRole('banner').getByRole('button', { name: press, exact: true }).click();
  await expect(jointName(page)).toHaveText(new RegExp(`^${name}`));
}

/** Opens the page with one of the demonstration joints on it. */
export async function openDemo(page: Page, demo: Demo): Promise<void> {
  await openPage(page);
  if (demo !== DEMOS[0]) await chooseJoint(page, demo);
}

export const answers = (page: Page): Locator =>
  page.getByRole('navigation', { name: 'Questions and answers' });

/** One question at the top with its answer. */
export const answerTo = (page: Page, question: Question): Locator =>
  answers(page)
    .getByRole('listitem')
    .filter({ has: page.getByRole('link', { name: question }) });

/** The text of an answer on one line, its hard blanks as common ones. */
export async function answerText(page: Page, question: Question): Promise<string> {
  return (await answerTo(page, question).innerText()).replace(/\s+/g, ' ');
}

/** The number that an answer gives under this name, in the unit it names there. */
export function numberIn(label: string, name: string, unit: string): number {
  const found = new RegExp(`${name}\\D*?(\\d[\\d,.]*)\\s${unit}`).exec(label);
  expect(found, `${name} with a number in ${unit}, in “${label}”`).not.toBeNull();
  return Number(found?.[1]?.replaceAll(',', ''));
}

async function labelOf(value: Locator): Promise<string> {
  return (await value.getAttribute('aria-label')) ?? '';
}

/** The computed value of an answer, by what it says before its number. */
export const computedValue = (page: Page, question: Question, name: string | RegExp): Locator =>
  answerTo(page, question).getByRole('button', { name });

/** Diameter of the hole to draw, mm. */
export async function holeToDraw(page: Page): Promise<number> {
  return numberIn(await labelOf(computedValue(page, 'What hole?', /^Hole to draw/)), 'Hole to draw', 'mm');
}

/** Torque to dial, N·m. */
export async function torqueToDial(page: Page): Promise<number> {
  return numberIn(
    await labelOf(computedValue(page, 'How tight?', /^Torque to dial/)),
    'Torque to dial',
    'N·m',
  );
}

/** The two ends where no torque fits: closed from, and at its limit at, N·m. */
export async function endsOfNoTorque(page: Page): Promise<{ closed: number; limit: number }> {
  const closed = await labelOf(computedValue(page, 'How tight?', /^Least torque,/));
  const limit = await labelOf(computedValue(page, 'How tight?', /^Largest torque,/));
  return {
    closed: numberIn(closed, 'Least torque', 'N·m'),
    limit: numberIn(limit, 'Largest torque', 'N·m'),
  };
}

/** A field of the insert on the sheet that takes several readings. */
export const readings = (page: Page, label: string): Locator =>
  page
    .getByRole('complementary', { name: 'The insert, as measured' })
    .getByRole('textbox', { name: label, exact: true });

/** A field of the lists, not the one on the drawing, which has its unit in its name. */
export const field = (page: Page, label: string): Locator =>
  page.getByRole('main').getByRole('textbox', { name: label, exact: true });

export const choice = (page: Page, label: string): Locator =>
  page.getByRole('combobox', { name: label, exact: true });

/** Types into a field as a person does who then presses Enter. */
export async function type(into: Locator, text: string): Promise<void> {
  await into.fill(text);
  await into.press('Enter');
}

/** The message that stands at a field and is tied to it. */
export async function messageAt(page: Page, of: Locator): Promise<Locator> {
  await expect(of).toHaveAttribute('aria-invalid', 'true');
  const ids = (await of.getAttribute('aria-describedby'))?.split(' ') ?? [];
  return page.locator(ids.map((id) => `[id="${id}"]`).join(', ')).filter({ hasText: 'Not taken.' });
}

/** Expects a field to say that its text is not taken, and why. */
export async function expectNotTaken(page: Page, of: Locator, why: string | RegExp): Promise<void> {
  const message = await messageAt(page, of);
  await expect(message).toHaveCount(1);
  await expect(message).toBeVisible();
  await expect(message).toContainText(why);
}

/** Presses a computed value and gives the derivation itself. */
export async function openDerivation(page: Page, value: Locator): Promise<Locator> {
  const name = (await labelOf(value)).replace(', open derivation', '');
  await value.click();
  const derivation = page.getByRole('region', { name: `Derivation: ${name}`, exact: true });
  await expect(derivation).toBeFocused();
  return derivation;
}

/** The insert whose row of the ranking bears this rank. */
export const rankedRow = (page: Page, rank: number): Locator =>
  page
    .getByRole('table', { name: 'Inserts of the drawer ranked for this joint' })
    .getByRole('row')
    .filter({ has: page.getByRole('cell', { name: String(rank), exact: true }) })
    .filter({ has: page.getByRole('rowheader') });

/** The charts are loaded when the rest stands; they bring their headings with them. */
export async function expectCharts(page: Page): Promise<void> {
  await expect(page.getByRole('heading', { name: 'Knurl pull-out over length' })).toBeVisible();
}
