import { exactInches, inches } from '../cells.ts';
import type { Asked, Kind } from './kind.ts';

const degrees = { unit: 'deg', format: { type: 'decimal', places: 2 } } as const;
const size = {
  least: 2,
  most: 120,
  why: 'ducts under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit',
};
const run = {
  least: 1,
  most: 120,
  why: 'a fitting under 1 in or over 10 ft is most likely a slip of the unit',
};
const turn = { least: 5, most: 180, why: 'less is hardly a turn, and more goes back into itself' };

function sized(key: string, heading: string, asks: string, width = 9): Asked {
  return { key, heading, width, question: { asks, ...size }, more: inches };
}

function long(key: string, heading: string, asks: string): Asked {
  return { key, heading, width: 9, question: { asks, ...run }, more: inches };
}

const turns: Asked = {
  key: 'a',
  heading: 'Turns',
  width: 7,
  question: { asks: 'What angle does it turn through? Blank means 90°.', ...turn, usual: 90 },
  more: { unit: 'deg' },
  blank: true,
};

const sides = [sized('w', 'Width', 'How wide is the duct?'), sized('d', 'Depth', 'How deep is the duct?')];

const gore = (what: string, part = '') =>
  `BLANK.GORE({d},IF({a}="",90,{a}),IF({n}="",gore_pieces,{n}),{r},"${what}",,${part},,,seam_round,single_edge,double_edge,round_collar,round_collar)`;
const gores = '(IF({n}="",gore_pieces,{n})-2)';

export const goredElbows: Kind = {
  id: 'gored-elbows',
  sheet: 'Gored elbows',
  says: 'Fill in a line for each round elbow; cut its ends and its gores, and mark them by the ordinates in Working.',
  asks: [
    sized('d', 'Diameter', 'What is its diameter?'),
    turns,
    {
      key: 'n',
      heading: 'Pieces',
      width: 7,
      question: {
        asks: 'Of how many pieces, both ends included? Blank means as on Allowances.',
        least: 2,
        most: 20,
        why: 'two pieces are one miter, and more than twenty are a bend',
      },
      more: { unit: 'count' },
      blank: true,
    },
    {
      key: 'r',
      heading: 'Radius',
      width: 8,
      question: {
        asks: 'What is the radius to its middle? Blank means 1 1/2 diameters.',
        least: 1,
        most: 360,
        why: 'it is a radius of duct',
      },
      more: inches,
      blank: true,
    },
  ],
  dimensions: [
    { heading: 'Half, throat', formula: gore('throat'), more: exactInches },
    { heading: 'Half, heel', formula: gore('heel'), more: exactInches },
    { heading: 'Miter', formula: gore('miter'), more: degrees },
  ],
  parts: [
    { name: 'First end', many: '1', wide: gore('width', '1'), long: gore('length', '1') },
    { name: 'Last end', many: '1', wide: gore('width', '2'), long: gore('length', '2') },
    { name: 'Gore', many: gores, wide: gore('width', '3'), long: gore('length', '3') },
  ],
  looks: [['AND({r}<>"",{r}<{d})', 'look: a radius under the diameter takes more pressure from the air']],
};

const reducer = (what: string) =>
  `IF({k}="off center",BLANK.ECCENTRIC({f},{s},{h},{o},"${what}",,,,1,,seam_round,reducer_end,reducer_end),BLANK.CONE({f},{s},{h},"${what}",,1,seam_round,reducer_end,reducer_end))`;

