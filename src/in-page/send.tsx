import type { VNode } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import type { IsoDate } from '../base/units/index.js';
import { slipText, slipWords, type Slip } from '../slip/index.js';
import { tryFields } from '../try/index.js';
import { printSlip } from './print-slip.js';
import { snapshotOf } from './snapshot.js';
import type { Trial, Trying } from './trying.js';

interface SendProps {
  readonly trial: Trial;
  readonly trying: Pick<Trying, 'from' | 'to' | 'picks'>;
  readonly today: IsoDate;
  /** Who chooses, and a sentence, to begin with. */
  readonly begin?: { readonly by?: string; readonly note: string };
  /** What the slip says after the sentence: whose slips it was laid together from. */
  readonly origin?: string;
  readonly close: () => void;
}

/** The choices as a slip: who chose, a sentence, the text, and ways to hand it over. */
export function Send({ trial, trying: { from, to, picks }, today, begin, origin = '', close }: SendProps): VNode {
  const people = choosers(trial);
  const [by, setBy] = useState(people.find((name) => name === begin?.by) ?? people[0] ?? '');
  const [note, setNote] = useState(begin?.note ?? '');
  const [said, setSaid] = useState('');
  const dialog = useRef<HTMLDialogElement>(null);
  const area = useRef<HTMLTextAreaElement>(null);
  const id = useId();
  useEffect(() => dialog.current?.showModal(), []);
  const sentence = `${note} ${origin}`.trim().replace(/\s+/gu, ' ');
  const slip: Slip = {
    house: trial.house.records.house.number,
    snapshot: snapshotOf(trial.house),
    by,
    on: today,
    ...(sentence !== '' && { note: sentence }),
    choices: picks,
  };
  const text = slipText(slip, slipWords(from, slip, to));
  const desk = document.getElementById(tryFields.taken);
  const subject = `Choice slip, ${from.house.name}, job ${from.house.number}`;
  return (
    <dialog class="try-send" ref={dialog} onClose={close} aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>Send these choices</h2>
      <p>
        {desk
          ? 'Take the slip in here: it is held against the records, and shown before anything is written. Or copy it into a message.'
          : 'Copy the slip into a message, or hand it over as a file or on paper. The builder takes it in as it is.'}
      </p>
      <div class="try-fields">
        <p>
          <label for={`${id}-by`}>Who chooses</label>
          <select id={`${id}-by`} value={by} onChange={({ currentTarget }) => setBy(currentTarget.value)}>
            {people.map((name) => (
              <option value={name}>{name}</option>
            ))}
          </select>
        </p>
        <p>
          <label for={`${id}-note`}>A sentence to go with them, if you like</label>
          <input
            id={`${id}-note`}
            type="text"
            maxLength={300}
            value={note}
            autocomplete="off"
            onInput={({ currentTarget }) => setNote(currentTarget.value)}
          />
        </p>
      </div>
      {origin !== '' && (
        <p class="why">
          A slip has one person who chooses: whoever is named here. Whose slips it comes from stands in its sentence.
        </p>
      )}
      <div class="try-tools">
        {desk && (
          <button type="button" class="try-tool try-main" onClick={() => takeIn(desk, text)}>
            Take it in here
          </button>
        )}
        <button
          type="button"
          class={desk ? 'try-tool' : 'try-tool try-main'}
          onClick={() => copy(text, area.current, setSaid)}
        >
          Copy
        </button>
        <a class="try-tool" href={fileOf(text)} download={`choice-slip-${slip.house}-${slip.on}.txt`}>
          Save as a file
        </a>
        <a class="try-tool" href={mailTo(trial, subject, text)}>
          Open in a mail
        </a>
        <button type="button" class="try-tool" onClick={() => printSlip(slip, text)}>
          Print
        </button>
        <button type="button" class="try-tool" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <p role="status" class="why">
        {said}
      </p>
      <p class="try-slip-label">
        <label for={`${id}-text`}>The slip</label>
      </p>
      <textarea id={`${id}-text`} class="try-slip" readOnly ref={area} value={text} rows={14} />
    </dialog>
  );
}

/** At the desk a slip is held against the records at once, and written from there. */
function takeIn(desk: HTMLElement, text: string): void {
  if (!(desk instanceof HTMLFormElement)) return;
  const field = desk.elements.namedItem('slip');
  if (field instanceof HTMLInputElement) field.value = text;
  desk.requestSubmit();
}

/** The owners first; then whoever else is named. */
function choosers({ house }: Trial): readonly string[] {
  const { people } = house.records.house;
  const owners = people.filter(({ role }) => role === 'owner');
  return [...owners, ...people.filter(({ role }) => role !== 'owner')].map(({ name }) => name);
}

function fileOf(text: string): string {
  return `data:text/plain;charset=utf-8,${encodeURIComponent(text)}`;
}

/** To the builder, where the records have an address. */
function mailTo({ house }: Trial, subject: string, text: string): string {
  const builder = house.records.house.people.find(({ role }) => role === 'builder');
  const address = builder?.mail ?? /[^\s<>,;]+@[^\s<>,;]+/u.exec(builder?.contact ?? '')?.[0] ?? '';
  return `mailto:${encodeURIComponent(address).replace('%40', '@')}?subject=${encodeURIComponent(subject)}&body=${encodeURIComponent(text.replaceAll('\n', '\r\n'))}`;
}

async function copy(text: string, area: HTMLTextAreaElement | null, say: (words: string) => void): Promise<void> {
  try {
    await navigator.clipboard.writeText(text);
    say('Copied. Paste it into a message to the builder.');
  } catch {
    area?.focus();
    area?.select();
    say('This browser copies nothing by itself: the slip is marked, copy it with the keyboard.');
  }
}
