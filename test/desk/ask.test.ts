import { expect, it } from 'vitest';
import type { BookIssue } from '../../src/core/book/index.js';
import { asksToAgree } from '../../src/desk/ask-agree.js';
import { wordsOf, type Field } from '../../src/desk/ask.js';
import { agreePage } from '../../src/desk/form-pages.js';
import { homePage } from '../../src/desk/home-page.js';
import { saidHtml } from '../../src/desk/said.js';
import { sincePage } from '../../src/desk/since-page.js';
import { newStart } from '../../src/desk/start.js';
import { makeView } from '../../src/site/index.js';
import { fixtureBook } from '../site/fixture.js';

const fields: readonly Field[] = [
  { name: 'contact', label: '', as: '--contact', kind: 'line' },
  { name: 'name', label: '', as: 'word', kind: 'line' },
  { name: 'set', label: '', as: '--set', kind: 'lines' },
];
const wordsFor = (given: Readonly<Record<string, string>>): readonly string[] =>
  wordsOf({ command: ['new', 'trade'], fields }, new URLSearchParams(given));

it('takes nothing that is typed for a flag, a field of another form, or two words', () => {
  expect(wordsFor({ contact: '--house=/', name: '--out /tmp', house: '/elsewhere' })).toEqual([
    'new',
    'trade',
    '--contact=--house=/',
    '--',
    '--out /tmp',
  ]);
  expect(wordsFor({ set: 'a=1\r\n\r\n --b=2 ', name: 'two\r\nlines' })).toEqual([
    'new',
    'trade',
    '--set=a=1',
    '--set=--b=2',
    '--',
    'two lines',
  ]);
  expect(wordsFor({ name: '  ' })).toEqual(['new', 'trade']);
});

const issue: BookIssue = {
  ...{ number: 2, date: '2026-04-01', purpose: 'sign-off', commit: '', digest: '', rooms: {}, trades: {} },
  ...{ signatures: [], body: '', source: 'content/issues/002.md' },
};
const view = makeView({ ...fixtureBook, issues: [issue] });

it('drafts a change order from the last issue to what is recorded, and leads to where its lines stand', () => {
  const draft = asksToAgree(view).find(({ id }) => id === 'draft-change-order');
  const picked = draft?.fields.filter(({ kind }) => kind === 'picked').map(({ as, value }) => [as, value]);
  expect([draft?.command, picked]).toEqual([
    ['compare', '--draft'],
    [
      ['word', 'issue-2'],
      ['word', 'HEAD'],
    ],
  ]);
  const said = { isDone: true, words: 'content/change-orders/001.md', ...(draft?.shown && { shown: draft.shown }) };
  expect(saidHtml(said, { secret: '', back: '' })).toContain('<a href="/agreed.html">Issues and change orders');
  const standing = { ...{ number: 1, on: '2026-04-20', sources: [], problems: [], isEarlier: false }, view };
  const context = { standing: { ...standing, handouts: () => [], file: () => undefined }, start: newStart('/', '') };
  expect(agreePage(context, { difference: undefined, papers: [] })).toContain('<a href="../agreed.html">Issues and');
  expect(homePage(context)).toContain('<a href="since.html">What changed since issue 2</a>');
  expect(sincePage(context, undefined)).toContain('What changed since issue 2</h1>');
});
