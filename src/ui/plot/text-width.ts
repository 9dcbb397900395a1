/** About how wide a text runs in the page's font, a little on the safe side: places are found before it is drawn. */
export function textWidth(text: string, size: number): number {
  return text.length * size * 0.56;
}
