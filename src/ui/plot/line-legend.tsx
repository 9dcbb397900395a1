import { lineMark } from './line-mark.ts';

/** The names of the lines with what each is drawn like. */
export function LineLegend({ names }: { readonly names: readonly string[] }) {
  return (
    <ul className="plot-legend">
      {names.map((name, place) => {
        const { ink, dash, outline } = lineMark(place);
        return (
          <li key={name} className={ink}>
            <svg viewBox="0 0 44 14" width={44} height={14} aria-hidden="true">
              <path className="plot-line" d="M1 7H36" strokeDasharray={dash} />
              <path className="plot-mark" d={outline} transform="translate(37 7)" />
            </svg>
            {name}
          </li>
        );
      })}
    </ul>
  );
}
