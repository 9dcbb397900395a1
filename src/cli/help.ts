import type { Command } from './command.ts';
import { fold } from './fold.ts';

/** What the program does and how each command is written. */
export function overview(commands: readonly Command[]): string {
  return [
    fold(
      'Stretchout: a calculation workbook for shops that make, insulate and seal their own sheet-metal duct.',
    ),
    ...commands.map(helpOn),
    fold('stretchout --help prints this; stretchout COMMAND --help prints one part of it.'),
    [
      'Examples',
      `  npx stretchout figure '=WRAP.STRETCHOUT("round",16,,"R-8 wrap",wraps,"geometry")'`,
      "  npx stretchout figure '=Wrap!D2' --in sheets/demo.job.stretchout.json",
      '  npx stretchout check sheets/demo.job.stretchout.json',
      '  npx stretchout takeoff sheets/demo.job.stretchout.json',
    ].join('\n'),
    fold(
      'The shell gets 0 when all is well, 1 when something must not be cut or has no figure, 2 when the command or the file was not understood.',
    ),
  ].join('\n\n');
}

export function helpOn({ form, says, tells }: Command): string {
  const paragraphs = [says, ...tells].map((text) => fold(text, '  ', '  '));
  return [`stretchout ${form}`, ...paragraphs].join('\n');
}
