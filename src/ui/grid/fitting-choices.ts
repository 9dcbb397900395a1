/** The choices that fit what was typed: all of them until something new is typed, those that begin so first. */
export function fittingChoices(choices: readonly string[], typed: string, began: string): readonly string[] {
  const wanted = typed.trim().toLowerCase();
  if (wanted === '' || typed === began) return choices;
  const begins = choices.filter((one) => one.toLowerCase().startsWith(wanted));
  const contains = choices.filter((one) => !begins.includes(one) && one.toLowerCase().includes(wanted));
  return [...begins, ...contains];
}
