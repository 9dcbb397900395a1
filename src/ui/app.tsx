import { Suspense, useCallback, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { CellAddress, CellRange } from '../base/address.ts';
import type { Outcome } from '../base/outcome.ts';
import type { Session } from '../session/session.ts';
import { sheetWithId } from '../workbook/cells.ts';
import type { Command } from '../workbook/commands.ts';
import type { Sheet } from '../workbook/document.ts';
import { sumsOf } from '../workbook/selection-sums.ts';
import { sheetReaders } from '../workbook/sheet-readers.ts';
import type { DeskKeeper } from './desk.ts';
import type { DressWish } from './dress/cell-dress.tsx';
import { FilesLink } from './files/files-link.tsx';
import { useWorkbookFile } from './files/use-workbook-file.ts';
import { FindPanel, type FindWish } from './find/find-panel.tsx';
import { useFindKeys } from './find/use-find-keys.ts';
import { createWritingDesk, WritingDeskContext } from './formula/writing-desk.ts';
import { isOneCell, rangeOf, selectionWords, usedPart } from './grid/selection.ts';
import { SheetGrid } from './grid/sheet-grid.tsx';
import { Header } from './header/header.tsx';
import { later } from './later.tsx';
import { Notice, type Notice as NoticeText } from './notice.tsx';
import { OpenPage } from './open-page.tsx';
import { LookUpList } from './sheets/look-up-list.tsx';
import { type Page, PageHead, pageTitle } from './sheets/page-head.tsx';
import { SheetList } from './sheets/sheet-list.tsx';
import { SheetSentence } from './sheets/sheet-sentence.tsx';
import { ShelfList } from './sheets/shelf-list.tsx';
import { isShopPage, ShopList } from './sheets/shop-list.tsx';
import { SidePages } from './sheets/side-pages.tsx';
import { backToWriting, firstSpot, type Spot, usedRange } from './spot.ts';
import { useExplanation } from './use-explanation.ts';
import { useHistoryKeys } from './use-history-keys.ts';
import { useLeaveGuard } from './use-leave-guard.ts';
import { useSheetKeys } from './use-sheet-keys.ts';
import { useDesk, useSessionState } from './use-state.ts';
import { createWaitingEntries, WaitingContext } from './waiting/waiting-entries.ts';
import { WorkingPanel } from './working/working-panel.tsx';

const NewerNote = later(async () => (await import('./template/newer-note.tsx')).NewerNote);

/** A page of many cells or of whole workbooks, for which the working of one cell makes way. */
function isWide(page: Page | undefined): boolean {
  return page === 'files' || isShopPage(page);
}

/** What a sheet that goes leaves behind. */
function readersWords(readers: number): string {
  if (readers === 0) return '';
  return readers === 1
    ? ' 1 cell of another sheet read it and has no figure now.'
    : ` ${readers} cells of other sheets read it and have no figure now.`;
}

export function App({ keeper }: { readonly keeper: DeskKeeper }) {
  const laid = useDesk(keeper);
  const { session, shelf, freed } = laid;
  const state = useSessionState(session);
  const { workbook, standings } = state;
  const [spot, setSpot] = useState<Spot>({ sheetId: '', cells: {} });
  const [finding, setFinding] = useState<FindWish | null>(null);
  /** The sheet whose needs are looked at; null for all of them. */
  const [attention, setAttention] = useState<string | null>(null);
  const [dressWish, setDressWish] = useState<DressWish | null>(null);
  const forgetDressWish = useCallback(() => setDressWish(null), []);
  const [told, setTold] = useState<{ readonly notice: NoticeText | null; readonly of: Session } | null>(null);
  // What was said of one workbook is not said over another.
  const notice = told?.of === session ? told.notice : null;
  const setNotice = (next: NoticeText | null) => setTold({ notice: next, of: keeper.getDesk().session });
  const sheet = sheetWithId(workbook, spot.sheetId) ?? workbook.sheets[0];
  const sheetId = sheet?.id ?? '';
  const spotted = spot.cells[sheetId];
  const { row, column } = spotted?.here ?? firstSpot(sheet, standings.get(sheetId));
  // The same object for the same place: what is written about it hangs on it.
  const address = useMemo(() => ({ row, column }), [row, column]);
  const head = spotted?.head ?? address;
  const round = spotted?.round;
  const [waiting] = useState(createWaitingEntries);
  const waitingEntries = useSyncExternalStore(waiting.subscribe, waiting.current);
  const [desk] = useState(createWritingDesk);
  const writing = useSyncExternalStore(desk.subscribe, desk.current);
  const subject = spot.writing ?? { sheetId, address };
  const explanation = useExplanation(session, state, subject.sheetId, subject.address);

  const marked = useMemo(
    () => explanation.comesFrom.filter((link) => link.sheetId === sheetId).map((link) => link.range),
    [explanation.comesFrom, sheetId],
  );

  const selection = useMemo(() => {
    const range = rangeOf({ here: address, head, round });
    if (!sheet || isOneCell(range)) return null;
    return {
      range: usedPart(sheet, range),
      words: selectionWords(range),
      sums: sumsOf(sheet, state.values, range),
    };
  }, [sheet, state.values, address, head, round]);

  useHistoryKeys(session);
  useLeaveGuard(session, waitingEntries.length > 0);
  useSheetKeys(stepSheet);
  useEffect(
    () => session.follow((difference) => waiting.follow(workbook.id, difference)),
    [session, waiting, workbook.id],
  );
  useFindKeys(find);
  useEffect(() => {
    document.title = `${workbook.title} · Stretchout`;
  }, [workbook.title]);
  useEffect(() => {
    freed.then(() =>
      setTold({
        notice: { sentence: 'The other window has let go of this workbook.', action: 'Work on it here' },
        of: session,
      }),
    );
  }, [freed, session]);

  // Whoever picked cells of another sheet comes back to the formula's own when it is written.
  useEffect(() => {
    if (writing === null)
      setSpot((before) => (before.writing ? backToWriting(before, before.writing) : before));
  }, [writing]);

  const go = (to: string, here: CellAddress, corner = here, block?: CellRange) =>
    setSpot(({ cells }) => ({
      sheetId: to,
      cells: { ...cells, [to]: { here, head: corner, round: block } },
    }));

  const goTo = (to: string, { from, to: corner }: CellRange) => go(to, from, corner);

  const selected = {
    sheet: sheetId,
    range: usedRange(sheet, rangeOf({ here: address, head, round })),
  };

  function turnTo(page: Page): void {
    setSpot((before) => ({ ...before, page }));
  }

  function find(wants: FindWish['wants']): void {
    setFinding((before) => ({ wants, time: (before?.time ?? 0) + 1 }));
  }

  function closeFind(): void {
    setFinding(null);
    document.querySelector<HTMLElement>('.sheet-grid [data-here]')?.focus();
  }

  /** Another sheet; a formula that waits for a cell comes along, so that the cell can be picked there. */
  function choose(id: string): void {
    const open = desk.current();
    const isPicking = open !== null && (open.field === 'cell' || open.pointing.canPoint());
    setSpot(({ cells }) => ({ sheetId: id, cells, writing: isPicking ? open : undefined }));
  }

  /** The sheet before or after the open one, in the order of the list. */
  function stepSheet(by: 1 | -1): void {
    const next = workbook.sheets[workbook.sheets.findIndex(({ id }) => id === sheetId) + by];
    if (next) choose(next.id);
  }

  const file = useWorkbookFile(
    keeper,
    session,
    workbook,
    (sentence) => setNotice(sentence === null ? null : { sentence }),
    () => setSpot({ sheetId: '', cells: {} }),
  );

  async function take(id: string): Promise<void> {
    const taken = await keeper.take(id);
    if (!taken.ok) return setNotice({ sentence: taken.fault });
    setNotice(null);
    setSpot({ sheetId: '', cells: {} });
  }

  /** What the list of sheets cannot do is told over the sheet; a name that is refused stands in its own field. */
  function runFromList(command: Command): Outcome<null, string> {
    const outcome = session.run(command);
    if (command.type !== 'rename_sheet') setNotice(outcome.ok ? null : { sentence: outcome.fault });
    return outcome;
  }

  function removeSheet({ id, name }: Sheet): boolean {
    const readers = sheetReaders(workbook, id);
    const outcome = runFromList({ type: 'remove_sheet', sheet: id });
    if (outcome.ok) {
      const { history } = session.getState();
      const deed = history.done.at(-1);
      setNotice({
        sentence: `The sheet ${name} was taken out, with all that stood on it.${readersWords(readers)}`,
        action: 'Put it back',
        act: () => {
          setNotice(null);
          // Whatever was done since has to be taken back first, and the person sees it go by name.
          if (session.getState().history.done.at(-1) === deed) session.undo();
          else setNotice({ sentence: 'More was changed since. Press Undo until the sheet is back.' });
        },
      });
    }
    return outcome.ok;
  }

  const shop = {
    keeper,
    desk: laid,
    session,
    state,
    selection: selected,
    onGo: (to: string, cell: CellAddress) => go(to, cell),
    onOpened: () => setSpot({ sheetId: '', cells: {} }),
  };
  const last = state.history.done.at(-1);
  const next = state.history.undone.at(-1);
  return (
    <WaitingContext value={waiting}>
      <WritingDeskContext value={desk}>
        <div className="app" data-page={spot.page} data-wide={isWide(spot.page) ? '' : undefined}>
          <Header
            title={workbook.title}
            template={workbook.template ?? null}
            isTemplate={workbook.kind === 'template'}
            keeping={state.keeping}
            figures={state.figures}
            undoName={last?.says ?? null}
            redoName={next?.says ?? null}
            isReadOnly={state.isReadOnly}
            onUndo={() => session.undo()}
            onRedo={() => session.redo()}
            savedWords={file.savedWords}
            onOpen={file.open}
            onPick={file.pick}
            onSave={() => file.save('same')}
            onRetitle={(title) => session.run({ type: 'retitle', title })}
          />
          <div className="app-side">
            <SheetList
              workbook={workbook}
              standings={standings}
              current={spot.page ? '' : sheetId}
              onChoose={choose}
              onAttention={(id) => {
                // A sheet that only waits has its cause on another one.
                setAttention(standings.get(id)?.concerns.length ? id : null);
                turnTo('attention');
              }}
              onRun={runFromList}
              onRemove={removeSheet}
            />
            <SidePages open={spot.page ? pageTitle(spot.page) : null}>
              <ShopList open={isShopPage(spot.page) ? spot.page : null} onOpen={turnTo} />
              <LookUpList
                open={spot.page === 'files' || isShopPage(spot.page) ? null : (spot.page ?? null)}
                onOpen={(page) => {
                  setAttention(null);
                  turnTo(page);
                }}
                onFind={() => find('find')}
              />
              <FilesLink isOpen={spot.page === 'files'} onOpen={() => turnTo('files')} />
              <ShelfList entries={shelf.filter((entry) => entry.id !== workbook.id)} onTake={take} />
            </SidePages>
          </div>
          <main className="app-sheet">
            <Suspense fallback={null}>
              {spot.page ? (
                <PageHead page={spot.page} />
              ) : (
                <>
                  <h1 className="app-sheet-name">{sheet?.name}</h1>
                  {/* Not before the sheet is figured: templates have to be read for it. */}
                  {workbook.kind === 'job' && !state.isReadOnly && state.figures.type !== 'stored' ? (
                    <Suspense fallback={null}>
                      <NewerNote
                        keeper={keeper}
                        desk={laid}
                        state={state}
                        onLook={() => turnTo('template')}
                      />
                    </Suspense>
                  ) : null}
                  <SheetSentence
                    key={sheetId}
                    says={sheet?.says ?? ''}
                    isReadOnly={state.isReadOnly}
                    onOffer={(says) => session.run({ type: 'describe_sheet', sheet: sheetId, says })}
                  />
                </>
              )}
              {notice ? (
                <Notice
                  {...notice}
                  onDismiss={() => setNotice(null)}
                  onAct={notice.act ?? (() => location.reload())}
                />
              ) : null}
              {finding ? (
                <FindPanel
                  session={session}
                  state={state}
                  wish={finding}
                  sheetId={sheetId}
                  onGo={goTo}
                  onClose={closeFind}
                />
              ) : null}
              {spot.page ? (
                <OpenPage
                  {...shop}
                  page={spot.page}
                  sheetId={sheetId}
                  attention={attention}
                  file={file}
                  onGoTo={goTo}
                  onTake={take}
                />
              ) : null}
              <SheetGrid
                key={`grid ${workbook.id}`}
                session={session}
                state={state}
                sheetId={sheetId}
                selected={address}
                head={head}
                round={round}
                onSelect={(cell, corner, block) => go(sheetId, cell, corner, block)}
                marked={marked}
                isAway={spot.page !== undefined}
                onDress={(part) => setDressWish({ part })}
              />
            </Suspense>
          </main>
          <WorkingPanel
            session={session}
            state={state}
            explanation={explanation}
            selection={subject.sheetId === sheetId ? selection : null}
            isInView={subject.sheetId === sheetId}
            dressWish={dressWish}
            onDressed={forgetDressWish}
            onGo={(to, cell) => go(to, cell)}
            key={`${workbook.id}`}
          />
        </div>
      </WritingDeskContext>
    </WaitingContext>
  );
}
