/** Whether a check in this column says stop. Criteria of counts take whole sentences only, so the sentences are strung
 *  together and searched. */
export function saysStop(checks: string): string {
  return `ISNUMBER(FIND("stop:",TEXTJOIN(" ",TRUE,${checks})))`;
}

/** How many checks in this column say look. */
export function looksIn(checks: string): string {
  const all = `TEXTJOIN(" ",TRUE,${checks})`;
  return `(LEN(${all})-LEN(SUBSTITUTE(${all},"look:","")))/5`;
}
