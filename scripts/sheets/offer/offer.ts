import { check, count, dollars, figured, given, heading, onBelow, words } from '../cells.ts';
import { emptyLine, type Form, form, type Line, line, namedLine } from '../form.ts';
import { cautions } from '../head.ts';
import { things } from './lists.ts';
import { mayGoOut, toPay } from './price.ts';

export const jobForm: Form = form({
  id: 'job',
  name: 'Job',
  says: 'Say whom the offer is for and what the two choices are; then list things and work, and read the price.',
  widths: [18, 24, 30],
  lines: [
    line(heading('This job'), null, heading('Before you send it')),
    line(
      words('Job'),
      given({ asks: 'What is this job called, such as the street and lot?' }),
      words('Measure before you promise: a plan is not the house.', onBelow),
    ),
    line(
      words('Address'),
      given({ asks: 'Where is the house?', mayBeBlank: true }),
      words('Say what is not in the price as plainly as what is.', onBelow),
    ),
    line(
      words('Shop'),
      given({ asks: 'Which shop makes the offer?', mayBeBlank: true }),
      words('A margin is a share of the price, not of the cost.', onBelow),
    ),
    line(
      words('Date'),
      given({ asks: 'Of which day is the offer? Any way of writing it will do.', mayBeBlank: true }),
      words('Ask the state which tax is due, and on what.', onBelow),
    ),
    line(
      words('Who figures it'),
      given({ asks: 'Who figures this offer?', mayBeBlank: true }),
      words(cautions.localCode, onBelow),
    ),
    emptyLine,
    line(heading('The two choices'), null, null),
    namedLine(
      'customer',
      words('Offered to'),
      given({ asks: 'Whom is the offer for?', mayBeBlank: true }),
      words('as it shall stand on the offer'),
    ),
    namedLine(
      'first_choice',
      words('First choice'),
      given({ asks: 'What is the first choice, in a few words?', usual: 'Round trunk, R-6' }),
      words('such as: round trunk, R-6', onBelow),
    ),
    namedLine(
      'second_choice',
      words('Second choice'),
      given({ asks: 'What is the second choice? Leave it blank if there is only one.', mayBeBlank: true }),
      words('such as: round trunk, R-8', onBelow),
    ),
    namedLine(
      'chosen',
      words('Sold is the'),
      given(
        { asks: 'Which choice is sold, or shall be ordered?', choices: ['first', 'second'], usual: 'first' },
        { content: 'first' },
      ),
      words('its things stand on Order'),
    ),
    emptyLine,
    line(heading('How it stands'), null, null),
    line(words('First choice'), figured(toPay.first, dollars), words('to pay')),
    line(words('Second choice'), figured(toPay.second, dollars), words('to pay')),
    line(words('The offer'), check(mayGoOut), words('do not send it while this says stop')),
  ],
});

const written = (asks: string, content: string | null): Line =>
  line(given({ asks, mayBeBlank: true }, { content, ...onBelow }));

const inIt = 'What is in the price? One thing to a line.';
const notInIt = 'What is not in the price? One thing to a line.';

export const offerForm: Form = form({
  id: 'offer',
  name: 'Offer',
  says: 'The page for the customer, in plain words; change the sentences, and print it.',
  widths: [46, 16, 10],
  lines: [
    line({ ...heading('Offer'), style: { bold: true } }, null, null),
    line(figured('IF(customer="","","For "&customer)')),
    line(figured('TEXTJOIN(", ",TRUE,Job!B2,Job!B3)')),
    line(figured('TEXTJOIN(", ",TRUE,Job!B4,Job!B5)')),
    emptyLine,
    line(heading('What we offer'), heading('Price'), null),
    line(
      figured('IF(first_choice="","First choice",first_choice)', onBelow),
      figured(toPay.first, { ...dollars, style: { bold: true } }),
    ),
    line(
      figured('second_choice&""', onBelow),
      figured(`IF(second_choice="","",${toPay.second})`, { ...dollars, style: { bold: true } }),
    ),
    line(
      figured(
        `IF(OR(second_choice="",COUNT(${toPay.first},${toPay.second})<2),"",IF(${toPay.second}>=${toPay.first},"The second costs more by","The second costs less by"))`,
      ),
      figured(`IF(A9="","",ABS(PRICE.COMPARE(${toPay.first},${toPay.second})))`, dollars),
    ),
    line(
      figured(
        'IF(taxed="purchase","The sales tax that we pay on the material is in the price.",IF(taxed="none","No sales tax is in the price.","The sales tax that you pay is in the price."))',
        onBelow,
      ),
    ),
    emptyLine,
    line(heading('In the price'), null, null),
    written(inIt, 'All duct, flex, wrap, tape, screws and hangers for the rooms on the plan.'),
    written(inIt, 'Making the duct in our shop, hanging it, sealing every joint, and wrapping it.'),
    written(inIt, 'Setting the air to each room, with a sheet of what was measured.'),
    written(inIt, null),
    line(heading('Not in the price'), null, null),
    written(notInIt, 'Electrical work, gas and drain lines, drywall and paint.'),
    written(notInIt, 'What the building office charges, unless it is named above.'),
    written(notInIt, null),
    line(heading('How we work'), null, null),
    line(
      words('The price holds for so many days'),
      given(
        {
          asks: 'For how many days does the price hold?',
          least: 1,
          most: 365,
          why: 'no price of metal holds for a year',
          usual: 30,
        },
        { content: 30, ...count },
      ),
    ),
    written(
      'When is what paid?',
      'A third when the metal is ordered, a third when it hangs, the rest when the air is measured.',
    ),
    written(
      'What else is to be said?',
      'We build to the local code; what the inspector asks beyond the plan is priced before it is done.',
    ),
    emptyLine,
    line(
      words('For the shop, day and name'),
      given({ asks: 'Who signs for the shop, and when?', mayBeBlank: true }),
    ),
    line(words('Accepted, day and name'), given({ asks: 'Who accepts it, and when?', mayBeBlank: true })),
    line(words('May it go out?'), check(mayGoOut)),
  ],
});

export const orderForm: Form = form({
  id: 'order',
  name: 'Order',
  says: 'What to buy for the choice that is sold; nothing is to be filled in here.',
  widths: [28, 24, 20],
  lines: [
    line(...['To order', 'How many', 'Of what'].map(heading)),
    line(words('The whole order'), check(mayGoOut), words('do not order while this says stop')),
    ...things.rows.map((row, index) => {
      const amount = `IF(chosen="second",${things.from('second', row)},${things.from('first', row)})`;
      return line(
        figured(`IF(B${index + 3}="","",${things.from('thing', row)})`),
        figured(`IF(OR(${amount}="",${amount}=0),"",${amount})`, count),
        figured(`IF(OR(B${index + 3}="",${things.from('unit', row)}=""),"",${things.from('unit', row)})`),
      );
    }),
  ],
  blocks: { order: `A1:C${things.rows.length + 2}` },
});
