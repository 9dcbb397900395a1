import { useId } from 'react';
import type { Shared } from '../../workbook/shared-dress.ts';
import type { Option } from './dress-words.ts';

const several = 'several';

/** One of some values, for all the selected cells; where they differ, that is what it says. */
export function Pick<T>({
  label,
  shared,
  options,
  isSame = (one, other) => one === other,
  onPick,
}: {
  readonly label: string;
  readonly shared: Shared<T>;
  readonly options: readonly Option<T>[];
  readonly isSame?: (one: T, other: T) => boolean;
  readonly onPick: (value: T) => void;
}) {
  const id = useId();
  const at = shared === 'mixed' ? -1 : options.findIndex(({ value }) => isSame(value, shared.all));
  return (
    <div className="cell-dress-pick">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={at < 0 ? several : String(at)}
        onChange={(event) => {
          const option = options[Number(event.target.value)];
          if (option) onPick(option.value);
        }}
      >
        {at < 0 ? (
          <option value={several} disabled>
            several
          </option>
        ) : null}
        {options.map(({ says }, index) => (
          <option key={says} value={String(index)}>
            {says}
          </option>
        ))}
      </select>
    </div>
  );
}
