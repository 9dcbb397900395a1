import { assertNever } from '../base/outcome.ts';
import { inches } from '../base/quantity.ts';
import { type Unit, units } from '../base/unit.ts';
import type { TradeFault } from '../trade/fault.ts';
import type { TapeFault } from '../trade/tape/fault.ts';
import type { CallFault } from './fault.ts';
import { article, figure, quoted, sayCount, sayCut, sayInches, sayList, sayValue } from './say.ts';

/** A fault in words: what came, what is allowed and why, what to do. Full sentences, ready to show. */
export function wordFault(fault: CallFault): string {
  switch (fault.code) {
    case 'missing':
      return `The ${plain(fault.argument)} is missing. It is ${fault.says}; fill it in.`;
    case 'too_many':
      return `This function got ${fault.got} values but takes at most ${fault.allowed}. Take out the last ones, or look for a stray comma.`;
    case 'argument_in_fault':
      return `The ${plain(fault.argument)} has no value yet. ${fault.fault.sentence}`;
    case 'not_a_number':
      return `The ${plain(fault.argument)} is ${quoted(fault.got)}, which is not a number. It must be ${article(units[fault.unit].says)}. ${numberAdvice(fault.unit)}`;
    case 'not_whole':
      return `The ${plain(fault.argument)} is ${figure(fault.got)}, but it counts whole things. Type a whole number.`;
    case 'out_of_range': {
      const limits = `${sayValue(fault.least, fault.unit)} to ${sayValue(fault.most, fault.unit)}`;
      return `The ${plain(fault.argument)} is ${closed(sayValue(fault.got, fault.unit))} It must be ${limits}, because ${fault.why}. Check the number and its unit.`;
    }
    case 'not_a_choice':
      return `The ${plain(fault.argument)} is ${quoted(fault.got)}. It must be ${sayList(fault.choices.map(choiceText))}. Choose one of these.`;
    case 'not_a_text':
      return `The ${plain(fault.argument)} is a yes or no, but it must be a text. Put the text in quotes, or point to a cell that holds it.`;
    case 'too_long':
      return `The ${plain(fault.argument)} has ${fault.got} characters; at most ${fault.most} are taken. Shorten it.`;
    case 'not_a_table':
      return `The ${plain(fault.argument)} must be a table with a heading row that has ${sayList(fault.columns, 'and')}. Point to the whole table, headings included.`;
    case 'a_table_for_one_value':
      return `The ${plain(fault.argument)} is a block of cells, but one value is wanted. Point to a single cell.`;
    case 'no_column':
      return `The table ${quoted(fault.argument)} has no column ${quoted(fault.column)}; its headings are ${sayList(fault.columns, 'and')}. Add that column, or point to the right table.`;
    case 'no_row':
      return `The table ${quoted(fault.argument)} has no row ${quoted(fault.key)}; its rows are ${sayList(fault.keys, 'and')}. Choose one of them, or add a row.`;
    case 'two_rows':
      return `The table ${quoted(fault.argument)} has more than one row ${quoted(fault.key)}, so nobody can tell which one counts. Give each row its own name.`;
    case 'bad_table_cell':
      return `In the table ${quoted(fault.argument)}, row ${quoted(fault.key)}, the column ${quoted(fault.column)} holds ${quoted(fault.got)}. It must be ${article(fault.allowed)}. Correct that cell.`;
    case 'unlike_lists':
      return `The block of ${plain(fault.argument)} has ${sayCount(fault.got, 'cell')}, but ${figure(fault.wanted)} belong together, one to each row. Point to the same rows in each column.`;
    case 'half_a_row':
      return `Row ${figure(fault.row)} has pieces but nothing in the ${plain(fault.argument)}. Fill that cell in, or make the pieces 0.`;
    case 'half_a_pair':
      return `Row ${figure(fault.row)} has something in the ${plain(fault.has)} but nothing in the ${plain(fault.lacks)}. Fill that cell in, or clear the row.`;
    case 'trade':
      return wordTradeFault(fault.fault);
    default:
      return assertNever(fault);
  }
}

