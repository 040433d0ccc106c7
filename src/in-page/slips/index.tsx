import { render } from 'preact';
import type { IsoDate } from '../../base/units/index.js';
import { tryFields } from '../../try/index.js';
import type { Trial } from '../trying.js';
import { slipStore } from './kept-slips.js';
import { startLaying } from './laying.js';
import { mostLetters } from './read-slip.js';
import { Slips } from './slips.js';

/** Lets slips be laid down on the page that has a place for them; answers what shows them again when what is tried has changed. */
export function startSlips(page: Document, trial: Trial, today: IsoDate): () => void {
  const root = page.getElementById(tryFields.slips);
  const text = page.getElementById(tryFields.slipText);
  const files = page.getElementById(tryFields.slipFiles);
  const button = page.getElementById(tryFields.slipRead);
  const said = page.getElementById(tryFields.slipSaid);
  if (!root || !(text instanceof HTMLTextAreaElement) || !(files instanceof HTMLInputElement)) return () => undefined;

  const say = (words: string): void => {
    if (!said) return;
    said.textContent = words;
    // Who works by the keyboard goes on from there where what was pressed has gone.
    if (page.activeElement === page.body) said.focus({ preventScroll: true });
  };
  const show = (): void => render(<Slips trial={trial} laying={laying} today={today} say={say} />, root);
  const laying = startLaying(trial, slipStore(trial.house.records.house), today, show);

  const readText = (): void => {
    const { isLaid, words } = laying.lay(text.value);
    say(words);
    text.setAttribute('aria-invalid', String(!isLaid));
    if (isLaid) text.value = '';
  };
  const readFiles = async (): Promise<void> => {
    const words: string[] = [];
    for (const file of Array.from(files.files ?? [])) {
      // What is longer is refused by the same words as a text is.
      const own = await file
        .slice(0, mostLetters + 1)
        .text()
        .catch(() => '');
      words.push(`${file.name}: ${laying.lay(own).words}`);
    }
    files.value = '';
    if (words.length > 0) say(words.join(' '));
  };
  button?.addEventListener('click', readText);
  files.addEventListener('change', () => void readFiles());
  show();
  // What was pressed while this was read.
  if (root.dataset['pressed'] === 'read') readText();
  void readFiles();
  return show;
}
