import type { Browser, Page } from 'playwright-core';
import type { OpenDesk } from '../../src/cli/desk.js';
import { quietDesk, smallHouse } from '../desk/small-house.js';
import { openBrowser } from './open-browser.js';

/** A desk at a small house of its own, and a page of a browser that is not opened at it yet. */
export async function deskInBrowser(): Promise<{ dir: string; desk: OpenDesk; browser: Browser; page: Page }> {
  const dir = await smallHouse();
  const [desk, browser] = await Promise.all([quietDesk(dir), openBrowser()]);
  return { dir, desk, browser, page: await (await browser.newContext()).newPage() };
}
