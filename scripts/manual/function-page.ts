import { units } from '../../src/base/unit.ts';
import type { AnyTradeFunction, FunctionExample, Worked } from '../../src/catalogue/define.ts';
import { exampleFormula } from '../../src/catalogue/example-formula.ts';
import { figure } from '../../src/catalogue/say.ts';
import { sources } from '../../src/catalogue/sources.ts';
import { showValue } from '../../src/workbook/show.ts';
import { usualWords } from '../../src/workbook/usual-words.ts';
import { escaped, table } from './markdown.ts';

/** The manual page of one trade function, all of it from its spec. `drawing` is the file of its picture, if it has one. */
export function functionPage(spec: AnyTradeFunction, drawing: string | null): string {
  const [example] = spec.examples;
  const worked = example ? workedExample(spec, example) : null;
  return [
    `# ${spec.name}`,
    spec.says,
    `\`${callLine(spec)}\``,
    `Gives: ${spec.gives.label.toLowerCase()}${unitWords(spec)}.`,
    '## Arguments',
    argumentTable(spec),
    '## Rule',
    // A fence, because between dollar signs Markdown would take the backslash from `\,` and `\_`.
    ...spec.formula.map((line) => `\`\`\`math\n${line}\n\`\`\``),
    ...(example && worked ? ['## Worked example', ...exampleParts(spec, example, worked, drawing)] : []),
    ...otherExamples(spec),
    '## Cautions',
    ...cautionLines(worked),
    '## Where the figures come from',
    sourceLines(spec),
    `Also found as: ${spec.words.join(', ')}.`,
    '',
  ].join('\n\n');
}

function callLine({ name, arguments: args }: AnyTradeFunction): string {
  const list = Object.entries(args).map(([argument, { usual }]) => (usual ? `[${argument}]` : argument));
  return `${name}(${list.join(', ')})`;
}

function unitWords({ gives }: AnyTradeFunction): string {
  const asked = [gives.unit, ...(gives.orUnits ?? [])].filter((unit) => units[unit].label !== '');
  return asked.length === 0 ? '' : ` (${asked.map((unit) => units[unit].says).join(', or ')})`;
}

function argumentTable(spec: AnyTradeFunction): string {
  return table(
    ['Argument', 'What it is', 'May be', 'When left out'],
    Object.entries(spec.arguments).map(([name, argument]) => [
      `\`${name}\``,
      argument.says,
      argument.allows,
      usualWords(argument),
    ]),
  );
}

function workedExample(spec: AnyTradeFunction, example: FunctionExample): Worked | null {
  const outcome = spec.call(Object.keys(spec.arguments).map((name) => example.given[name] ?? null));
  return outcome.ok ? outcome.value : null;
}

function exampleParts(
  spec: AnyTradeFunction,
  example: FunctionExample,
  worked: Worked,
  drawing: string | null,
): readonly string[] {
  const steps = worked
    .steps()
    .map(({ label, sum, value, unit }) => [
      label,
      sum,
      typeof value === 'number' ? showValue(value, unit).text : value,
    ]);
  return [
    `${sentence(example.says)} \`=${exampleFormula(spec, example)}\``,
    table(['Step', 'Sum', 'Comes to'], steps),
    ...(drawing ? [`![${worked.drawing()?.describes ?? ''}](${drawing})`] : []),
  ];
}

function otherExamples(spec: AnyTradeFunction): readonly string[] {
  const others = spec.examples.slice(1);
  if (others.length === 0) return [];
  return [
    '## More examples',
    table(
      ['', 'Formula', 'Gives'],
      others.map((example) => [
        example.says,
        `\`=${exampleFormula(spec, example)}\``,
        typeof example.gives === 'number' ? figure(example.gives, 4) : example.gives,
      ]),
    ),
  ];
}

function cautionLines(worked: Worked | null): readonly string[] {
  const cautions = worked?.cautions() ?? [];
  if (cautions.length === 0) return ['Local code and the licensed practice decide what may be built.'];
  return [cautions.map(({ sentence: said }) => `- ${escaped(said)}`).join('\n')];
}

/** All that any example cites: which table a figure comes from may hang on what was given. */
function sourceLines(spec: AnyTradeFunction): string {
  const cited = spec.examples.flatMap((example) => workedExample(spec, example)?.sources() ?? []);
  return [...new Set([...spec.sources, ...cited])]
    .map((id) => `- ${escaped(`${sources[id].title}: ${sources[id].place}`)} *(${sources[id].status})*`)
    .join('\n');
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}:`;
}