export const reducers: Kind = {
  id: 'reducers',
  sheet: 'Reducers',
  says: 'Fill in a line for each round reducer, on center or off; blank offset means flat on one side.',
  asks: [
    {
      key: 'k',
      heading: 'Kind',
      width: 12,
      question: {
        asks: 'Is it on center, or off center?',
        choices: ['on center', 'off center'],
        usual: 'on center',
      },
    },
    sized('f', 'First end', 'What is the diameter of its first end?'),
    sized('s', 'Second', 'What is the diameter of its second end?'),
    long('h', 'Length', 'How long is it between its ends?'),
    {
      key: 'o',
      heading: 'Offset',
      width: 8,
      question: {
        asks: 'How far off center is its second end? Blank means flat on one side.',
        least: 0,
        most: 120,
        why: 'it is an offset of duct',
      },
      more: inches,
      blank: true,
    },
  ],
  dimensions: [
    {
      heading: 'Slant',
      formula: `IF({k}="off center","",BLANK.CONE({f},{s},{h},"slant"))`,
      more: exactInches,
    },
    {
      heading: 'Outer radius',
      formula: `IF({k}="off center","",BLANK.CONE({f},{s},{h},"outer radius"))`,
      more: exactInches,
    },
    { heading: 'Angle', formula: reducer('angle'), more: degrees },
  ],
  parts: [{ name: 'Reducer', many: '1', wide: reducer('width'), long: reducer('length') }],
  looks: [
    ['AND({k}="on center",{o}<>"")', 'look: on center, so its offset is not used'],
    ['{h}<ABS({f}-{s})', 'look: short for its change of size; air breaks away from its wall'],
  ],
};

const elbow = (part: string, what: string) =>
  `BLANK.ELBOW({w},{d},IF({a}="",90,{a}),${part},"${what}",,IF({m}="","radius",{m}),{r},neck,neck,pocket,flange)`;

export const elbows: Kind = {
  id: 'elbows',
  sheet: 'Elbows',
  says: 'Fill in a line for each rectangular elbow; it takes two cheeks, a heel and a throat.',
  asks: [
    sized('w', 'Width', 'How wide is the duct across the turn?'),
    sized('d', 'Depth', 'How deep is the duct, which heel and throat are wide?'),
    turns,
    {
      key: 'm',
      heading: 'Form',
      width: 10,
      question: {
        asks: 'With a radius, or mitered? Blank means with a radius.',
        choices: ['radius', 'mitered'],
      },
      blank: true,
    },
    {
      key: 'r',
      heading: 'Throat',
      width: 8,
      question: {
        asks: 'What is the radius of its throat? Blank means 3/4 of the width.',
        least: 0,
        most: 240,
        why: 'it is a radius of duct',
      },
      more: inches,
      blank: true,
    },
  ],
  dimensions: [
    {
      heading: 'Radius used',
      formula: 'IF({m}="mitered","",IF({r}="",0.75*{w},{r}))',
      more: exactInches,
    },
  ],
  parts: [
    { name: 'Cheek', many: '2', wide: elbow('1', 'width'), long: elbow('1', 'length') },
    { name: 'Heel', many: '1', wide: elbow('2', 'width'), long: elbow('2', 'length') },
    { name: 'Throat', many: '1', wide: elbow('3', 'width'), long: elbow('3', 'length') },
  ],
  looks: [
    ['{m}="mitered"', 'look: a mitered elbow takes much pressure unless it gets vanes'],
    ['AND({r}<>"",{r}<{w}/2)', 'look: a throat under half of the width takes much pressure'],
  ],
};

const transition = (part: string, what: string) =>
  `BLANK.TRANSITION({a},{b},{c},{d},{l},${part},"${what}",,IF({x}="","centered",{x}),IF({y}="","centered",{y}),,,neck,neck,pocket,flange)`;

export const transitions: Kind = {
  id: 'transitions',
  sheet: 'Transitions',
  says: 'Fill in a line for each rectangular transition; it takes four panels, each at its true length.',
  asks: [
    sized('a', 'Width', 'How wide is its first end?', 8),
    sized('b', 'Depth', 'How deep is its first end?', 8),
    sized('c', 'To width', 'How wide is its second end?', 9),
    sized('d', 'To depth', 'How deep is its second end?', 9),
    long('l', 'Length', 'How long is it between the ends, without its straight ends?'),
    {
      key: 'x',
      heading: 'Sideways',
      width: 12,
      question: {
        asks: 'How does its second end stand, seen from above? Blank means centered.',
        choices: ['centered', 'flush left', 'flush right'],
      },
      blank: true,
    },
    {
      key: 'y',
      heading: 'Upright',
      width: 13,
      question: {
        asks: 'How does its second end stand, seen from the side? Blank means centered.',
        choices: ['centered', 'flush bottom', 'flush top'],
      },
      blank: true,
    },
  ],
  dimensions: [],
  parts: ['Top', 'Bottom', 'Left', 'Right'].map((name, index) => ({
    name,
    many: '1',
    wide: transition(String(index + 1), 'width'),
    long: transition(String(index + 1), 'length'),
  })),
  looks: [
    [
      '{l}<MAX(ABS({a}-{c}),ABS({b}-{d}))',
      'look: short for its change of size; a longer one takes less pressure',
    ],
  ],
};

