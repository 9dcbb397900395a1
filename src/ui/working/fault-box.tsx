import { type CellAddress, readAddress } from '../../base/address.ts';
import type { CellFault } from '../../base/value.ts';
import { sheetNamed } from '../../workbook/cells.ts';
import type { Workbook } from '../../workbook/document.ts';

/** Why there is no figure, and the way to the cell where the trouble began. */
export function FaultBox({
  title,
  fault,
  workbook,
  onGo,
}: {
  readonly title: string;
  readonly fault: CellFault;
  readonly workbook: Workbook;
  readonly onGo: (sheetId: string, address: CellAddress) => void;
}) {
  const began = fault.bornAt === undefined ? null : placeIn(workbook, fault.bornAt);
  const ring = (fault.ring ?? []).flatMap((name) => {
    const place = placeIn(workbook, name);
    return place ? [{ name, ...place }] : [];
  });
  return (
    <div className="fault-box">
      <p className="fault-box-title">
        <span className="verdict-sign" aria-hidden="true">
          ✕
        </span>
        {title}
      </p>
      <p>{fault.sentence}</p>
      {ring.length > 0 ? (
        <ol className="fault-box-ring" aria-label="The cells of the ring">
          {ring.map(({ name, sheetId, address }) => (
            <li key={name}>
              <button type="button" className="fault-box-began" onClick={() => onGo(sheetId, address)}>
                {name}
              </button>
            </li>
          ))}
        </ol>
      ) : null}
      {began ? (
        <button type="button" className="fault-box-began" onClick={() => onGo(began.sheetId, began.address)}>
          Go to {fault.bornAt}, where it began
        </button>
      ) : null}
    </div>
  );
}

/** Reads `Wrap!F4`; null where no such sheet or cell is. */
function placeIn(
  workbook: Workbook,
  place: string,
): { readonly sheetId: string; readonly address: CellAddress } | null {
  const split = place.lastIndexOf('!');
  const name = place
    .slice(0, split)
    .replace(/^'(.*)'$/, '$1')
    .replaceAll("''", "'");
  const sheet = sheetNamed(workbook, name);
  const address = readAddress(place.slice(split + 1));
  return sheet && address ? { sheetId: sheet.id, address } : null;
}
