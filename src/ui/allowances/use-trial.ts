import { useEffect, useMemo, useState } from 'react';
import type { Session } from '../../session/session.ts';
import { nameOfCopy, namesBeside } from '../../templates/allowances/copy-line.ts';
import { type AllowanceLine, calledAt, type LinePlace, ownSource } from '../../templates/allowances/line.ts';
import {
  type CopiedLine,
  nothingTried,
  type Tried,
  type TriedPlace,
  triedAfter,
  triedDeed,
  triedKey,
  triedOn,
} from '../../templates/allowances/tried.ts';
import { wordTriedFault } from '../../templates/allowances/wording.ts';
import type { Difference } from '../../workbook/difference.ts';
import type { Workbook } from '../../workbook/document.ts';

/** What is tried, before any of it is in the workbook. */
export interface Trial {
  /** Whether anything is being tried. */
  readonly isOn: boolean;
  /** The workbook as it would be; as it is where nothing is tried or where it was refused. */
  readonly workbook: Workbook;
  readonly difference: Difference;
  /** Why it cannot be so; null where it can. */
  readonly refusal: string | null;
  /** What it is called once it is kept. */
  readonly deed: string;
  /** What was typed for a cell; null where nothing was. */
  readonly typedAt: (place: TriedPlace) => string | null;
  readonly type: (place: TriedPlace, typed: string) => void;
  readonly copies: readonly CopiedLine[];
  /** A line once more, under a name of its own; gives the id of the copy. */
  readonly copy: (line: AllowanceLine) => number;
  readonly rename: (id: number, name: string) => void;
  /** Where the figures of a copy come from. */
  readonly tellSource: (id: number, source: string) => void;
  readonly leaveOut: (id: number) => void;
  readonly isTaken: (line: LinePlace) => boolean;
  /** A line of the workbook would go; or, where it would, it stays after all. */
  readonly takeOut: (line: LinePlace, goes: boolean) => void;
  readonly putBack: () => void;
}

export function useTrial(session: Session, workbook: Workbook): Trial {
  const [wishes, setWishes] = useState(nothingTried);
  const outcome = useMemo(() => triedOn(workbook, wishes), [workbook, wishes]);
  useEffect(
    () => session.follow((difference) => setWishes((before) => triedAfter(before, difference))),
    [session],
  );
  const { copies, taken, entries } = wishes;
  const change = (id: number, news: Partial<CopiedLine>) =>
    setWishes((before) => ({
      ...before,
      copies: before.copies.map((copy) => (copy.id === id ? { ...copy, ...news } : copy)),
    }));
  return {
    isOn: copies.length > 0 || taken.length > 0 || entries.size > 0,
    workbook: outcome.ok ? outcome.value.workbook : workbook,
    difference: outcome.ok ? outcome.value.difference : [],
    refusal: outcome.ok ? null : wordTriedFault(outcome.fault),
    deed: triedDeed(workbook, wishes),
    typedAt: (place) => entries.get(triedKey(place))?.typed ?? null,
    type: (place, typed) =>
      setWishes((before) => {
        const after = new Map(before.entries);
        if (typed.trim() === '') after.delete(triedKey(place));
        else after.set(triedKey(place), { place, typed });
        return { ...before, entries: after };
      }),
    copies,
    copy: (line) => {
      const id = Math.max(0, ...copies.map((one) => one.id)) + 1;
      const called = calledAt(line);
      const taken = new Set([
        ...namesBeside(workbook, line),
        ...copies.map(({ name }) => name.trim().toLowerCase()),
      ]);
      const made: CopiedLine = {
        id,
        of: { sheet: line.sheet.id, row: line.row },
        name: nameOfCopy(taken, called),
        source: `${ownSource}, from ${called}`,
      };
      setWishes((before) => ({ ...before, copies: [...before.copies, made] }));
      return id;
    },
    rename: (id, name) => {
      const was = copies.find((copy) => copy.id === id)?.name;
      change(id, { name });
      if (was !== undefined) setWishes((before) => withTyped(before, was, name));
    },
    tellSource: (id, source) => change(id, { source }),
    leaveOut: (id) =>
      setWishes((before) => {
        const gone = before.copies.find((copy) => copy.id === id);
        const others = [...before.entries].filter(
          ([, { place, typed }]) => place.copy !== id && typed !== gone?.name,
        );
        return {
          ...before,
          copies: before.copies.filter((copy) => copy.id !== id),
          entries: new Map(others),
        };
      }),
    isTaken: (line) => taken.some((one) => isSame(one, line)),
    takeOut: (line, goes) =>
      setWishes((before) => {
        const others = before.taken.filter((one) => !isSame(one, line));
        return { ...before, taken: goes ? [...others, line] : others };
      }),
    putBack: () => setWishes(nothingTried),
  };
}

/** A cell that is tried with a copied wrap is tried with it under its new name. */
function withTyped(wishes: Tried, was: string, name: string): Tried {
  const entries = [...wishes.entries].map(
    ([key, one]) => [key, one.typed === was ? { ...one, typed: name } : one] as const,
  );
  return { ...wishes, entries: new Map(entries) };
}

function isSame(one: LinePlace, other: LinePlace): boolean {
  return one.sheet === other.sheet && one.row === other.row;
}
