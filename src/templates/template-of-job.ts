import { done, type Outcome } from '../base/outcome.ts';
import { cellsOf, withCells } from '../workbook/cells.ts';
import { changeTemplate, type TemplateFault } from '../workbook/command/template.ts';
import { applyDifference } from '../workbook/difference.ts';
import { type Cell, isFormula, type Workbook } from '../workbook/document.ts';
import { questionFaults } from '../workbook/question.ts';

/** What becomes of what a job's givens hold: it stays, it stays and is the usual value from now on, or it goes. */
export type GivensWish = 'stay' | 'usual' | 'empty';

/** A template made of a job, which stays as it is. It has no revision yet. */
export function templateOfJob(
  job: Workbook,
  { name, givens }: { readonly name: string; readonly givens: GivensWish },
): Outcome<Workbook, TemplateFault> {
  const made = changeTemplate(job, { type: 'make_template', name });
  if (!made.ok) return made;
  const template = applyDifference(job, made.value);
  const sheets = template.sheets.map((sheet) => {
    const changed = [...cellsOf(sheet)].flatMap(({ address, cell }) => {
      const after = cell.role === 'given' ? givenAfter(cell, givens) : cell;
      return after === cell ? [] : [{ address, after }];
    });
    return changed.length === 0 ? sheet : withCells(sheet, changed);
  });
  return done({ ...template, sheets });
}

function givenAfter(cell: Cell, wish: GivensWish): Cell {
  const { content, question } = cell;
  if (wish === 'stay' || content === null || isFormula(content)) return cell;
  if (wish === 'empty') {
    const { typed: _typed, ...asked } = cell;
    return { ...asked, content: null };
  }
  if (!question) return cell;
  const usual = { ...question, usual: content };
  return questionFaults(usual, cell.unit).length === 0 ? { ...cell, question: usual } : cell;
}
