import { type Fahrenheit, fahrenheit } from '../../base/quantity.ts';
import { closeIn } from '../air/close-in.ts';

/** The triple point of water, °F: over water above it, over ice below. */
const triplePoint = 32.018;

/** Pressure of water vapor in saturated air, psi. Holds from -148 to 392 °F. Source: the handbook's equations, read in the
 *  code of a psychrometric library. */
export function saturationPressure(temperature: Fahrenheit): number {
  const rankine = temperature + 459.67;
  return Math.exp(temperature > triplePoint ? overWater(rankine) : overIce(rankine));
}

function overWater(rankine: number): number {
  return (
    -1.044_039_7e4 / rankine -
    1.129_465e1 -
    2.702_235_5e-2 * rankine +
    1.289_036e-5 * rankine ** 2 -
    2.478_068_1e-9 * rankine ** 3 +
    6.545_967_3 * Math.log(rankine)
  );
}

function overIce(rankine: number): number {
  return (
    -1.021_416_5e4 / rankine -
    4.893_242_8 -
    5.376_579_4e-3 * rankine +
    1.920_237_7e-7 * rankine ** 2 +
    3.557_583_2e-10 * rankine ** 3 -
    9.034_468_8e-14 * rankine ** 4 +
    4.163_501_9 * Math.log(rankine)
  );
}

export interface DewPoint {
  /** Of saturated air at that temperature, psi. */
  readonly saturated: number;
  /** Of the water vapor that is really there, psi. */
  readonly vapor: number;
  readonly dewPoint: Fahrenheit;
}

/** Colder than any dew point that shop air has. */
const coldest = -148;

/** The temperature (°F) at which air of a temperature and relative humidity (a share over 0) begins to wet a surface: where
 *  its vapor saturates. Below freezing it is the frost point. */
export function dewPointOf(temperature: Fahrenheit, humidity: number): DewPoint {
  const saturated = saturationPressure(temperature);
  const vapor = humidity * saturated;
  const { above } = closeIn(
    coldest,
    temperature,
    (colder) => saturationPressure(fahrenheit(colder)) >= vapor,
  );
  return { saturated, vapor, dewPoint: fahrenheit(above) };
}
