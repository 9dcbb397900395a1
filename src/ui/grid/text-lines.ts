/** How wide words are and how many lines they take, in the type of the grid. */
export interface TextMeasure {
  readonly width: (words: string, isBold: boolean) => number;
}

/** Words go to the next line where they do not fit; a word wider than a line is broken. */
export function countLines(words: string, room: number, width: (words: string) => number): number {
  let lines = 0;
  for (const paragraph of words.split('\n')) {
    let line = '';
    lines += 1;
    for (const word of paragraph.split(/\s+/)) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (width(longer) <= room) {
        line = longer;
        continue;
      }
      const pieces = Math.max(1, Math.ceil(width(word) / room));
      lines += line === '' ? pieces - 1 : pieces;
      line = word.slice(Math.floor((word.length * (pieces - 1)) / pieces));
    }
  }
  return lines;
}

/** Measures by a canvas that is never shown, in the type of an element. */
export function createTextMeasure(host: Element): TextMeasure {
  const pen = document.createElement('canvas').getContext('2d');
  const { fontFamily } = getComputedStyle(host);
  return {
    width: (words, isBold) => {
      if (!pen) return words.length * 8.4;
      pen.font = `${isBold ? 600 : 400} 14.5px ${fontFamily}`;
      return pen.measureText(words).width;
    },
  };
}
