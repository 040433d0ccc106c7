import { tryFields, type KeptPick } from '../try/index.js';

/** The radio buttons of a page. */
export interface Places {
  /** What the page's buttons say against what it was made with: picked before anything listened. */
  readonly picked: () => readonly { readonly selection: string; readonly option: string | null }[];
  /** Sets the buttons to what is picked. */
  readonly show: (picks: readonly KeptPick[]) => void;
  readonly listen: (pick: (selection: string, option: string | null) => void) => void;
}

export function placesIn(page: ParentNode): Places {
  const groups = Array.from(page.querySelectorAll<HTMLElement>(`[${tryFields.place}]`), (group) => ({
    selection: group.getAttribute(tryFields.place) ?? '',
    radios: Array.from(group.querySelectorAll<HTMLInputElement>('input[type=radio]')),
  }));
  return {
    picked: () =>
      groups.flatMap(({ selection, radios }) =>
        radios
          .filter(({ checked, defaultChecked }) => checked && !defaultChecked)
          .map(({ value }) => ({ selection, option: optionOf(value) })),
      ),
    show: (picks) => {
      const options = new Map(picks.map(({ selection, now }) => [selection, now]));
      for (const { selection, radios } of groups) {
        const option = options.get(selection);
        for (const radio of radios)
          radio.checked = option === undefined ? radio.defaultChecked : optionOf(radio.value) === option;
      }
    },
    listen: (pick) => {
      for (const { selection, radios } of groups)
        for (const radio of radios) radio.addEventListener('change', () => pick(selection, optionOf(radio.value)));
    },
  };
}

/** The value of a button: empty where nothing is chosen. */
function optionOf(value: string): string | null {
  return value === '' ? null : value;
}
