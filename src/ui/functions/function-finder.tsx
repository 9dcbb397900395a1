import { useDeferredValue, useId, useState } from 'react';
import { type AnyTradeFunction, families } from '../../catalogue/define.ts';
import { tradeFunctions } from '../../catalogue/list.ts';
import { searchFunctions } from '../../catalogue/search.ts';
import { familyWords } from './family-words.ts';
import { FunctionSheet } from './function-sheet.tsx';
import './functions.css';

/** Every trade function, by family, and by the words that a tradesman would type. */
export function FunctionFinder() {
  const [typed, setTyped] = useState('');
  const [open, setOpen] = useState<string | null>(null);
  const found = searchFunctions(tradeFunctions, useDeferredValue(typed));
  const field = useId();
  const isSearch = typed.trim() !== '';
  return (
    <section className="functions" aria-label="Trade functions">
      <div className="functions-search">
        <label htmlFor={field}>What do you want to know?</label>
        <input
          id={field}
          type="search"
          value={typed}
          placeholder="how far round, R left, screws …"
          onChange={(event) => setTyped(event.target.value)}
        />
        <p role="status">{counted(found.length)}</p>
      </div>
      <div className="functions-list">
        {isSearch ? (
          <FunctionRows functions={found} open={open} onOpen={setOpen} />
        ) : (
          families.map((family) => {
            const own = found.filter((spec) => spec.name.startsWith(`${family}.`));
            return own.length === 0 ? null : (
              <section key={family}>
                <h2>
                  {family} <span>{familyWords[family]}</span>
                </h2>
                <FunctionRows functions={own} open={open} onOpen={setOpen} />
              </section>
            );
          })
        )}
      </div>
    </section>
  );
}

function FunctionRows({
  functions,
  open,
  onOpen,
}: {
  readonly functions: readonly AnyTradeFunction[];
  readonly open: string | null;
  readonly onOpen: (name: string | null) => void;
}) {
  return (
    <ul>
      {functions.map((spec) => {
        const isOpen = spec.name === open;
        return (
          <li key={spec.name}>
            <button
              type="button"
              className="functions-row"
              aria-expanded={isOpen}
              onClick={() => onOpen(isOpen ? null : spec.name)}
            >
              <code>{spec.name}</code> <span>{spec.says}</span>
            </button>
            {isOpen ? <FunctionSheet spec={spec} /> : null}
          </li>
        );
      })}
    </ul>
  );
}

function counted(count: number): string {
  if (count === 0) return 'Nothing fits. Try another word, or a part of one.';
  return count === 1 ? '1 function' : `${count} functions`;
}
