/** Why a file is refused. Nothing of it has been taken over. Wording: `wording.ts`. */
export type FileFault =
  | { readonly code: 'too_large'; readonly got: number; readonly most: number }
  | { readonly code: 'empty' }
  /** Packed or not text at all, such as a spreadsheet, a picture or a printed page. */
  | { readonly code: 'other_program' }
  | { readonly code: 'not_json'; readonly at: string }
  | { readonly code: 'not_a_workbook' }
  /** Houses of some types, which have a page and a command of their own. */
  | { readonly code: 'lot_table' }
  | { readonly code: 'unsafe_key'; readonly key: string }
  | { readonly code: 'newer_version'; readonly got: number; readonly newest: number }
  | { readonly code: 'unknown_version'; readonly got: string }
  | { readonly code: 'wrong_shape'; readonly place: string; readonly says: string }
  /** Its locked cells are not those that were saved. */
  | { readonly code: 'broken_seal'; readonly sheet: string };
