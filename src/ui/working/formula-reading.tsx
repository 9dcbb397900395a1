import { highlightCode } from '@lezer/highlight';
import { formulaLanguage } from '../../formula/highlight.ts';
import { formulaClasses } from './formula-classes.ts';

interface Part {
  readonly from: number;
  readonly text: string;
  readonly className: string;
}

/** A formula to read, each kind of part in its own look. */
export function FormulaReading({ formula }: { readonly formula: string }) {
  return (
    <code className="formula-reading">
      <span className="formula-sign">=</span>
      {partsOf(formula).map(({ from, text, className }) =>
        className ? (
          <span className={className} key={from}>
            {text}
            {className === 'formula-sign' ? <wbr /> : null}
          </span>
        ) : (
          text
        ),
      )}
    </code>
  );
}

function partsOf(formula: string): readonly Part[] {
  const parts: Part[] = [];
  let from = 0;
  const add = (text: string, className: string) => {
    parts.push({ from, text, className });
    from += text.length;
  };
  highlightCode(formula, formulaLanguage.parse(formula), formulaClasses, add, () => add('\n', ''));
  return parts;
}
