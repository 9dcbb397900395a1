import type { CellValue } from '../../base/value.ts';
import type { WorkedCall } from '../../session/explanation.ts';
import type { Shown } from '../../workbook/show.ts';
import { CallCautions } from './call-cautions.tsx';
import { CallGiven } from './call-given.tsx';
import { CallSources } from './call-sources.tsx';
import { CallSteps } from './call-steps.tsx';
import { DrawingPicture } from './drawing-picture.tsx';
import './worked-calls.css';

/** So many steps in all, and none is folded away. */
const fewSteps = 5;

/** The trade functions of a formula, worked through: the last, which gives the value, in full; those inside it folded. */
export function WorkedCalls({
  calls,
  shown,
  value,
  told,
}: {
  readonly calls: readonly WorkedCall[];
  readonly shown: Shown;
  readonly value: CellValue;
  /** The fault sentence that stands above already. */
  readonly told: string | null;
}) {
  const last = calls.at(-1);
  if (!last) return null;
  const inner = calls.slice(0, -1);
  const isShort = calls.reduce((count, call) => count + call.steps.length, 0) <= fewSteps;
  const cautions = calls.flatMap((call) => call.cautions);
  return (
    <>
      {inner.map((call, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: calls keep their order, and two can be alike
        <details className="worked-call worked-call-inner" key={index} open={isShort}>
          <summary>
            <span className="worked-call-first">First</span> <CallName call={call} />
          </summary>
          <CallWorking call={call} told={told} />
        </details>
      ))}
      <section className="worked-call" aria-label={last.name}>
        <p className="worked-call-says">{last.says}</p>
        <CallWorking call={last} told={told} result={{ shown, value }}>
          <CallCautions cautions={cautions} />
        </CallWorking>
      </section>
    </>
  );
}

function CallName({ call }: { readonly call: WorkedCall }) {
  return (
    <>
      <code className="worked-call-name">{call.name}</code>{' '}
      <span className="worked-call-says">{call.says}</span>
    </>
  );
}

function CallWorking({
  call,
  told,
  result,
  children,
}: {
  readonly call: WorkedCall;
  readonly told: string | null;
  readonly result?: { readonly shown: Shown; readonly value: CellValue };
  readonly children?: React.ReactNode;
}) {
  const { fault } = call;
  return (
    <>
      {call.drawing ? <DrawingPicture drawing={call.drawing} /> : null}
      <CallSteps steps={call.steps} sources={call.sources} {...(result ? { result } : {})} />
      {fault && fault.sentence !== told ? <p className="worked-call-fault">{fault.sentence}</p> : null}
      {children}
      <CallGiven name={call.name} given={call.given} />
      <CallSources sources={call.sources} />
    </>
  );
}
