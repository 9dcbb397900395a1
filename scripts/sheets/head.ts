import { given, heading, words } from './cells.ts';
import { type Line, line } from './form.ts';

/** The usual cautions, each as short as a line of the form. */
export const cautions = {
  edges: 'Edges cut: wear cut-resistant gloves, sleeves.',
  fiber: 'Glass fiber: sleeves, goggles and a dust mask.',
  tryFirst: 'Cut one and try it on before you cut the rest.',
  sealFirst: 'Seal every metal joint before the wrap goes on.',
  localCode: 'Local code and licensed practice have the say.',
  fan: 'Switch the unit off and lock it out first.',
} as const;

type Beside = readonly [string, string, string, string, string];

/** The head of a Job sheet: whose job it is, with five cautions beside it. */
export function jobHead(
  title: string,
  beside: Beside,
  who: { readonly label: string; readonly asks: string } = {
    label: 'Who cuts',
    asks: 'Who cuts the metal and the wrap?',
  },
): readonly Line[] {
  const [first, second, third, fourth, fifth] = beside.map((one) => words(one));
  return [
    line(heading('This job'), null, heading(title)),
    line(
      words('Job'),
      given({ asks: 'What is this job called, such as the street and lot?' }),
      first ?? null,
    ),
    line(words('Address'), given({ asks: 'Where is the house?', mayBeBlank: true }), second ?? null),
    line(words('Shop'), given({ asks: 'Which shop makes it?', mayBeBlank: true }), third ?? null),
    line(
      words('Date'),
      given({ asks: 'Which day is it? Any way of writing it will do.', mayBeBlank: true }),
      fourth ?? null,
    ),
    line(words(who.label), given({ asks: who.asks }), fifth ?? null),
  ];
}

/** The same head for a house type: a lot has its name in the lot table, and who cuts it is often not known yet. */
export function lotHead(title: string, beside: Beside): readonly Line[] {
  return jobHead(title, beside).map((one) => ({
    ...one,
    cells: one.cells.map((cell) =>
      cell?.question ? { ...cell, question: { ...cell.question, mayBeBlank: true } } : cell,
    ),
  }));
}
