import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe finds wrong on a page, one line a rule, with the first element it is wrong on. */
export async function axeViolations(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { axe: runner } = window as unknown as {
      axe: {
        run(): Promise<{ violations: { id: string; nodes: { html: string; failureSummary?: string }[] }[] }>;
      };
    };
    return (await runner.run()).violations.map(
      ({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 200) ?? ''} ${nodes[0]?.failureSummary ?? ''}`,
    );
  });
}
