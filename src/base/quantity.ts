import type { Unit } from './unit.ts';

declare const unitOf: unique symbol;

/** A number that knows at compile time what it measures. At run time it is a plain number. */
export type Quantity<U extends Unit> = number & { readonly [unitOf]: U };

export type Inches = Quantity<'in'>;
export type Feet = Quantity<'ft'>;
export type SquareFeet = Quantity<'sqft'>;
export type Gallons = Quantity<'gal'>;
export type Pounds = Quantity<'lb'>;
export type PoundsPerSquareFoot = Quantity<'lbPerSqFt'>;
export type PoundsPerCubicFoot = Quantity<'lbPerCuFt'>;
export type Conductivity = Quantity<'k'>;
export type ThermalResistance = Quantity<'r'>;
export type Airflow = Quantity<'cfm'>;
export type FeetPerMinute = Quantity<'fpm'>;
export type InchesOfWater = Quantity<'inwg'>;
export type FrictionRate = Quantity<'inwgPer100Ft'>;
export type Fahrenheit = Quantity<'degF'>;
export type BtuPerHour = Quantity<'btuh'>;
export type Money = Quantity<'money'>;

// The makers are the only places where a bare number is given its unit, hence the casts.
export const inches = (value: number): Inches => value as Inches;
export const feet = (value: number): Feet => value as Feet;
export const squareFeet = (value: number): SquareFeet => value as SquareFeet;
export const gallons = (value: number): Gallons => value as Gallons;
export const pounds = (value: number): Pounds => value as Pounds;
export const poundsPerSquareFoot = (value: number): PoundsPerSquareFoot => value as PoundsPerSquareFoot;
export const poundsPerCubicFoot = (value: number): PoundsPerCubicFoot => value as PoundsPerCubicFoot;
export const conductivity = (value: number): Conductivity => value as Conductivity;
export const thermalResistance = (value: number): ThermalResistance => value as ThermalResistance;
export const airflow = (value: number): Airflow => value as Airflow;
export const feetPerMinute = (value: number): FeetPerMinute => value as FeetPerMinute;
export const inchesOfWater = (value: number): InchesOfWater => value as InchesOfWater;
export const frictionRate = (value: number): FrictionRate => value as FrictionRate;
export const fahrenheit = (value: number): Fahrenheit => value as Fahrenheit;
export const btuPerHour = (value: number): BtuPerHour => value as BtuPerHour;
export const money = (value: number): Money => value as Money;

export const inchesFromFeet = (length: Feet): Inches => inches(length * 12);
export const feetFromInches = (length: Inches): Feet => feet(length / 12);
export const squareFeetFromSquareInches = (area: number): SquareFeet => squareFeet(area / 144);

/** Exact by definition: one inch is 25.4 mm. */
export const inchesFromMillimetres = (millimetres: number): Inches => inches(millimetres / 25.4);
export const millimetresFromInches = (length: Inches): number => length * 25.4;
