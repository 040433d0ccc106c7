import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import process from 'node:process';
import { createInterface } from 'node:readline';

/** Milliseconds of what somebody does at a desk, each time to the page that shows it: medians. */
export interface DeskTimes {
  /** A record's text saved, to the page of its room. */
  readonly save: number;
  /** A record saved in an editor, to the page of its room, which the desk tells to load itself again. */
  readonly edited: number;
  /** A choice made, to the page of that choice. */
  readonly choice: number;
  /** A page shown while nothing changes. */
  readonly page: number;
}

interface Visit {
  readonly get: (path: string) => Promise<string>;
  readonly send: (form: URLSearchParams) => Promise<void>;
  /** Hears that the records changed: each answer is the next time. */
  readonly hear: () => Promise<() => Promise<void>>;
}

/** Works at the desk of a house, served by the built program: `times` of each. */
export async function timeDesk(house: string, day: string, record: string, times: number): Promise<DeskTimes> {
  const desk = spawn(process.execPath, ['dist/bookmatch.js', 'desk', '--house', house, '--on', day], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  try {
    const [address] = (await once(createInterface(desk.stdout), 'line')) as [string];
    const visit = await open(address);
    const room = `/rooms/${record.replace(/^.*\/|\.md$/gu, '')}.html`;
    await visit.get(room);
    const page = await median(times, () => visit.get(room));
    const file = join(house, record);
    const text = await readFile(file, 'utf8');
    const save = await median(times, async (time) => {
      const form = formIn(await visit.get(`/desk/record.html?path=${record}`), 'save');
      form.set('text', `${higher(text, time + 1)}\nSaid at the desk, ${time}.\n`);
      return async () => {
        await visit.send(form);
        if (!(await visit.get(room)).includes(`Said at the desk, ${time}.`)) throw new Error('the page is not right');
      };
    });
    const edited = await timeEdits(visit, { file, room, text, times });
    return { page, save, edited, choice: await timeChoice(visit, times) };
  } finally {
    desk.kill();
  }
}

/** As an editor saves, and as an open page follows. */
async function timeEdits(
  visit: Visit,
  { file, room, text, times }: { file: string; room: string; text: string; times: number },
): Promise<number> {
  const next = await visit.hear();
  return median(times, (time) =>
    Promise.resolve(async () => {
      await writeFile(file, `${higher(text, times + time + 1)}\nSaid in an editor, ${time}.\n`);
      await next();
      if (!(await visit.get(room)).includes(`Said in an editor, ${time}.`)) throw new Error('the page is not right');
    }),
  );
}

/** The ceiling of a room's record made so many quarters of an inch higher: walls, and what covers them, are others then. */
function higher(text: string, quarters: number): string {
  return text.replace(/^ceiling: flat (\d+)'-(\d+)"/mu, (_, feet: string, inches: string) => {
    const all = Number(inches) * 4 + quarters;
    const rest = all % 4 === 0 ? '' : ` ${all % 4}/4`;
    return `ceiling: flat ${Number(feet) + Math.floor(all / 48)}'-${(all % 48) >> 2}${rest}"`;
  });
}

/** Chooses in one open place after the other. */
async function timeChoice(visit: Visit, times: number): Promise<number> {
  const places = [...new Set((await visit.get('/desk/index.html')).match(/choices\/[^"]+\.html/gu))];
  return median(times, async (time) => {
    const place = places[time] ?? '';
    const html = await visit.get(`/${place}`);
    const form = formIn(html, 'choose/');
    const options = [...html.matchAll(/name="option" value="([^"]+)"/gu)].flatMap(([, slug = '']) =>
      slug === 'open' || slug === 'none' ? [] : [slug],
    );
    form.set('option', options.at(-1) ?? '');
    form.set('by', 'owner');
    return async () => {
      await visit.send(form);
      if (!(await visit.get(`/${place}`)).includes('Written:')) throw new Error('it was not chosen');
    };
  });
}

/** The hidden fields of a page's form. */
function formIn(html: string, ask: string): URLSearchParams {
  const form = html.split('<form').find((one) => one.includes(`name="ask" value="${ask}`)) ?? '';
  const fields = [...form.matchAll(/<input type="hidden" name="([^"]+)" value="([^"]*)"/gu)];
  return new URLSearchParams(fields.map(([, name = '', value = '']) => [name, value]));
}

async function open(address: string): Promise<Visit> {
  const { origin } = new URL(address);
  const opened = await fetch(address, { redirect: 'manual' });
  const [cookie = ''] = (opened.headers.get('set-cookie') ?? '').split(';');
  const ask = (path: string, more: RequestInit = {}): Promise<Response> =>
    fetch(`${origin}${path}`, { redirect: 'manual', ...more, headers: { cookie, origin } });
  return {
    hear: async () => {
      const { body } = await ask('/desk/changes');
      const reader = body?.getReader();
      const next = async (): Promise<void> => void (await reader?.read());
      // The first tells what stands now.
      await next();
      return next;
    },
    get: async (path) => (await ask(path)).text(),
    send: async (form) => {
      const { status } = await ask('/desk/do', { method: 'POST', body: form });
      if (status !== 303) throw new Error(`the desk answered ${status}`);
    },
  };
}

/** `prepare` may answer what alone is timed. */
async function median(
  times: number,
  prepare: (time: number) => Promise<string | (() => Promise<void>)>,
): Promise<number> {
  const all: number[] = [];
  for (let time = 0; time < times; time += 1) {
    const asked = performance.now();
    const act = await prepare(time);
    const started = typeof act === 'string' ? asked : performance.now();
    if (typeof act !== 'string') await act();
    all.push(performance.now() - started);
  }
  return all.sort((a, b) => a - b)[times >> 1] ?? NaN;
}
