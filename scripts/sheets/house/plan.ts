import { table } from '../table.ts';

/** One blower with its own trunk. */
export interface System {
  readonly name: string;
  /** What its names begin with, so that `down_friction_rate` stands beside `up_friction_rate`. */
  readonly prefix: string;
  /** Where its ducts hang before somebody says otherwise. */
  readonly place: string;
  readonly airflow: number;
  readonly measured: number;
  readonly fittings: number;
}

/** What one kind of house is made of. */
export interface Plan {
  readonly systems: readonly System[];
  /** The rooms that only some houses of this kind have: `bonus room`. */
  readonly extra: string;
}

export const rooms = table({
  sheet: 'Rooms',
  first: 2,
  count: 16,
  columns: [
    'room',
    'load',
    'branches',
    'length',
    'section',
    'airflow',
    'flex',
    'check',
    'each',
    'velocity',
    'own',
    'only',
    'counts',
    'system',
  ],
});

export const branches = table({
  sheet: 'Branches',
  first: 2,
  count: 16,
  columns: ['room', 'flex', 'branches', 'each', 'bought', 'tape', 'screws', 'facing', 'hangers'],
});

export const trunk = table({
  sheet: 'Trunk',
  first: 2,
  count: 8,
  columns: [
    'mark',
    'fed',
    'length',
    'airflow',
    'made_width',
    'made_depth',
    'check',
    'velocity',
    'round',
    'shape',
    'width',
    'depth',
    'gauge',
    'system',
  ],
});

export const blanks = table({
  sheet: 'Blanks',
  first: 2,
  count: 8,
  columns: [
    'mark',
    'across',
    'cut',
    'blanks',
    'fit',
    'sheets',
    'gauge',
    'shape',
    'width',
    'depth',
    'length',
    'sections',
    'weight',
  ],
});

export const gauges = table({
  sheet: 'Blanks',
  first: blanks.last + 4,
  count: 4,
  columns: ['item', 'gauge', 'sheets', 'blanks', 'weight'],
});

export const wraps = table({
  sheet: 'Wrap',
  first: 2,
  count: 8,
  columns: ['mark', 'around', 'cut', 'pieces', 'left', 'check', 'area'],
});

export const seals = table({
  sheet: 'Seal and hang',
  first: 2,
  count: 8,
  columns: [
    'mark',
    'joints',
    'joint_seal',
    'seam_seal',
    'tap_seal',
    'facing',
    'screws',
    'staples',
    'pins',
    'hangers',
    'strap',
    'steps',
    'caps',
  ],
});

/** So many diameters of flex on one order. */
export const flexCount = 6;

/** A figure of the system that a line belongs to; `system` is the cell that names it. */
export function ofSystem(plan: Plan, system: string, name: string): string {
  const [first, second] = plan.systems;
  if (!first) throw new Error('A house has at least one system.');
  if (!second) return first.prefix + name;
  return `IF(${system}="${first.name}",${first.prefix}${name},${second.prefix}${name})`;
}

/** Whether flex hangs on a system whose ducts need more R than the flex has. */
export function flexIsUnderCode({ systems }: Plan): string {
  const each = systems.map(({ prefix }) => `AND(${prefix}rooms_served>0,flex_r<${prefix}needed_r)`);
  return `OR(${each.join(',')})`;
}

/** A formula that stays blank while a cell is. */
export function unlessBlank(cell: string, formula: string): string {
  return `IF(${cell}="","",${formula})`;
}
