import type { Unit } from '../../base/unit.ts';
import type { Format } from '../../workbook/document.ts';
import type { Shared } from '../../workbook/shared-dress.ts';
import { denominators, formatOptions, mostPlaces, type Option } from './dress-words.ts';
import { Pick } from './pick.tsx';
import { Tick } from './tick.tsx';

/** How the numbers of the selected cells show; nothing of the numbers themselves. */
export function FormatFields({
  unit,
  shared,
  onFormat,
}: {
  readonly unit: Shared<Unit | null>;
  readonly shared: Shared<Format | null>;
  readonly onFormat: (format: Format | null) => void;
}) {
  const offered = formatOptions(unit === 'mixed' ? null : unit.all);
  const format = shared === 'mixed' ? null : shared.all;
  return (
    <>
      <Pick<Format | null>
        label="Shows"
        shared={shared}
        options={[{ value: null, says: 'as it comes' }, ...offered]}
        isSame={(one, other) => one?.type === other?.type}
        onPick={onFormat}
      />
      {format?.type === 'tape' ? (
        <>
          <Pick
            label="Marks"
            shared={{ all: format.denominator }}
            options={markOptions}
            onPick={(denominator) => onFormat({ ...format, denominator })}
          />
          <Pick
            label="Rounded"
            shared={{ all: format.round }}
            options={roundOptions}
            onPick={(round) => onFormat({ ...format, round })}
          />
          <Tick
            says="whole feet apart, as in 14′ 6″"
            shared={{ all: format.feet }}
            onTick={(feet) => onFormat({ ...format, feet })}
          />
        </>
      ) : null}
      {format && format.type !== 'tape' ? (
        <Pick
          label="Decimals"
          shared={{ all: format.places }}
          options={Array.from({ length: mostPlaces[format.type] + 1 }, (_, places) => ({
            value: places,
            says: String(places),
          }))}
          onPick={(places) => onFormat({ ...format, places })}
        />
      ) : null}
    </>
  );
}

const markOptions: readonly Option<number>[] = denominators.map((value) => ({
  value,
  says: value === 1 ? 'whole inches' : `1/${value} inch`,
}));

const roundOptions: readonly Option<'up' | 'nearest'>[] = [
  { value: 'nearest', says: 'to the nearest' },
  { value: 'up', says: 'up to the next' },
];
