import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** In which colors a page is looked at. */
export const looks = ['light', 'dark'] as const;
type Look = (typeof looks)[number];

/** Rules asked in dark, where the page is the same but for its colors; in light all are. */
const ofColor = ['color-contrast', 'link-in-text-block'];

interface Runner {
  configure(spec: { rules: readonly { id: string; selector: string }[] }): void;
  run(options: {
    runOnly?: readonly string[];
    resultTypes: readonly string[];
    preload: boolean;
  }): Promise<{ violations: { id: string; nodes: { html: string; failureSummary?: string }[] }[] }>;
}

/** What is wrong by look, one line a rule, with the first element it is wrong on. */
export type Violations = Record<Look, string[]>;

/** What axe finds wrong on the page that is open; ends in light. What is folded is opened first. */
export async function axeViolations(page: Page): Promise<Violations> {
  await page.evaluate(() => document.querySelectorAll('details').forEach((element) => (element.open = true)));
  await page.evaluate(axe);
  const ask = async (look: Look): Promise<string[]> => {
    await page.emulateMedia({ colorScheme: look });
    await page.evaluate(markContrast);
    return page.evaluate(askAxe, look === 'dark' ? ofColor : undefined);
  };
  return { dark: await ask('dark'), light: await ask('light') };
}

/** The same of several pages, each line with the page's name. */
export async function violationsOn(
  page: Page,
  names: readonly string[],
  urlOf: (name: string) => string,
): Promise<Violations> {
  const all: Violations = { light: [], dark: [] };
  for (const name of names) {
    await page.goto(urlOf(name));
    const found = await axeViolations(page);
    for (const look of looks) all[look].push(...found[look].map((violation) => `${name} ${violation}`));
  }
  return all;
}

/** Runs in the page. */
async function askAxe(only: readonly string[] | undefined): Promise<string[]> {
  const { axe: runner } = window as unknown as { axe: Runner };
  runner.configure({ rules: [{ id: 'color-contrast', selector: '[data-contrast]' }] });
  // Style sheets and sounds are not read anew, which a page from a disk may not: for a rule that is not asked, and one of sounds.
  const options = { resultTypes: ['violations'], preload: false, ...(only && { runOnly: only }) };
  const { violations } = await runner.run(options);
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 200) ?? ''} ${nodes[0]?.failureSummary ?? ''}`,
  );
}

/** Runs in the page: marks the elements whose contrast is asked, which takes most of axe's time. A table's cells are many and look
 *  alike: of those that stand in elements of the same names and classes, on the same computed backgrounds, in the same
 *  computed letters, three are asked. Contrast follows from nothing else, but where boxes lie over each other; one letter alone
 *  axe does not judge, so it stands for no others. */
function markContrast(): void {
  const numbers = new Map<string, number>();
  const numberOf = (words: readonly unknown[]): number => {
    const text = words.join('\n');
    const known = numbers.get(text) ?? numbers.size;
    numbers.set(text, known);
    return known;
  };
  const grounds = new Map<Element, number>();
  const groundOf = (element: Element): number => {
    const known = grounds.get(element);
    if (known !== undefined) return known;
    const above = element.parentElement ? groundOf(element.parentElement) : '';
    const names = [element.localName, element.getAttribute('class'), element.matches('[disabled], [aria-disabled]')];
    const { backgroundColor, backgroundImage, opacity, position, filter, mixBlendMode } = getComputedStyle(element);
    const ground = numberOf([
      above,
      ...names,
      backgroundColor,
      backgroundImage,
      opacity,
      position,
      filter,
      mixBlendMode,
    ]);
    grounds.set(element, ground);
    return ground;
  };
  const times = new Map<number, number>();
  for (const element of Array.from(document.body.querySelectorAll('*'))) {
    element.removeAttribute('data-contrast');
    const text = Array.from(element.childNodes, (node) => (node instanceof Text ? node.data.trim() : '')).join('');
    if (text === '' && !element.matches('input, select, textarea')) continue;
    if (!element.checkVisibility()) continue;
    const { color, fill, fontSize, fontWeight, textShadow } = getComputedStyle(element);
    const look = numberOf([groundOf(element), color, fill, fontSize, fontWeight, textShadow, [...text].length === 1]);
    const before = times.get(look) ?? 0;
    times.set(look, before + 1);
    if (before < 3) element.setAttribute('data-contrast', '');
  }
}
