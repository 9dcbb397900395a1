import type { CellAddress } from '../../base/address.ts';
import type { Explanation } from '../../session/explanation.ts';
import type { Workbook } from '../../workbook/document.ts';
import { FaultBox } from './fault-box.tsx';
import { TapeFigure } from './tape-figure.tsx';
import { VerdictBox } from './verdict-box.tsx';
import './cell-figure.css';

const shortText = 14;

/** The value of the cell, large: the figure one measures by, the words, what a check says, or why there is no figure. */
export function CellFigure({
  explanation,
  workbook,
  onGo,
}: {
  readonly explanation: Explanation;
  readonly workbook: Workbook;
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const { shown, exactly, verdict, role } = explanation;
  if (shown.type === 'fault') {
    return (
      <FaultBox
        title={verdict ? 'Stop: this check has no figure' : 'No figure'}
        fault={shown.fault}
        workbook={workbook}
        onGo={onGo}
      />
    );
  }
  if (verdict) return <VerdictBox verdict={verdict} />;
  if (shown.type === 'blank') {
    return (
      <p className="working-quiet">{role === 'given' ? 'Not filled in yet.' : 'Nothing stands here.'}</p>
    );
  }
  const size = shown.type === 'text' && shown.text.length > shortText ? 'words' : 'figure';
  return (
    <p className="working-value">
      <span className={`working-${size}`}>
        {shown.type === 'tape' ? <TapeFigure parts={shown.parts} /> : null}
        {shown.type === 'number' ? <NumberFigure text={shown.text} /> : null}
        {shown.type === 'text' ? shown.text : null}
      </span>
      {exactly ? <span className="working-exactly">{exactly}</span> : null}
    </p>
  );
}

/** Digits large, the unit behind them quieter. */
function NumberFigure({ text }: { readonly text: string }) {
  const parts = /^(\S*\d)\s+(\D.*)$/.exec(text);
  if (!parts) return text;
  return (
    <>
      {parts[1]} <span className="working-unit">{parts[2]}</span>
    </>
  );
}
