import type { Page } from 'playwright-core';

/** What of the open page scrolls sideways, with all that is folded opened: the page itself, or regions by their label. */
export function scrollingSideways(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    document.querySelectorAll('details').forEach((one) => (one.open = true));
    document.querySelectorAll<HTMLInputElement>('.row-opener').forEach((one) => (one.checked = true));
    const all = [document.documentElement, ...Array.from(document.querySelectorAll<HTMLElement>('.scroll'))];
    return all
      .filter((one) => one.scrollWidth > one.clientWidth && getComputedStyle(one).overflowX !== 'hidden')
      .map((one) => one.getAttribute('aria-labelledby') ?? one.localName);
  });
}
