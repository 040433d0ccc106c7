import type { VNode } from 'preact';
import { deskPaths, deskTitles } from './paths.js';

/** Words of a command as the desk shows them. Records that are named lead to their text, papers to themselves, and a command that could be
 *  typed to the page whose form runs it. Words are set into pages of every folder: the way begins at the desk's own root. */
export function Linked({ words }: { words: string }): VNode {
  const parts: (string | VNode)[] = [];
  let end = 0;
  for (const found of words.matchAll(linking)) {
    const [text, record, paper, command] = found;
    const page = command === undefined ? undefined : pageOf[command];
    const link =
      record !== undefined ? (
        <a href={`/${deskPaths.record}?path=${encodeURIComponent(record)}`}>{record}</a>
      ) : paper !== undefined ? (
        <a href={`/${paper}`}>{paper}</a>
      ) : page === undefined ? (
        text
      ) : (
        <a href={`/${deskPaths[page]}`}>{deskTitles[page]}</a>
      );
    parts.push(words.slice(end, found.index), link);
    end = found.index + text.length;
  }
  return (
    <>
      {parts}
      {words.slice(end)}
    </>
  );
}

/** A record, a paper, or a command with what is typed behind it: flags, versions, numbers, words in quotes. */
const linking =
  /\b(content\/[\w./-]+\.md)\b|\b(issued\/[\w.-]+\.pdf)\b|\bbookmatch ([a-z-]+)(?: (?:--[a-z-]+|"[^"]*"|issue-\d+|HEAD|[0-9a-f]{10}|\d+|…))*/gu;

/** Which page of the desk does what a command does. */
const pageOf: Readonly<Record<string, keyof typeof deskTitles>> = {
  check: 'home',
  new: 'add',
  choose: 'slip',
  compare: 'agree',
  approve: 'agree',
  decline: 'agree',
  void: 'agree',
  issue: 'agree',
  'print-change': 'agree',
};
