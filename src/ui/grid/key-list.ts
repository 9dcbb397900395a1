import type { KeyWish } from './keyboard.ts';

/** Keys that do one thing, as the person reads them. A test presses each on the grid, and every other key that the grid
 *  knows, so that nothing stands here that is not so and nothing is missing. */
export interface KeyLine {
  /** `Ctrl+Shift+End`; several do the same. */
  readonly keys: readonly string[];
  readonly says: string;
  /** What the grid reads in them; absent for keys of other parts of the page. */
  readonly wish?: KeyWish['type'];
}

export interface KeyGroup {
  readonly name: string;
  readonly lines: readonly KeyLine[];
}

const arrows = ['↑', '↓', '←', '→'];
const withArrows = (held: string) => arrows.map((arrow) => `${held}${arrow}`);

export const keyGroups: readonly KeyGroup[] = [
  {
    name: 'To go about a sheet',
    lines: [
      { keys: arrows, says: 'one cell on', wish: 'go' },
      { keys: withArrows('Ctrl+'), says: 'to the end of what is filled', wish: 'go' },
      { keys: ['Home', 'End'], says: 'to the first or the last cell of the row', wish: 'go' },
      { keys: ['Ctrl+Home', 'Ctrl+End'], says: 'to the first or the last cell of the sheet', wish: 'go' },
      { keys: ['PageUp', 'PageDown'], says: 'as far up or down as the window shows', wish: 'go' },
      { keys: ['Tab', 'Shift+Tab'], says: 'along the row, and out of the sheet at its ends', wish: 'go' },
      { keys: ['Tab', 'Shift+Tab'], says: 'round the cells that are selected' },
      {
        keys: ['Escape', 'Shift+Escape'],
        says: 'the next Tab leaves the sheet; lets go of what was cut',
        wish: 'step_out',
      },
    ],
  },
  {
    name: 'To select',
    lines: [
      { keys: withArrows('Shift+'), says: 'one cell more or less', wish: 'reach' },
      { keys: withArrows('Ctrl+Shift+'), says: 'to the end of what is filled', wish: 'reach' },
      { keys: ['Shift+Home', 'Shift+End'], says: 'to the first or the last cell of the row', wish: 'reach' },
      {
        keys: ['Ctrl+Shift+Home', 'Ctrl+Shift+End'],
        says: 'to the first or the last cell of the sheet',
        wish: 'reach',
      },
      {
        keys: ['Shift+PageUp', 'Shift+PageDown'],
        says: 'as far up or down as the window shows',
        wish: 'reach',
      },
      { keys: ['Shift+Space'], says: 'the whole row', wish: 'take_lines' },
      { keys: ['Ctrl+Space', 'Ctrl+Shift+Space'], says: 'the whole column', wish: 'take_lines' },
      { keys: ['Ctrl+A'], says: 'all that is filled', wish: 'take_all' },
    ],
  },
  {
    name: 'To change cells',
    lines: [
      { keys: ['Enter', 'Shift+Enter', 'F2', 'Shift+F2'], says: 'opens the cell', wish: 'edit' },
      {
        keys: ['Delete', 'Backspace', 'Shift+Delete', 'Shift+Backspace'],
        says: 'empties what is selected, and gives up what waits there',
        wish: 'clear',
      },
      { keys: ['Ctrl+D'], says: 'fills down from the first row of the selection', wish: 'fill' },
      { keys: ['Ctrl+R'], says: 'fills right from the first column of the selection', wish: 'fill' },
      { keys: ['Ctrl+C', 'Ctrl+X', 'Ctrl+V'], says: 'copies, cuts, pastes' },
      { keys: ['Ctrl+Shift+V'], says: 'pastes values only' },
      { keys: ['F9'], says: 'says what the cells are, in Working', wish: 'dress' },
      { keys: ['Shift+F9'], says: 'writes their note, in Working', wish: 'dress' },
    ],
  },
  {
    name: 'Rows and columns',
    lines: [
      {
        keys: ['Ctrl++', 'Ctrl+Shift++'],
        says: 'puts in as many as are selected whole',
        wish: 'insert_lines',
      },
      {
        keys: ['Ctrl+-', 'Ctrl+Shift+-', 'Ctrl+_', 'Ctrl+Shift+_'],
        says: 'takes out those that are selected whole',
        wish: 'remove_lines',
      },
      {
        keys: ['Alt+↑', 'Alt+↓', 'Alt+←', 'Alt+→'],
        says: 'moves rows or columns that are selected whole',
        wish: 'move_lines',
      },
      {
        keys: ['Alt+Shift+↓'],
        says: 'puts in a line like this one, in every table that follows',
        wish: 'put_in_line',
      },
      { keys: ['Alt+Shift+→', 'Alt+Shift+←'], says: 'makes the columns wider or narrower', wish: 'resize' },
      {
        keys: ['Shift+F10', 'Menu', 'Shift+Menu', 'Ctrl+Menu', 'Ctrl+Shift+Menu', 'Ctrl+Shift+F10'],
        says: 'opens what can be done to the cells, their rows and columns',
        wish: 'menu',
      },
    ],
  },
  {
    name: 'While a cell is open',
    lines: [
      {
        keys: ['Enter', 'Shift+Enter'],
        says: 'takes the entry and goes down or up; pressed once more, leaves a refused one waiting',
      },
      { keys: ['Tab', 'Shift+Tab'], says: 'takes the entry, or a completion, and goes right or left' },
      { keys: ['Escape'], says: 'closes the list of completions; then gives the entry up' },
      { keys: ['↑', '↓'], says: 'walk the choices or the completions' },
      { keys: ['Ctrl+Space'], says: 'asks for completions of a formula' },
      { keys: arrows, says: 'pick a cell where a formula waits for one' },
      { keys: ['F8'], says: 'holds the picked cell: in its row, its column, both, or neither' },
    ],
  },
  {
    name: 'On the name of a sheet',
    lines: [
      { keys: ['F2'], says: 'renames it' },
      { keys: ['Alt+↑', 'Alt+↓'], says: 'moves it up or down' },
      { keys: ['Delete'], says: 'takes it out' },
      { keys: ['Shift+F10', 'Menu'], says: 'opens what can be done to it' },
    ],
  },
  {
    name: 'On the allowances, side by side',
    lines: [
      { keys: ['Ctrl+Enter'], says: 'from any field to keeping or putting back what is tried' },
      { keys: ['←', '→'], says: 'read the plot figure by figure' },
    ],
  },
  {
    name: 'Anywhere',
    lines: [
      {
        keys: ['Alt+PageUp', 'Alt+PageDown'],
        says: 'goes to the sheet before or after; a formula comes along',
      },
      { keys: ['Ctrl+Z'], says: 'takes the last deed back' },
      { keys: ['Ctrl+Y', 'Ctrl+Shift+Z'], says: 'does it again' },
      { keys: ['Ctrl+F', 'Ctrl+H'], says: 'finds, and puts something else in its place' },
      { keys: ['Ctrl+G'], says: 'goes to a name or an address' },
    ],
  },
];
