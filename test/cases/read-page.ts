import { readdirSync } from 'node:fs';

export const here = import.meta.dirname;

/** Every page of cases, by its path in this folder. */
export const pages = readdirSync(here, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.md') && !path.startsWith('small-house/') && !path.endsWith('README.md'))
  .sort();

/** One block of a case, done in the order of the page. */
export type Step =
  /** ```` ```md PATH ````: a file; `-PATH` takes it away; `PATH edit` has lines led by - become those led by +. */
  | { readonly does: 'write'; readonly target: string; readonly text: string }
  /** ```` ```sh ````: done by a shell in the house folder, for what is no text: links, git. */
  | { readonly does: 'shell'; readonly script: string }
  /** ```` ```console ````: a command after `$`, and what it prints. */
  | { readonly does: 'run'; readonly line: string; readonly output: string };

export interface Case {
  readonly title: string;
  readonly steps: readonly Step[];
  /** The text with each command's output replaced. */
  rewrite(outputs: readonly string[]): string;
}

/** A page is split at its heads of the second and third order; each is a case that begins with the small house as it is. */
export function readPage(text: string): { readonly head: string; readonly cases: readonly Case[] } {
  const [head = '', ...sections] = text.split(/^(?=###? )/m);
  return { head, cases: sections.map(readCase) };
}

function readCase(section: string): Case {
  const title = (section.split('\n')[0] ?? '').replace(/^#+ /, '');
  const steps = [...section.matchAll(/^```(\S+)(?: (.*))?\n([\s\S]*?)^```$/gm)].map(
    ([, language, target = '', text = '']): Step => {
      if (language === 'sh') return { does: 'shell', script: text };
      if (language !== 'console') return { does: 'write', target, text };
      const [first = '', ...rest] = text.split('\n');
      return { does: 'run', line: first.replace(/^\$ bookmatch /, ''), output: rest.join('\n') };
    },
  );
  const rewrite = (outputs: readonly string[]): string => {
    let index = 0;
    return section.replace(
      /^```console\n(\$ .*)\n[\s\S]*?^```$/gm,
      (_, line: string) => `\`\`\`console\n${line}\n${outputs[index++] ?? ''}\`\`\``,
    );
  };
  return { title, steps, rewrite };
}
