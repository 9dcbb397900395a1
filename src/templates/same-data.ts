/** Whether two pieces of a document say the same, whatever the order of their keys. */
export function isSameData(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const [mine, theirs] = [Object.entries(one), new Map(Object.entries(other))];
  if (mine.length !== theirs.size) return false;
  return mine.every(([key, value]) => theirs.has(key) && isSameData(value, theirs.get(key)));
}
