import type { SingleAllowance } from './fields.ts';

/** What single allowances are for, by their names in formulas, in the order of the work. */
const groups = {
  wrap: ['lap', 'corners', 'wrap_flange', 'r_short', 'wrap_ease', 'dry_margin'],
  'seams and joints': [
    'seam_round',
    'measured',
    'round_seam',
    'round_joint',
    'made',
    'square_seam',
    'pocket',
    'flange',
    'joint_allowance',
    'end_joints',
    'gore_pieces',
    'single_edge',
    'double_edge',
    'round_collar',
    'reducer_end',
    'neck',
    'square_end',
    'round_end',
    'cap_flange',
    'disc_flange',
    'top_edge',
    'bottom_edge',
    'lid_edge',
    'boot_height',
    'boot_seam',
    'boot_square_end',
    'boot_round_end',
    'cross_break_over',
  ],
  'taps and holes': ['tap_tabs', 'tap_end', 'tap_shortest', 'tap_edge', 'hole_ease'],
  stock: ['fraction', 'section_length', 'sheet_width', 'sheet_length', 'flex_bag', 'flex_box', 'strap_roll'],
  'fasteners and sealants': [
    'sealed_with',
    'mastic_band',
    'mastic_film',
    'mastic_pail',
    'tape_roll',
    'facing_roll',
    'facing_ends',
    'tap_rings',
    'tap_joints',
    'tap_screw_spacing',
    'screw_spacing',
    'screw_box',
    'staple_spacing',
    'staple_box',
    'pins_from',
    'pin_spacing',
    'pin_box',
    'flex_ties',
    'tie_bag',
    'seal_a_from',
    'seal_b_from',
    'seal_c_from',
  ],
  hangers: ['hang_spacing', 'hang_drop', 'flex_spacing', 'flex_strap'],
  'air and leakage': [
    'rate_low',
    'rate_high',
    'air_apart',
    'trunk_speed',
    'flex_speed',
    'round_step',
    'width_step',
    'smallest_side',
    'aspect_most',
    'smallest_flex',
    'flex_step',
    'flex_roughness',
    'flex_slack',
    'flex_look',
    'drop_look',
    'drop_stop',
    'filter_drop_look',
    'filter_look',
    'filter_stop',
    'grille_look',
    'leak_look',
    'leak_stop',
    'test_exponent',
  ],
  'labor and price': [
    'wage',
    'burden',
    'difficulty',
    'overhead_rate',
    'margin',
    'least_margin',
    'taxed',
    'tax_rate',
  ],
  waste: ['wrap_waste', 'tape_waste', 'fastener_waste', 'fitting_waste', 'flex_waste', 'material_waste'],
} as const;

/** What a shop has named itself. */
export const ungrouped = 'others';

const groupOf = new Map<string, string>(
  Object.entries(groups).flatMap(([group, names]) => names.map((name) => [name, group] as const)),
);

/** The single allowances by what they are for; each group that has any, its own in the order of the sheet. A copy (`lap_2`)
 *  stays with what it is a copy of. */
export function groupedSingles(
  singles: readonly SingleAllowance[],
): readonly { readonly group: string; readonly singles: readonly SingleAllowance[] }[] {
  const named = (name: string) =>
    groupOf.get(name.toLowerCase()) ?? groupOf.get(name.toLowerCase().replace(/_\d+$/, '')) ?? ungrouped;
  return [...Object.keys(groups), ungrouped].flatMap((group) => {
    const own = singles.filter(({ name }) => named(name) === group);
    return own.length === 0 ? [] : [{ group, singles: own }];
  });
}
