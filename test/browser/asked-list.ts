import type { Locator, Page } from 'playwright-core';

/** A table above which one can ask for some of its rows, and whose heads put them in order. */
export interface AskedList {
  /** Rows that are shown, in their order, by what stands in one of their columns. */
  readonly shown: (column: number) => Promise<string[]>;
  readonly words: Locator;
  readonly head: (name: string) => Locator;
  readonly order: (name: string) => Promise<string | null>;
}

export function askedList(page: Page, id: string): AskedList {
  const table = page.locator(`#${id}`);
  const head = (name: string): Locator => table.getByRole('columnheader', { name, exact: true });
  return {
    shown: (column) =>
      table
        .locator('tbody tr:not(.group)')
        .evaluateAll(
          (rows, at) =>
            (rows as HTMLTableRowElement[])
              .filter((row) => row.checkVisibility())
              .map((row) => row.cells[at]?.textContent?.trim() ?? ''),
          column,
        ),
    words: page.locator(`.list-tools:has(+ .scroll > #${id})`).getByRole('searchbox', { name: 'Only rows with' }),
    head: (name) => head(name).getByRole('button'),
    order: (name) => head(name).getAttribute('aria-sort'),
  };
}

/** `−$1,235.05` as a number; 0 where there is none. */
export const amountIn = (text: string): number => {
  const size = Number.parseFloat(text.replace(/[^0-9.]/gu, ''));
  return Number.isNaN(size) ? 0 : text.includes('−') ? -size : size;
};
