import { useId } from 'react';
import { type CellStyle, shades } from '../../workbook/document.ts';
import type { Shared } from '../../workbook/shared-dress.ts';

type Shade = NonNullable<CellStyle['shade']> | null;

/** The shades of the project's palette, each with its name. */
export function ShadeChoice({
  shared,
  onShade,
}: {
  readonly shared: Shared<Shade>;
  readonly onShade: (shade: Shade) => void;
}) {
  const group = useId();
  return (
    <fieldset className="cell-dress-shades">
      <legend>Shade</legend>
      {[null, ...shades].map((shade) => (
        <label key={shade ?? 'none'} data-shade={shade ?? 'none'}>
          <input
            type="radio"
            name={group}
            checked={shared !== 'mixed' && shared.all === shade}
            onChange={() => onShade(shade)}
          />
          {shade ?? 'none'}
        </label>
      ))}
    </fieldset>
  );
}
