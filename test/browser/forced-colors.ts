import type { Page } from 'playwright-core';

/** What the open page no longer shows where a system forces its colours on it, dark ones although the reader had chosen light. */
export async function lostInForcedColors(page: Page): Promise<string[]> {
  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
  await page.evaluate(() => (document.documentElement.dataset['theme'] = 'light'));
  const lost = await page.evaluate(() => {
    const root = getComputedStyle(document.documentElement);
    const canvas = root.backgroundColor;
    const ink = root.color;
    const unseen = new Set([canvas, 'none', 'rgba(0, 0, 0, 0)']);
    const all = (selector: string): Element[] =>
      Array.from(document.querySelectorAll(selector)).filter((one) => one.checkVisibility());
    const hasGround = (one: Element): boolean => !unseen.has(getComputedStyle(one).backgroundColor);
    const hasBorder = (one: Element): boolean => parseFloat(getComputedStyle(one).borderTopWidth) > 0;
    const isWrittenOnGround = (one: Element): boolean =>
      getComputedStyle(one).color !== (hasGround(one) ? getComputedStyle(one).backgroundColor : canvas);
    const isDrawn = (one: Element): boolean =>
      Array.from(one.querySelectorAll('*')).some((part) => {
        const { fill, stroke } = getComputedStyle(part);
        return !unseen.has(fill) || !unseen.has(stroke);
      });
    const isInInk = (one: Element): boolean =>
      Array.from(one.querySelectorAll('*')).some((part) => getComputedStyle(part).stroke === ink);
    const isUnderlined = (one: Element): boolean => getComputedStyle(one).textDecorationLine.includes('underline');
    const asked: readonly (readonly [string, (one: Element) => boolean])[] = [
      ['.key-mark', (one) => hasGround(one) || hasBorder(one)],
      [
        '.act, .reach, .try-main, .search button',
        (one) => (hasGround(one) || hasBorder(one)) && isWrittenOnGround(one),
      ],
      ['.shape, .shade svg', isDrawn],
      ['.drawing svg, .key-plan svg', isInInk],
      ['.index a[aria-current], .within a[aria-current]', isUnderlined],
    ];
    return asked.flatMap(([selector, shows]) =>
      all(selector)
        .filter((one) => !shows(one))
        .map((one) => `lost ${selector}: ${one.outerHTML.slice(0, 90)}`),
    );
  });
  await page.emulateMedia({ forcedColors: 'none', colorScheme: 'light' });
  return lost;
}
