import { render } from 'preact';
import { speakAs, type IsoDate } from '../base/units/index.js';
import { tryFields, unpackHouse, type PackedHouse, type Pick } from '../try/index.js';
import { Bar } from './bar.js';
import { Follows } from './follows.js';
import { pickStore } from './kept-picks.js';
import { linksHere } from './page-links.js';
import { placesIn } from './places.js';
import { roomPictures } from './room-pictures.js';
import { startSlips } from './slips/index.js';
import { startTrial, type Trying } from './trying.js';

declare global {
  interface Window {
    /** Set by try-data.js. */
    bookmatchHouse?: PackedHouse;
  }
}

const root = document.getElementById(tryFields.root);
if (root && window.bookmatchHouse) start(root, window.bookmatchHouse);

function start(bar: HTMLElement, packed: PackedHouse): void {
  const house = unpackHouse(packed);
  speakAs(house.records.house);
  const [follows, said] = [tryFields.follows, tryFields.said].map((id) => document.getElementById(id));
  const [places, pictures] = [placesIn(document), roomPictures(document)];
  // A desk has a day of its own, which the choices that are written there have too.
  const today = document.getElementById(tryFields.taken) ? house.on : dayNow();
  let showSlips = (): void => undefined;
  const trial = startTrial(house, pickStore(house.records.house), show);
  const links = linksHere(trial.now().from);
  // In the order in which they were made: what was kept, then what was picked while this was read.
  const picked = places.picked();
  bar.replaceChildren();
  show(trial.now());
  for (const { selection, option } of picked) trial.pick(selection, option);
  places.listen(trial.pick);
  const pickSet = (set: string): void => trial.pickSet(JSON.parse(set) as readonly Pick[]);
  // The first press of a set brought this script along.
  if (bar.dataset['trySet'] !== undefined) pickSet(bar.dataset['trySet']);
  document.addEventListener('click', ({ target }) => {
    const pressed = target instanceof Element ? target.closest(`[${tryFields.set}]`) : null;
    if (pressed) pickSet(pressed.getAttribute(tryFields.set) ?? '[]');
  });
  window.addEventListener('storage', trial.refresh);
  window.addEventListener('pageshow', (event) => event.persisted && trial.refresh());
  document.documentElement.classList.add('trying');
  showSlips = startSlips(document, trial, today);

  function show(trying: Trying): void {
    places.show(trying.picks);
    const shown = { trial, trying, today, links, isShownInPage: Boolean(follows) };
    render(<Bar {...shown} />, bar);
    if (said) said.textContent = trying.follows?.summary ?? '';
    if (follows) render(trying.follows ? <Follows follows={trying.follows} links={links} /> : null, follows);
    showSlips();
    const selections = new Map(trying.to.selections.map(({ id, room }) => [id, room]));
    const rooms = new Set(trying.picks.flatMap(({ selection }) => selections.get(selection) ?? []));
    // Figures first: a picture takes longer than they do.
    setTimeout(() => trial.now() === trying && pictures(trying.to, rooms));
  }
}

/** The day in the reader's calendar. */
function dayNow(): IsoDate {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
