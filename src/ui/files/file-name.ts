/** `Larkspur Lane, lot 7` → `larkspur-lane-lot-7.stretchout.json`. Several words are put behind one another. */
export function fileName(words: readonly string[], ending: string): string {
  const plain = words
    .join(' ')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .slice(0, 80)
    .replace(/^-+|-+$/g, '');
  return `${plain || 'workbook'}.${ending}`;
}
