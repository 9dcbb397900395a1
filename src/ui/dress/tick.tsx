import { useEffect, useRef } from 'react';
import type { Shared } from '../../workbook/shared-dress.ts';

/** Yes or no for all the selected cells; neither where they differ. */
export function Tick({
  says,
  shared,
  onTick,
}: {
  readonly says: string;
  readonly shared: Shared<boolean>;
  readonly onTick: (isOn: boolean) => void;
}) {
  const box = useRef<HTMLInputElement>(null);
  const isMixed = shared === 'mixed';
  useEffect(() => {
    if (box.current) box.current.indeterminate = isMixed;
  }, [isMixed]);
  return (
    <label className="cell-dress-tick">
      <input
        ref={box}
        type="checkbox"
        checked={shared !== 'mixed' && shared.all}
        onChange={(event) => onTick(event.target.checked)}
      />
      {says}
    </label>
  );
}
