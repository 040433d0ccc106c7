import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Which rules to ask in which colors: in dark the page is the same but for its colors, and all else was asked in light. */
export const looks = [
  { colorScheme: 'light', rules: undefined },
  { colorScheme: 'dark', rules: ['color-contrast', 'link-in-text-block'] },
] as const;

interface Runner {
  run(options: {
    runOnly?: readonly string[];
  }): Promise<{ violations: { id: string; nodes: { html: string; failureSummary?: string }[] }[] }>;
}

/** What axe finds wrong on a page, one line a rule, with the first element it is wrong on; by all its rules, or by those
 *  named. What is folded is opened first. */
export async function axeViolations(page: Page, rules?: readonly string[]): Promise<string[]> {
  await page.evaluate(() => document.querySelectorAll('details').forEach((element) => (element.open = true)));
  await page.evaluate(axe);
  return page.evaluate(async (only) => {
    const { axe: runner } = window as unknown as { axe: Runner };
    return (await runner.run(only ? { runOnly: only } : {})).violations.map(
      ({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 200) ?? ''} ${nodes[0]?.failureSummary ?? ''}`,
    );
  }, rules);
}
