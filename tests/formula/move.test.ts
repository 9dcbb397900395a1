import { describe, expect, it } from 'vitest';
import { readAddress } from '../../src/base/address.ts';
import { afterMove, type Move } from '../../src/formula/move.ts';
import { afterNameRename, afterSheetRemoval, afterSheetRename } from '../../src/formula/rename.ts';

function address(text: string) {
  const found = readAddress(text);
  if (found === null) throw new Error(text);
  return found;
}

function move(sheet: string, from: string, to: string, toSheet: string, target: string): Move {
  return {
    from: { sheet, range: { from: address(from), to: address(to) } },
    to: { sheet: toSheet, ...address(target) },
  };
}

describe('when B2:C4 moves to F10 on the same sheet', () => {
  const moved = move('Pieces', 'B2', 'C4', 'Pieces', 'F10');

  it.each([
    ['b2+$C$4', 'f10+$G$12', 'cells that moved are followed, fixed or not'],
    ['Pieces!B2', 'Pieces!F10', 'a sheet stays as typed'],
    ['Other!B2+A1', 'Other!B2+A1', 'other cells stay'],
    ['SUM( B2 : C4 )', 'SUM( F10 : G12 )', 'a block follows when all of it moved'],
    ['SUM(B2:C5)', 'SUM(B2:C5)', 'a block stays when a part of it stays'],
    ['F10+G12+F13', '#REF!+#REF!+F13', 'covered cells are gone'],
    ['SUM(F10:G11)', 'SUM(#REF!)', 'a covered block is gone'],
    ['"B2"&lap', '"B2"&lap', 'texts and names stay'],
  ])('%s becomes %s: %s', (text, after) => {
    expect(afterMove(text, moved, { ownSheet: 'Pieces' })).toBe(after);
  });

  it('a formula on another sheet follows too', () => {
    expect(afterMove("B2+'Pieces'!B2", moved, { ownSheet: 'Other' })).toBe("B2+'Pieces'!F10");
  });
});

describe('when B2:C4 overlaps where it goes', () => {
  it('moved cells are followed, though they are covered', () => {
    const moved = move('Pieces', 'B2', 'C4', 'Pieces', 'B3');
    expect(afterMove('B2+B3+B4+B5', moved, { ownSheet: 'Pieces' })).toBe('B3+B4+B5+#REF!');
  });
});

describe('when B2:C4 moves to another sheet', () => {
  const moved = move('Pieces', 'B2', 'C4', 'Main trunk', 'F10');

  it('formulas that stay name the new sheet', () => {
    expect(afterMove('b2*A1', moved, { ownSheet: 'Pieces' })).toBe("'Main trunk'!f10*A1");
    expect(afterMove('Pieces!B2', moved, { ownSheet: 'Other' })).toBe("'Main trunk'!F10");
    expect(afterMove("SUM('main trunk'!F10:G12)", moved, { ownSheet: 'Other' })).toBe('SUM(#REF!)');
  });

  it('formulas that go along name the old sheet for what stays behind', () => {
    const going = { ownSheet: 'Pieces', ownSheetAfter: 'Main trunk' };
    expect(afterMove('B3+A1+SUM(A1:A9)', moved, going)).toBe('F11+Pieces!A1+SUM(Pieces!A1:A9)');
    expect(afterMove('Pieces!B3', moved, going)).toBe("'Main trunk'!F11");
  });
});

describe('when a sheet or a name gets another name', () => {
  it.each([
    ['Pieces!A1+A1', "'Main trunk'!A1+A1"],
    ["SUM('pieces'!a1 : b2)", "SUM('Main trunk'!a1 : b2)"],
    ['"Pieces!A1"&Other!A1', '"Pieces!A1"&Other!A1'],
  ])('%s becomes %s', (text, after) => {
    expect(afterSheetRename(text, 'Pieces', 'Main trunk')).toBe(after);
  });

  it('a sheet name is put in quotes only where it needs them', () => {
    expect(afterSheetRename("'Main trunk'!A1", 'Main trunk', 'Trunk_2')).toBe('Trunk_2!A1');
    expect(afterSheetRename('Trunk!A1', 'Trunk', "Cook's")).toBe("'Cook''s'!A1");
    expect(afterSheetRename('Trunk!A1', 'Trunk', '2026')).toBe("'2026'!A1");
  });

  it('a sheet that has gone leaves references to nowhere', () => {
    expect(afterSheetRemoval("Pieces!A1+SUM('PIECES'!A1:B2)+A1", 'Pieces')).toBe('#REF!+SUM(#REF!)+A1');
  });

  it('a name follows, and nothing that only looks like it', () => {
    expect(afterNameRename('LAP*lap(2)+"lap"+lap.2+Lap', 'lap', 'seam_lap')).toBe(
      'seam_lap*lap(2)+"lap"+lap.2+seam_lap',
    );
  });
});