const squareToRound = (what: string, station = '') =>
  `BLANK.SQUARETOROUND({w},{d},{r},{h},"${what}",${station},1,,,IF({x}="",0,{x}),IF({y}="",0,{y}),1,,seam_round,square_end,round_end)`;
const off = { least: -120, most: 120, why: 'it is an offset of duct' };

export const squareToRounds: Kind = {
  id: 'square-to-rounds',
  sheet: 'Square to round',
  says: 'Fill in a line for each square or rectangle to round; measure its first corner line before you bend it.',
  asks: [
    ...sides,
    sized('r', 'Round', 'What is the diameter of its round end?'),
    long('h', 'Length', 'How long is it between its ends?'),
    {
      key: 'x',
      heading: 'To the right',
      width: 11,
      question: { asks: 'How far to the right does the round end stand? Blank means on center.', ...off },
      more: inches,
      blank: true,
    },
    {
      key: 'y',
      heading: 'To the back',
      width: 11,
      question: { asks: 'How far to the back does the round end stand? Blank means on center.', ...off },
      more: inches,
      blank: true,
    },
  ],
  dimensions: [
    { heading: 'Corner line', formula: squareToRound('corner line', '1'), more: exactInches },
    { heading: 'Flat height', formula: squareToRound('flat height', '1'), more: exactInches },
  ],
  parts: [{ name: 'Whole', many: '1', wide: squareToRound('width'), long: squareToRound('length') }],
};

const offset = (part: string, what: string) =>
  `BLANK.OFFSET({w},{d},{s},{l},${part},"${what}",,IF({m}="","ogee",{m}),,neck,neck,pocket,flange)`;

export const offsets: Kind = {
  id: 'offsets',
  sheet: 'Offsets',
  says: 'Fill in a line for each rectangular offset; it takes two cheeks and two sides.',
  asks: [
    sized('w', 'Width', 'How wide is the duct in the plane of the offset?'),
    sized('d', 'Depth', 'How deep is the duct, which its two sides are wide?'),
    {
      key: 's',
      heading: 'Over',
      width: 8,
      question: {
        asks: 'How far does the duct move over, center to center?',
        least: 0.25,
        most: 120,
        why: 'less is no offset',
      },
      more: inches,
    },
    long('l', 'Length', 'How long is it along the duct, without its straight ends?'),
    {
      key: 'm',
      heading: 'Form',
      width: 9,
      question: {
        asks: 'An ogee, two angled elbows, or a plain slant? Blank means an ogee.',
        choices: ['ogee', 'angled', 'slant'],
      },
      blank: true,
    },
  ],
  dimensions: [],
  parts: [
    { name: 'Cheek', many: '2', wide: offset('1', 'width'), long: offset('1', 'length') },
    { name: 'Near side', many: '1', wide: offset('2', 'width'), long: offset('2', 'length') },
    { name: 'Far side', many: '1', wide: offset('3', 'width'), long: offset('3', 'length') },
  ],
  looks: [['{s}>{l}', 'look: it moves over farther than it is long; see whether the sizes are swapped']],
};

const tapEnd = (what: string) =>
  `BLANK.TAPEND({b},{t},IF({a}="",90,{a}),IF({o}="",0,{o}),"${what}",,,tap_shortest,,seam_round,tap_tabs,tap_end)`;
const tapHole = (what: string) => `BLANK.TAPHOLE({b},{t},IF({a}="",90,{a}),IF({o}="",0,{o}),"${what}")`;

