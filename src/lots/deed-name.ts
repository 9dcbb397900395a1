import { assertNever } from '../base/outcome.ts';
import { typeWords } from './columns.ts';
import type { LotCommand } from './commands.ts';
import type { LotTable } from './lot-table.ts';

/** What a command did, as the person reads it on Undo and Redo: `R-8 for Insulation of Lot 3`. */
export function lotDeedName({ rows }: LotTable, command: LotCommand): string {
  const lotAt = (at: number) => shortened(rows[at]?.name ?? 'a lot');
  switch (command.type) {
    case 'retitle':
      return `the title ${shortened(command.title)}`;
    case 'add_lot':
      return `a new lot, ${shortened(command.house)}`;
    case 'copy_lot':
      return `a copy of ${lotAt(command.at)}`;
    case 'remove_lots':
      return command.count === 1
        ? `taking out ${lotAt(command.at)}`
        : `taking out ${command.count} lots from ${lotAt(command.at)} on`;
    case 'move_lot':
      return `moving ${lotAt(command.from)}`;
    case 'name_lot':
      return `the name ${shortened(command.name)}`;
    case 'set_type':
      return `${shortened(command.house)} for ${lotAt(command.at)}`;
    case 'choose':
      return `${shortened(command.choice ?? 'the usual')} for ${shortened(command.option)} of ${lotAt(command.at)}`;
    case 'override':
      return `${shortened(command.typed.trim() || 'the usual')} for ${shortened(command.label)} of ${lotAt(command.at)}`;
    case 'remark':
      return `the remark on ${lotAt(command.at)}`;
    case 'add_type':
      return `the house type ${typeWords(command.workbook)}`;
    case 'replace_type':
      return `${typeWords(command.workbook)} in place of the older one`;
    case 'remove_type':
      return `taking out the house type ${shortened(command.house)}`;
    case 'bring_in':
      return command.lots.length === 1
        ? `1 lot from ${shortened(command.file)}`
        : `${command.lots.length} lots from ${shortened(command.file)}`;
    default:
      return assertNever(command);
  }
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 37)}…` : text;
}
