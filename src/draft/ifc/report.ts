import { counted } from '../../base/units/index.js';
import type { ModelDraft, SpaceReport } from './draft-model.js';

/** The closing report: each space with its record and what is asked, or why it is left out; the levels; the count. */
export function modelReport({ spaces, levels, notes }: ModelDraft): string {
  const left = spaces.filter(({ path }) => path === undefined);
  const asking = spaces.filter(({ path, asks }) => path !== undefined && asks.length > 0);
  const fresh = levels.filter(({ isKnown }) => !isKnown);
  const sections = [
    spaces.map(spaceText).join('\n'),
    ...(notes.length > 0 ? [notes.map((note) => `- ${note}`).join('\n')] : []),
    ...(fresh.length > 0
      ? [`content/house.md needs these levels:\n\nlevels:\n${fresh.map(({ line }) => line).join('\n')}`]
      : []),
    `${counted(spaces.length, 'space')}: ${spaces.length - left.length} drafted, ${asking.length} of them with questions; ${left.length} left out.`,
  ];
  return `${sections.join('\n\n')}\n`;
}

function spaceText({ title, path, asks, why }: SpaceReport): string {
  if (path === undefined) return `${title}  left out: ${why ?? ''}`;
  return [`${title}  ${path}`, ...asks.map((ask) => `  ? ${ask}`)].join('\n');
}
