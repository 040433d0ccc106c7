import type { VNode } from 'preact';
import { errorsIn, type Problem } from '../base/problem/index.js';
import { counted } from '../base/units/index.js';
import { Linked } from './linked.js';
import { deskPaths } from './paths.js';

export function ProblemList({
  problems,
  link,
}: {
  problems: readonly Problem[];
  link: (to: string) => string;
}): VNode | null {
  if (problems.length === 0) return null;
  const errors = errorsIn(problems);
  const others = problems.filter(({ severity }) => severity !== 'error');
  return (
    <section>
      {errors.length > 0 && (
        <>
          <h2>{counted(errors.length, 'error')}</h2>
          <ProblemLines problems={errors} link={link} />
        </>
      )}
      {others.length > 0 && (
        <details>
          <summary>{counted(others.length, 'more thing')} to look at</summary>
          <ProblemLines problems={others} link={link} />
        </details>
      )}
    </section>
  );
}

export function ProblemLines({
  problems,
  link,
}: {
  problems: readonly Problem[];
  link: (to: string) => string;
}): VNode {
  return (
    <ul class="plain-list">
      {problems.map((problem) => (
        <li>
          <ProblemWords problem={problem} link={link} />
        </li>
      ))}
    </ul>
  );
}

function ProblemWords({ problem, link }: { problem: Problem; link: (to: string) => string }): VNode {
  const { file, at, severity, message, fix } = problem;
  return (
    <>
      <strong>{severity}</strong>{' '}
      <a href={`${link(deskPaths.record)}?path=${encodeURIComponent(file)}#line-${at.line}`}>
        {file}:{at.line}
      </a>{' '}
      <Linked words={message} />
      {fix !== undefined && (
        <span class="desk-fix">
          {' '}
          <Linked words={fix} />
        </span>
      )}
    </>
  );
}
