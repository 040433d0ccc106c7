import { render, type VNode } from 'preact';
import { drawCode } from '../base/svg/index.js';
import type { Slip } from '../slip/index.js';
import { slipCodes, type SlipCode } from './slip-codes.js';

/** The slip alone on paper: its text, and codes for a camera. */
export function printSlip(slip: Slip, text: string): void {
  const paper = document.createElement('div');
  paper.className = 'try-paper';
  document.body.append(paper);
  render(<Paper codes={slipCodes(slip)} text={text} />, paper);
  document.documentElement.classList.add('try-printing');
  const done = (): void => {
    document.documentElement.classList.remove('try-printing');
    paper.remove();
  };
  window.addEventListener('afterprint', done, { once: true });
  window.print();
}

function Paper({ codes, text }: { codes: readonly SlipCode[]; text: string }): VNode {
  return (
    <>
      <pre>{text}</pre>
      <div class="try-codes">
        {codes.map(({ label, line }) => (
          <figure>
            <Code line={line} />
            <figcaption>{label}</figcaption>
          </figure>
        ))}
      </div>
      <p>Each code is a slip by itself, to be read by a camera; together they say what the lines above say.</p>
    </>
  );
}

function Code({ line }: { line: string }): VNode {
  return <div role="img" aria-label="Code of the slip" dangerouslySetInnerHTML={{ __html: drawCode(line).svg }} />;
}
