import { useState } from 'react';
import type { AnyTradeFunction } from '../../catalogue/define.ts';
import { exampleFormula } from '../../catalogue/example-formula.ts';
import { sources } from '../../catalogue/sources.ts';
import { showValue } from '../../workbook/show.ts';
import { usualWords } from '../../workbook/usual-words.ts';
import { DrawingPicture } from '../working/drawing-picture.tsx';

/** One function: how it is called, what it takes, and its first example worked through. */
export function FunctionSheet({ spec }: { readonly spec: AnyTradeFunction }) {
  const [example] = spec.examples;
  const outcome = example
    ? spec.call(Object.keys(spec.arguments).map((name) => example.given[name] ?? null))
    : null;
  const worked = outcome?.ok ? outcome.value : null;
  const drawing = worked?.drawing() ?? null;
  return (
    <div className="functions-sheet">
      <table>
        <caption className="visually-hidden">Arguments of {spec.name}</caption>
        <thead>
          <tr>
            <th scope="col">Argument</th>
            <th scope="col">What it is</th>
            <th scope="col">May be</th>
            <th scope="col">When left out</th>
          </tr>
        </thead>
        <tbody>
          {Object.entries(spec.arguments).map(([name, argument]) => (
            <tr key={name}>
              <th scope="row">
                <code>{name}</code>
              </th>
              <td>{argument.says}</td>
              <td>{argument.allows}</td>
              <td>{usualWords(argument)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {example && worked ? (
        <div className="functions-example">
          <div>
            <p>Example: {example.says}</p>
            <CopyFormula formula={exampleFormula(spec, example)} />
            <ol>
              {worked.steps().map(({ label, sum, value, unit }) => (
                <li key={label}>
                  <span>
                    {label}
                    {sum === '' ? null : <small>{sum}</small>}
                  </span>
                  <span>{typeof value === 'number' ? showValue(value, unit).text : value}</span>
                </li>
              ))}
            </ol>
          </div>
          {drawing ? <DrawingPicture drawing={drawing} /> : null}
        </div>
      ) : null}
      {worked && worked.cautions().length > 0 ? (
        <ul className="functions-cautions" aria-label="Cautions">
          {worked.cautions().map(({ sentence }) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      ) : null}
      <ul className="functions-sources" aria-label="Sources">
        {(worked?.sources() ?? spec.sources).map((id) => (
          <li key={id}>
            {sources[id].title}: {sources[id].place} <em>({sources[id].status})</em>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** The call as one would type it, to be copied into a cell. */
function CopyFormula({ formula }: { readonly formula: string }) {
  const [isCopied, setCopied] = useState(false);
  const text = `=${formula}`;
  return (
    <p className="functions-formula">
      <code>{text}</code>
      <button type="button" onClick={() => navigator.clipboard.writeText(text).then(() => setCopied(true))}>
        {isCopied ? 'Copied' : 'Copy'}
      </button>
    </p>
  );
}
