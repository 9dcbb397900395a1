/** Letters, digits, `_` and `.`, beginning with a letter or `_`, and nothing that a formula reads as something else:
 *  a cell (`width1`), TRUE or FALSE. `offset…` and `rc` look free but the calculator takes them for its own. */
export function isUsableName(name: string): boolean {
  return (
    /^[A-Za-z_\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u02af][\w.\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u02af]*$/.test(
      name,
    ) && !/^([a-z]+[0-9]+|r[0-9]*c[0-9]*|true|false|offset.*)$/i.test(name)
  );
}
