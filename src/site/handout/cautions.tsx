import type { VNode } from 'preact';
import { cautionWords } from '../../core/caution/index.js';
import type { HandoutCaution } from '../../handout/index.js';

/** What was seen and whom to ask; what the source says of it is folded. `where`: named where the page is not of one room. */
export function Caution({ caution, where }: { caution: HandoutCaution; where: string }): VNode {
  const { title, seen, says, source, ask, accepted } = caution;
  return (
    <div class="caution">
      <h3>
        {title}: {where}
      </h3>
      <p>{seen}</p>
      <p>
        <strong>
          {cautionWords.ask} {ask}.
        </strong>
      </p>
      {accepted !== '' && <p class="why">{accepted}</p>}
      <details>
        <summary>What the source says</summary>
        <p>
          {says} <span class="why">{source}.</span>
        </p>
      </details>
    </div>
  );
}
