import type { LookUp } from '../../book/index.js';
import { findingWords } from '../../scope/index.js';

/** What nobody or two do: gaps and overlaps to settle before work starts. */
export interface ScopeSheet {
  readonly findings: readonly ScopeLine[];
}

export interface ScopeLine {
  readonly kind: string;
  readonly room: string;
  readonly what: string;
  readonly fix: string;
  readonly record: string;
}

export function makeScope(look: LookUp): ScopeSheet {
  return {
    findings: look.book.scope.findings.map(({ kind, room, what, fix, source, line }) => ({
      kind: findingWords[kind],
      room: look.roomTitle(room),
      what,
      fix,
      record: `${source}, line ${line}`,
    })),
  };
}
