/** Other programs run what begins like a formula, whoever wrote it (CWE-1236). Such a text goes out behind an apostrophe,
 *  which they take off again; a plain number stays as it is. */
export function unarmed(text: string): string {
  return isArmed(text) ? `'${text}` : text;
}

/** The text without the apostrophe that `unarmed` put before it. One that begins with `=` keeps it: nothing that comes
 *  from outside becomes a formula. */
export function rearmed(text: string): string {
  const bare = text.slice(1);
  return text.startsWith("'") && isArmed(bare) && !bare.startsWith('=') ? bare : text;
}

function isArmed(text: string): boolean {
  return /^[=+\-@\t\r]/.test(text) && !/^[-+]?(\d+(\.\d*)?|\.\d+)(e[-+]?\d{1,3})?$/i.test(text);
}
