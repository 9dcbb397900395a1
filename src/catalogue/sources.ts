/** How far a source was followed. Anything from memory says so wherever it shows. */
export type SourceStatus =
  | 'read at source'
  | 'quoted by a secondary source'
  | 'exact geometry'
  | 'common practice, no source'
  | 'from memory, not verified';

export interface Source {
  readonly title: string;
  readonly place: string;
  readonly status: SourceStatus;
}

/** Every document, table and rule that a figure rests on, by the name that specs and tests cite. */
export const sources = {
  geometry: {
    title: 'Plane and solid geometry',
    place: 'exact formula, worked step by step',
    status: 'exact geometry',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
