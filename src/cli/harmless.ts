/** A text from anybody's file must not steer the terminal or turn the reading direction: such signs show as `·`. */
export function harmless(text: string): string {
  return text.replace(/[^\P{Cc}\n]|\p{Cf}/gu, '·');
}