export const taps: Kind = {
  id: 'taps',
  sheet: 'Taps',
  says: 'Fill in a line for each kind of round tap; hold the formed tap to the trunk before you cut the hole.',
  asks: [
    sized('b', 'Branch', 'What is the diameter of the branch?'),
    {
      key: 't',
      heading: 'Trunk',
      width: 8,
      question: { asks: 'What is the diameter of the trunk? Blank means a flat side.', ...size },
      more: inches,
      blank: true,
    },
    {
      key: 'a',
      heading: 'Leans',
      width: 7,
      question: {
        asks: 'At what angle to the trunk? Blank means 90°.',
        least: 15,
        most: 90,
        why: 'a flatter branch has no throat to make',
      },
      more: { unit: 'deg' },
      blank: true,
    },
    {
      key: 'o',
      heading: 'Off center',
      width: 10,
      question: {
        asks: 'How far off center of the trunk? Blank means on center.',
        least: -60,
        most: 60,
        why: 'it is an offset of duct',
      },
      more: inches,
      blank: true,
    },
  ],
  dimensions: [
    { heading: 'Saddle', formula: tapEnd('saddle'), more: exactInches },
    { heading: 'Hole along', formula: tapHole('length'), more: exactInches },
    { heading: 'Hole round', formula: tapHole('width'), more: exactInches },
  ],
  parts: [{ name: 'Branch', many: '1', wide: tapEnd('width'), long: tapEnd('length') }],
};

const boot = (part: string, what: string) =>
  `BLANK.BOOT({w},{d},{r},{h},IF({a}="",0,{a}),IF({x}="",0,{x}),0,${part},"${what}",,"two halves",,,boot_seam,boot_square_end,boot_round_end)`;

export const boots: Kind = {
  id: 'boots',
  sheet: 'Boots',
  says: 'Fill in a line for each kind of register boot; it is made in two halves, left and right.',
  asks: [
    sized('w', 'Width', 'How wide is the register, along the side that the round end is turned to?'),
    sized('d', 'Depth', 'How deep is the register, front to back?'),
    sized('r', 'Round', 'What is the diameter of its round end?'),
    long('h', 'Height', 'How high does the middle of the round end stand over the register?'),
    {
      key: 'a',
      heading: 'Turned',
      width: 8,
      question: {
        asks: 'How far is the round end turned to the front? Blank means straight up.',
        least: 0,
        most: 90,
        why: '90° is a right-angle boot',
      },
      more: { unit: 'deg' },
      blank: true,
    },
    {
      key: 'x',
      heading: 'Reach',
      width: 8,
      question: {
        asks: 'How far to the front does the middle of the round end lie? Blank means none.',
        ...off,
      },
      more: inches,
      blank: true,
    },
  ],
  dimensions: [],
  parts: [
    { name: 'Right half', many: '1', wide: boot('1', 'width'), long: boot('1', 'length') },
    { name: 'Left half', many: '1', wide: boot('2', 'width'), long: boot('2', 'length') },
  ],
};

const cap = (what: string) =>
  `IF({k}="round",BLANK.CAP({w},disc_flange,"width"),BLANK.ENDCAP({w},{d},1,"${what}",,cap_flange))`;

export const endCaps: Kind = {
  id: 'end-caps',
  sheet: 'End caps',
  says: 'Fill in a line for each kind of cap; a round one is a disc, a rectangular one gets its corners notched.',
  asks: [
    {
      key: 'k',
      heading: 'Shape',
      width: 12,
      question: { asks: 'Is it round or rectangular?', choices: ['round', 'rectangular'] },
    },
    sized('w', 'Width', 'What is the diameter, or the width?'),
    {
      ...sized('d', 'Depth', 'How deep is a rectangular one? Blank if round.'),
      blank: { unless: '{k}="rectangular"' },
    },
  ],
  dimensions: [],
  parts: [{ name: 'Cap', many: '1', wide: cap('width'), long: cap('length') }],
};

export const kinds: readonly Kind[] = [
  goredElbows,
  reducers,
  elbows,
  transitions,
  squareToRounds,
  offsets,
  taps,
  boots,
  endCaps,
];
