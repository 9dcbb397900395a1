/** Something that can be done, as the person reads it. */
export interface Deed {
  readonly says: string;
  /** The key that does the same without the menu. */
  readonly key?: string;
}
