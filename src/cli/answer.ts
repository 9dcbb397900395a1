/** What a command has to say, and how the shell learns how it went: 0 all is well, 1 something must not be cut or has
 *  no figure, 2 the command or the file was not understood. */
export interface Answer {
  readonly text: string;
  readonly exit: 0 | 1 | 2;
}

export function refusal(sentence: string): Answer {
  return { text: sentence, exit: 2 };
}
