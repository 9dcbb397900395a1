import { done, failed, type Outcome } from '../base/outcome.ts';
import { type Command, type CommandFault, runCommand } from '../workbook/commands.ts';
import { applyDifference, type Difference } from '../workbook/difference.ts';
import type { Workbook } from '../workbook/document.ts';

/** Several commands, one after another, as they would leave a workbook, with all that they change as one difference. */
export function tried(
  workbook: Workbook,
  commands: readonly Command[],
): Outcome<{ readonly workbook: Workbook; readonly difference: Difference }, CommandFault> {
  let after = workbook;
  const difference: Difference[number][] = [];
  for (const command of commands) {
    const outcome = runCommand(after, command);
    if (!outcome.ok) return failed(outcome.fault);
    difference.push(...outcome.value);
    after = applyDifference(after, outcome.value);
  }
  return done({ workbook: after, difference });
}
