/** The ways to make a rectangular duct, in the words of BLANK.RECT. */
export const ways = ['one piece', 'two L halves', 'U and flat', 'four pieces'] as const;

/** The shop lets the stock sheet decide. */
export const fewest = 'fewest that fit';
