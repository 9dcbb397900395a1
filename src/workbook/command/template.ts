import { done, failed, type Outcome } from '../../base/outcome.ts';
import { type Difference, workbookStanding } from '../difference.ts';
import type { HouseType, Workbook, WorkedExample } from '../document.ts';

/** What the author of a template does to it beside its cells. */
export type TemplateCommand =
  /** In place of the example at `at`, or after the last one. */
  | { readonly type: 'keep_example'; readonly example: WorkedExample; readonly at?: number }
  | { readonly type: 'remove_example'; readonly at: number }
  /** Null: the template is for no kind of house in particular. */
  | { readonly type: 'house'; readonly house: HouseType | null }
  /** Whoever asks has run the worked examples and found those named in `broken` to differ. */
  | {
      readonly type: 'revise';
      readonly says: string;
      readonly broken: readonly string[];
      readonly despite?: string;
    }
  | { readonly type: 'make_template'; readonly name: string };

export type TemplateFault =
  | { readonly code: 'example_without_name' }
  | { readonly code: 'example_name_taken'; readonly name: string }
  | { readonly code: 'example_gives_nothing' }
  | { readonly code: 'no_such_example' }
  | { readonly code: 'too_many_examples'; readonly most: number }
  | { readonly code: 'not_a_template' }
  | { readonly code: 'revision_says_nothing' }
  | { readonly code: 'broken_examples'; readonly names: readonly string[] }
  | { readonly code: 'template_without_name' }
  | { readonly code: 'words_too_long'; readonly got: number; readonly most: number };

const mostExamples = 500;
const longest = 500;
const longestName = 80;

export function changeTemplate(
  workbook: Workbook,
  command: TemplateCommand,
): Outcome<Difference, TemplateFault> {
  switch (command.type) {
    case 'keep_example':
      return keepExample(workbook, command);
    case 'remove_example': {
      if (!workbook.examples[command.at]) return failed({ code: 'no_such_example' });
      return examplesAre(
        workbook,
        workbook.examples.filter((_, at) => at !== command.at),
      );
    }
    case 'house': {
      if (workbook.kind !== 'template') return failed({ code: 'not_a_template' });
      const before = workbookStanding(workbook);
      return done([{ type: 'standing', before, after: { ...before, house: command.house } }]);
    }
    case 'revise':
      return revise(workbook, command);
    case 'make_template':
      return makeTemplate(workbook, command.name.trim());
  }
}

function keepExample(
  workbook: Workbook,
  { example, at }: Extract<TemplateCommand, { type: 'keep_example' }>,
): Outcome<Difference, TemplateFault> {
  const name = example.name.trim();
  const got = Math.max(name.length, example.source.length);
  if (name === '') return failed({ code: 'example_without_name' });
  if (got > longest) return failed({ code: 'words_too_long', got, most: longest });
  if (Object.keys(example.gives).length === 0) return failed({ code: 'example_gives_nothing' });
  if (at !== undefined && !workbook.examples[at]) return failed({ code: 'no_such_example' });
  if (workbook.examples.some((one, index) => index !== at && one.name === name)) {
    return failed({ code: 'example_name_taken', name });
  }
  const kept = { ...example, name };
  if (at !== undefined) {
    return examplesAre(
      workbook,
      workbook.examples.map((one, index) => (index === at ? kept : one)),
    );
  }
  if (workbook.examples.length >= mostExamples) {
    return failed({ code: 'too_many_examples', most: mostExamples });
  }
  return examplesAre(workbook, [...workbook.examples, kept]);
}

function examplesAre(
  { examples: before }: Workbook,
  after: readonly WorkedExample[],
): Outcome<Difference, TemplateFault> {
  return done([{ type: 'examples', before, after }]);
}

/** A new revision. Examples that differ are no bar where the author says why. */
function revise(
  workbook: Workbook,
  { says, broken, despite = '' }: Extract<TemplateCommand, { type: 'revise' }>,
): Outcome<Difference, TemplateFault> {
  if (workbook.kind !== 'template') return failed({ code: 'not_a_template' });
  const [line, why] = [says.trim(), despite.trim()];
  const got = Math.max(line.length, why.length);
  if (line === '') return failed({ code: 'revision_says_nothing' });
  if (got > longest) return failed({ code: 'words_too_long', got, most: longest });
  if (broken.length > 0 && why === '') return failed({ code: 'broken_examples', names: broken });
  const before = workbookStanding(workbook);
  const { name, revision: last } = workbook.template ?? {
    name: workbook.title.slice(0, longestName),
    revision: 0,
  };
  const revision = last + 1;
  const saved = { revision, says: line, ...(broken.length > 0 ? { despite: why } : {}) };
  const after = { ...before, template: { name, revision }, revisions: [...(before.revisions ?? []), saved] };
  return done([{ type: 'standing', before, after }]);
}

/** The workbook becomes a template of its own, which no revision of has been saved yet. */
function makeTemplate(workbook: Workbook, name: string): Outcome<Difference, TemplateFault> {
  if (name === '') return failed({ code: 'template_without_name' });
  if (name.length > longestName)
    return failed({ code: 'words_too_long', got: name.length, most: longestName });
  const before = workbookStanding(workbook);
  return done([
    { type: 'kind', before: workbook.kind, after: 'template' },
    {
      type: 'standing',
      before,
      after: { template: null, revisions: null, house: before.house, locksOff: null },
    },
    { type: 'title', before: workbook.title, after: name },
  ]);
}