export function wordTradeFault(fault: TradeFault): string {
  switch (fault.code) {
    case 'needs_depth':
      return `A ${fault.shape} duct needs its depth as well as its width. Fill in the depth, or make the shape round.`;
    case 'depth_on_round':
      return `A round duct has no depth, but there is one of ${sayValue(fault.depth, 'in')} beside a diameter of ${sayValue(fault.diameter, 'in')}. Clear the depth, or make the shape rectangular.`;
    case 'no_published_row':
      return `The ${fault.table} has no row for ${figure(fault.got)}; its rows are ${sayList(
        fault.rows.map((row) => figure(row)),
        'and',
      )}. Nothing is guessed between rows: use the method "geometry", or the shop's own figure.`;
    case 'no_shop_figure':
      return `The row of ${quoted(fault.wrap)} has nothing in ${quoted(fault.column)}, so the shop has no figure of its own for this shape. Fill that cell in, or use another method.`;
    case 'no_roll_size':
      return `The row of ${quoted(fault.wrap)} has nothing in ${quoted(fault.column)}, so the pieces and rolls of it cannot be told. Fill that cell in.`;
    case 'installed_over_thickness':
      return `${quoted(fault.wrap)} is said to be ${sayValue(fault.installed, 'in')} thick when installed, but only ${sayValue(fault.thickness, 'in')} out of the package. Wrap does not grow: correct one of the two in its row.`;
    case 'no_squeeze_figures':
      return `The R figures of ${quoted(fault.wrap)} (${figure(fault.labelR)} out of the package, ${figure(fault.installedR)} installed) do not tell what squeezing costs. The installed R must be the lower one and belong to a smaller thickness: correct its row.`;
    case 'cut_too_short':
      return `A cut of ${sayValue(fault.cut, 'in')} does not go round: the bare duct is ${figure(fault.perimeter, 2)} in round and the lap takes ${sayValue(fault.lap, 'in')}. Cut longer than ${sayInches(inches(fault.perimeter + fault.lap))}.`;
    case 'squeezed_past_half':
      return `This cut would squeeze the wrap to ${figure(fault.left, 2)} in, less than half of its ${sayValue(fault.thickness, 'in')}. No R is published for that, and cold metal would sweat. Cut at least ${sayCut(fault.leastCut)}.`;
    case 'left_over_thickness':
      return `${quoted(fault.wrap)} is ${sayValue(fault.thickness, 'in')} thick out of the package, so it cannot be ${sayValue(fault.left, 'in')} thick on the duct. Correct the thickness, or name another wrap.`;
    case 'left_under_half':
      return `${quoted(fault.wrap)} would be squeezed from ${sayValue(fault.thickness, 'in')} to ${sayValue(fault.left, 'in')}, less than half. No R is published for that, and cold metal would sweat. Leave at least ${sayValue(inches(fault.thickness / 2), 'in')}.`;
    case 'past_the_fit':
      return `The wrap would have ${figure(fault.density, 2)} lb/cu ft on the duct, and its conductivity is known from ${figure(fault.least)} to ${figure(fault.most)} lb/cu ft only. Correct the density, or use the method "two figures".`;
    case 'needs_density':
      return 'The method "density" needs the density of the wrap out of its package, as the data sheet prints it. Fill it in, or use the method "two figures".';
    case 'no_wrap_so_thick':
      return `Nothing under ${figure(fault.thickness, 1)} in of wrap would stay dry, and none is thicker than ${sayValue(fault.most, 'in')}. The air around is too humid for so cold a duct: dry that air, move the duct, or run it warmer.`;
    case 'no_code_row':
      return `Of ${quoted(fault.table)} no row is held for ${fault.what}; held are ${sayList(
        fault.rows.map((row) => quoted(row)),
        'and',
      )}. Nothing is guessed beside them: ask which code is law where the duct will hang, and type its figure into the cell.`;
    case 'needs_for_table':
      return fault.what === 'zone'
        ? `For this place ${quoted(fault.table)} goes by the climate zone, 1 to 8. Fill the zone in; the code has a map of them.`
        : `For this place ${quoted(fault.table)} goes by the difference between the air in the duct and its surroundings. Fill the difference in.`;
    case 'flange_over_roll':
      return `A flange of ${sayValue(fault.flange, 'in')} leaves nothing of a roll ${sayValue(fault.rollWidth, 'in')} wide to cover the duct. Make the flange 0 when it is extra to the roll width, or correct the width in the wrap's row.`;
    case 'piece_longer_than_roll':
      return `A piece of ${sayCut(fault.cut)} is longer than a whole roll of ${sayValue(fault.rollLength, 'in')}, and no piece is joined from the ends of two rolls unasked. Use a longer roll, or plan a second seam: give two shorter cuts, each with its own lap.`;
    case 'tap_wider_than_trunk':
      return `A tap ${sayValue(fault.across, 'in')} across does not fit on a round trunk of ${sayValue(fault.trunk, 'in')}. Take a smaller tap or a larger trunk; for the flat side of a rectangular trunk leave the trunk diameter blank.`;
    case 'no_such_part':
      return `Made as ${quoted(fault.make)}, the duct has one kind of blank, so there is no part ${fault.part}. Use part 1.`;
    case 'no_taper':
      return `The ends are ${sayValue(fault.first, 'in')} and ${sayValue(fault.second, 'in')}, which is no taper but a straight pipe. Lay it out as a pipe, or correct one of the two.`;
    case 'too_few_divisions':
      return `With ${fault.got} divisions the steps are too coarse for so short a fitting. Choose more divisions, or step off chords.`;
    case 'radius_inside_elbow':
      return `A radius of ${sayValue(fault.radius, 'in')} to the middle of the elbow would cross itself in the throat. Take ${sayInches(fault.least)} or more.`;
    case 'too_few_gores':
      return `An elbow of ${figure(fault.angle)}° in ${sayCount(fault.pieces, 'piece')} would need a joint that turns more than 90°. Take ${fault.least} pieces or more.`;
    case 'tap_past_the_trunk':
      return `The branch reaches ${sayValue(fault.reach, 'in')} from the middle of the trunk, past its wall at ${sayValue(fault.trunkRadius, 'in')}. Take a smaller branch, a larger trunk or less off center; for a flat wall leave the trunk blank.`;
    case 'no_such_piece':
      return `There is no part ${fault.part} in this fitting; its pieces are ${sayList(fault.parts, 'and')}. Choose one of these.`;
    case 'miter_too_sharp':
      return `A miter of ${sayValue(fault.angle, 'deg')} runs to a point far from the duct; at most ${sayValue(fault.most, 'deg')} can be laid out. Use the form "radius", or two elbows.`;
    case 'throat_flanges_meet': {
      // Near a half turn no straight end is long enough to be worth naming.
      const longer =
        fault.least > 24
          ? 'Leave one end out'
          : `Make both ends at least ${sayCut(fault.least)} long or leave one out`;
      return `In so tight a throat the flanges of ${sayValue(fault.flange, 'in')} on the two straight ends would lie over each other. ${longer}, take a narrower flange, or give the throat a radius.`;
    }
    case 'radius_on_miter':
      return `A mitered elbow has a sharp throat, but there is a throat radius of ${sayValue(fault.radius, 'in')}. Clear it, or use the form "radius".`;
    case 'offset_needs':
      return fault.form === 'angled'
        ? `An angled offset needs its length or the angle of its two elbows. Fill in one of them.`
        : `The form ${quoted(fault.form)} needs the length of the offset along the duct. Fill it in.`;
    case 'offset_has_angle':
      return `The form ${quoted(fault.form)} is laid out by its length, so an angle has no place in it. Clear the angle, or use the form "angled".`;
    case 'offset_has_both':
      return `Length (${sayValue(fault.length, 'in')}) and angle (${sayValue(fault.angle, 'deg')}) are both given, and either follows from the other. Clear one of them.`;
    case 'offset_too_tight':
      return `In ${sayValue(fault.length, 'in')} the duct cannot sweep over: its inner arc would have no radius. Make it at least ${sayCut(fault.least)} long, or use the form "angled".`;
    case 'pattern_over_itself':
      return `Laid flat, the ${fault.piece} would run over itself. Make it in more pieces, or with narrower seams and edges.`;
    case 'boot_too_low':
      return `The middle of the round end stands ${sayValue(fault.height, 'in')} high, so the pipe would reach into the plane of the rectangle. Put it higher than ${sayCut(fault.least)}, or turn it less.`;
    case 'opening_past_wall':
      return `The opening ${quoted(fault.opening)} does not lie within the ${fault.wall}, which is ${sayInches(fault.width)} wide and ${sayInches(fault.height)} high, or there is no such wall. Its middle must lie at least half its size from every edge: move or shrink it.`;
    case 'no_such_station':
      return `The ${fault.piece} has ${fault.most} ${fault.what}s, so there is no ${fault.what} ${fault.got}. Take a station from 1 to ${fault.most}; the working lists them.`;
    case 'no_gauge_row':
      return `There are no figures for ${figure(fault.got)} ga ${fault.material}; there are for ${sayList(fault.gauges, 'and')}. Choose one of these, or work with the mill's own thickness and weight.`;
    case 'no_minimum_sheet':
      return `Minimum figures are held for galvanized sheet only, not for ${fault.material}. Use "nominal", or the mill's own figure.`;
    case 'past_the_table': {
      const unit = fault.what === 'size' ? 'in' : 'inwg';
      return `The ${fault.table} table ends at a ${fault.what} of ${sayValue(fault.most, unit)}, and this duct has ${sayValue(fault.got, unit)}. Nothing is guessed past its end: there the contractors’ duct standard applies, so take the row from your own copy of it.`;
    }
    case 'not_in_the_table':
      return `The ${fault.table} tells nothing of ${fault.what}. Choose another table, or take the row from your own copy of the duct standard.`;
    case 'no_least_gauge':
      return `The table gives ${fault.metal} sheet in inches, not by gauge: at least ${figure(fault.thickness, 4)} in. Ask for "thickness", and order by decimals.`;
    case 'width_not_duct':
      return `At a depth of ${sayValue(fault.depth, 'in')} the friction of a ${figure(fault.diameter, 2)} in round duct would take a width of ${figure(fault.width, 2)} in, and shop duct is ${sayValue(fault.least, 'in')} to ${sayValue(fault.most, 'in')} wide. Choose another depth.`;
    case 'air_too_fast':
      return `${figure(fault.airflow, 0)} cfm would move at ${figure(fault.velocity, 0)} fpm, and air in duct stays under ${figure(fault.most)} fpm. Check the airflow, the friction rate and the size of the duct.`;
    case 'no_elbow_row':
      return `The table has no ${fault.make === 'smooth' ? 'smooth elbow' : `elbow of ${fault.make}`} with a radius of ${figure(fault.got)} diameters; it has ${sayList(fault.ratios, 'and')}. Choose one of these, or type a coefficient of your own into AIR.LOSS.`;
    case 'no_rectangular_elbow_row':
      return fault.aspects.length === 0
        ? `The tables have no rectangular elbow, ${quoted(fault.make)}, with a radius ratio of ${figure(fault.ratio)}; they have ${sayList(fault.ratios, 'and')}. Choose one of these, or type a coefficient of your own into AIR.LOSS.`
        : `At a radius ratio of ${figure(fault.ratio)} the tables have a depth of ${sayList(fault.aspects, 'and')} times the width, not of ${figure(fault.aspect)}. Choose one of these, or type a coefficient of your own into AIR.LOSS.`;
    case 'branch_over_main':
      return `The ${fault.what} of the branch is ${sayValue(fault.branch, fault.what === 'airflow' ? 'cfm' : 'in')}, more than the ${sayValue(fault.main, fault.what === 'airflow' ? 'cfm' : 'in')} of the main before it. Correct one of the two, or see whether they have changed places.`;
    case 'not_larger':
      return `The duct is said to open from ${sayValue(fault.small, 'in')} to ${sayValue(fault.large, 'in')}, which is smaller. For a step down use the coefficient of a reducer; for a step up change the two round.`;
    case 'longer_than_stretched':
      return `The flex is said to lie ${sayValue(fault.installed, 'ft')} long, but it measures only ${sayValue(fault.stretched, 'ft')} at full stretch. Correct one of the two, or see whether they have changed places.`;
    case 'no_flex_row':
      return `The makers’ guide tells of ${sayList(
        fault.rows.map((row) => `${figure(100 * row)} %`),
        'and',
      )} compression only, not of ${figure(100 * fault.got)} %. Nothing is guessed in between: take one of these, or the rule "equation".`;
    case 'no_pressure_left':
      return `The parts that are not duct take ${figure(fault.losses, 4)} in. w.g. of the ${figure(fault.external, 4)} in. w.g. that the fan gives, so nothing is left for the duct. Look for a part with less loss or a stronger fan, or for one that is counted twice.`;
    case 'room_over_house':
      return `The room has a load of ${sayValue(fault.room, 'btuh')}, more than the ${sayValue(fault.house, 'btuh')} of the whole house. Correct one of the two, or see whether they have changed places.`;
    case 'no_leakage_class':
      return `The table of ${fault.edition} gives no class for ${fault.shape} duct that is ${fault.seal === 'unsealed' ? 'unsealed' : `sealed to ${quoted(fault.seal)}`}. Choose another sealing or edition, or type a class of your own into AIR.LEAKAGE.`;
    case 'no_such_hanger':
      return `The run hangs on ${sayCount(fault.hangers, 'hanger')}, so there is no number ${figure(fault.number)}. Ask for a lower number.`;
    case 'no_hanger_row':
      return `The table of hangers has no row for a ${fault.shape} duct of ${sayValue(fault.size, 'in')} ${fault.shape === 'round' ? 'across' : 'half way round'} at ${sayValue(fault.spacing, 'in')} between hangers. Nothing is guessed past its end: hang it closer, or add the row from your own copy of the duct standard.`;
    case 'no_hanger_figure':
      return `The row ${quoted(fault.row)} of the hangers has nothing in ${quoted(plain(fault.column))}. Fill that cell in, or ask for another part of the hanger.`;
    case 'hanger_not_for_shape':
      return `A hanger ${quoted(fault.hanger)} does not fit a ${fault.shape} duct. Choose ${fault.shape === 'round' ? '"half round", "full round" or "trapeze"' : '"pair", "cradle" or "trapeze"'}.`;
    case 'drop_too_short':
      return `A drop of ${sayValue(fault.drop, 'in')} leaves no room above the duct and its wrap: it must be at least ${sayCut(fault.least)}. Correct the drop, or say whether it goes to the top or to the middle of the duct.`;
    case 'too_heavy':
      return `${figure(fault.load, 1)} lb is more than anything in the table may carry; its strongest row takes ${figure(fault.most, 1)} lb. Hang the duct closer, share the load between more straps, or add a stronger row from your own copy of the duct standard.`;
    case 'no_labor_unit':
      return fault.hasBoth
        ? `${quoted(fault.work)} has hours for each and a number in an hour, so nobody can tell which one counts. Clear one of the two cells.`
        : `${quoted(fault.work)} has no labor unit. Fill in the hours for each, or how many are done in an hour.`;
    case 'productive_over_paid':
      return `${figure(fault.productive)} productive hours are more than the ${figure(fault.paid)} that are paid. Correct one of the two, or see whether they have changed places.`;
    case 'not_a_length':
      return `${quoted(fault.text)} cannot be read as a length. ${wordTapeFault(fault.text, fault.fault)}`;
    default:
      return assertNever(fault);
  }
}

