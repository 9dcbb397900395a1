import type { CellAddress, CellRange } from '../base/address.ts';
import type { Session } from '../session/session.ts';
import type { SessionState } from '../session/state.ts';
import type { Desk, DeskKeeper } from './desk.ts';

/** What each of the shop's own pages gets. */
export interface ShopPageProps {
  readonly keeper: DeskKeeper;
  readonly desk: Desk;
  readonly session: Session;
  readonly state: SessionState;
  /** What is selected on the sheet that stood here before the page. */
  readonly selection: { readonly sheet: string; readonly range: CellRange };
  /** To a cell of the open workbook. */
  readonly onGo: (sheetId: string, address: CellAddress) => void;
  /** Another workbook has been opened: its first sheet is to be shown. */
  readonly onOpened: () => void;
}
