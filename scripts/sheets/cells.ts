import type { Cell, Format, Question } from '../../src/workbook/document.ts';

/** The cells that forms are made of, each in a word or two, so that a sheet below reads like the form itself. */
type More = Partial<Omit<Cell, 'content' | 'role'>>;

export function heading(content: string): Cell {
  return { content, role: 'heading' };
}

/** Over a column of figures whose first line has none. */
export function figureHeading(content: string): Cell {
  return { content, role: 'heading', style: { align: 'right' } };
}

/** A cell with a note for whoever wonders about it. */
export function noted(cell: Cell, note: string): Cell {
  return { ...cell, note };
}

export function words(content: string, more: More = {}): Cell {
  return { content, role: 'text', ...more };
}

/** What a person fills in; a question without `content` is left open. */
export function given(
  question: Question,
  { content = null, ...more }: More & { readonly content?: Exclude<Cell['content'], object> } = {},
): Cell {
  return { content, role: 'given', ...more, question };
}

/** A formula, without its `=`. */
export function figured(formula: string, more: More = {}): Cell {
  return { content: { formula }, role: 'figured', ...more };
}

/** Its sentence goes on below where the column is narrow. */
export function check(formula: string): Cell {
  return { content: { formula }, role: 'check', style: { wraps: true } };
}

const tape = (round: 'up' | 'nearest', feet: boolean): Format => ({
  type: 'tape',
  denominator: 16,
  round,
  feet,
});

/** How a cell measures and shows: spread into a cell, `figured('B2', inches)`. */
export const inches: More = { unit: 'in', format: tape('nearest', false) };
export const feetAndInches: More = { unit: 'in', format: tape('nearest', true) };
export const cutInches: More = { unit: 'in', format: tape('up', false) };
export const wholeFeet: More = {
  unit: 'in',
  format: { type: 'tape', denominator: 1, round: 'up', feet: true },
};
export const exactInches: More = { unit: 'in', format: { type: 'decimal', places: 2 } };
export const feet: More = { unit: 'ft' };
export const count: More = { unit: 'count' };
export const inchesOfWater: More = { unit: 'inwg' };
export const gauge: More = { unit: 'gauge' };
export const share: More = { unit: 'percent' };
export const resistance: More = { unit: 'r', format: { type: 'decimal', places: 1 } };
export const squareFeet: More = { unit: 'sqft', format: { type: 'decimal', places: 1 } };
export const gallons: More = { unit: 'gal', format: { type: 'decimal', places: 2 } };
export const pounds: More = { unit: 'lb', format: { type: 'decimal', places: 1 } };
export const cubicFeet: More = { unit: 'cfm', format: { type: 'decimal', places: 0 } };
export const feetAMinute: More = { unit: 'fpm', format: { type: 'decimal', places: 0 } };
export const heat: More = { unit: 'btuh', format: { type: 'decimal', places: 0 } };
export const degrees: More = { unit: 'degF', format: { type: 'decimal', places: 0 } };
export const frictionRate: More = { unit: 'inwgPer100Ft', format: { type: 'decimal', places: 3 } };
export const factor: More = { unit: 'ratio', format: { type: 'decimal', places: 2 } };
export const hours: More = { unit: 'ratio', format: { type: 'decimal', places: 1 } };
export const dollars: More = { unit: 'money', format: { type: 'decimal', places: 2 } };
/** For words that go on below where the column is narrow. */
export const onBelow: More = { style: { wraps: true } };