/** Why a typed text is no length, where the trouble is, and what to type instead. */
export function wordTapeFault(text: string, fault: TapeFault): string {
  const at = 'at' in fault ? `${placeIn(text, fault.at)}: ` : '';
  switch (fault.code) {
    case 'nothing_typed':
      return `Nothing was typed. Type a length, such as 12' 4 1/2" or 41 3/8.`;
    case 'too_long':
      return `The text has ${fault.got} characters; a length needs at most ${fault.most}. Type only the length.`;
    case 'unknown_sign':
      return `${at}${quoted(fault.got)} has no meaning in a length. Use digits, fractions, ' or ft, " or in, mm, cm or m.`;
    case 'comma':
      return `${at}a comma may mean two things. Use a point: ${fault.instead}.`;
    case 'number_expected':
      return fault.got === ''
        ? `${at}a number is missing. Type it, such as 12' 4 1/2".`
        : `${at}a number should stand before ${quoted(fault.got)}. Type it, such as 12' 4 1/2".`;
    case 'half_a_fraction':
      return `${at}the fraction has no lower number. Finish it, such as 3/8.`;
    case 'over_zero':
      return `${at}nothing can be divided by zero. Correct the lower number of ${fault.got}.`;
    case 'point_and_fraction':
      return `${at}a point and a fraction do not go together. Type either 12.5 or 12 1/2.`;
    case 'fraction_of_one_or_more':
      return `${at}the fraction ${fault.got} is an inch or more, which looks like a slip. If it is meant, type ${fault.instead}.`;
    case 'part_of_a_foot':
      return `${at}feet with a part of a foot leave no room for inches. Type whole feet and then the inches, such as 12' 6".`;
    case 'unit_twice':
      return `${at}${fault.unit === 'ft' ? 'feet are' : `${fault.unit} is`} given twice. Perhaps ${fault.instead} is meant.`;
    case 'inches_before_feet':
      return `${at}feet stand after inches. Type the feet first, such as 12' 4".`;
    case 'mixed_systems':
      return `${at}one length is written in one system only. Type feet and inches, or a single number with mm, cm or m.`;
    case 'one_number_too_many':
      return `${at}${quoted(fault.got)} is one number too many. Mark the feet, such as 14' 6, or take it out.`;
    default:
      return assertNever(fault);
  }
}

function placeIn(text: string, at: number): string {
  return at >= text.trimEnd().length ? 'At the end' : `At character ${at + 1}`;
}

function numberAdvice(unit: Unit): string {
  if (unit === 'in' || unit === 'ft') return 'For a length written as text use TAPE.READ.';
  return 'Type digits only, without the unit.';
}

/** Ends a sentence, once only: `10 in. w.g.` ends in a point already. */
function closed(sentence: string): string {
  return sentence.endsWith('.') ? sentence : `${sentence}.`;
}

function plain(argument: string): string {
  return argument.replaceAll('_', ' ');
}

function choiceText(choice: string | number): string {
  return typeof choice === 'string' ? `"${choice}"` : String(choice);
}
