import { existsSync } from 'node:fs';
import process from 'node:process';
import { chromium, type Browser } from 'playwright-core';

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

/** A browser for tests: the one that CHROMIUM_PATH names, else one in a usual place. Fails with what to install. */
export async function openBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: findBrowser(),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
}

function findBrowser(): string {
  const named = process.env['CHROMIUM_PATH'];
  if (named !== undefined && named !== '') {
    if (existsSync(named)) return named;
    throw new Error(`CHROMIUM_PATH is ${named}, and no file is there.`);
  }
  const found = places.find((place) => existsSync(place));
  if (found) return found;
  throw new Error(
    'The browser tests need Chromium. On Debian and Ubuntu: sudo apt-get install -y chromium. ' +
      'Elsewhere: install Chromium or Chrome and set CHROMIUM_PATH to its program.',
  );
}
