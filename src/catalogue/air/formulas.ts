/** Lines of mathematics that several functions of air share. Sizes in inches, V in fpm. */

/** Density over that of standard air, by height alone. */
export const heightFormula = String.raw`\sigma = (1 - 6.8754 \times 10^{-6} \times \mathrm{altitude})^{5.2559} \quad \text{(density over that of standard air)}`;

/** Density over that of standard air. */
export const relativeDensityFormula = String.raw`\sigma = \frac{530}{\mathrm{temperature} + 460} \times (1 - 6.8754 \times 10^{-6} \times \mathrm{altitude})^{5.2559} \quad \text{(density over that of standard air)}`;

/** How sticky the air is, over that at 70 °F. */
export const stickinessFormula = String.raw`m = \left(\frac{T}{530}\right)^{1.5} \times \frac{728.72}{T + 198.72}, \quad T = \mathrm{temperature} + 460 \quad \text{(viscosity over that at 70 °F)}`;

const ovalSides = String.raw`\text{flat oval:}\quad a, b = \text{the larger and the smaller of } \mathrm{width}, \mathrm{depth}`;

const insidePerimeter = String.raw`P = \pi \times \mathrm{width} \text{ (round)}, \quad 2 (\mathrm{width} + \mathrm{depth}) \text{ (rectangular)}, \quad \pi b + 2 (a - b) \text{ (flat oval)}`;

/** Open area A of a section of any shape. */
export const openAreaFormulas = [
  String.raw`A = \frac{\pi}{4} \times \mathrm{width}^2 \text{ (round)}, \quad \mathrm{width} \times \mathrm{depth} \text{ (rectangular)}, \quad \frac{\pi}{4} b^2 + b (a - b) \text{ (flat oval)}`,
  ovalSides,
] as const;

/** Once round the inside, P. */
export const insidePerimeterFormulas = [insidePerimeter, ovalSides] as const;

/** Both, A and P. */
export const openSectionFormulas = [insidePerimeter, ...openAreaFormulas] as const;

/** The round duct that stands for one that is not round, on area A and perimeter P. */
export const roundedFormulas = [
  String.raw`\text{equal friction, rectangular:}\quad D = \frac{1.30 \times (\mathrm{width} \times \mathrm{depth})^{0.625}}{(\mathrm{width} + \mathrm{depth})^{0.25}}`,
  String.raw`\text{equal friction, flat oval:}\quad D = \frac{1.55 \times A^{0.625}}{P^{0.25}}`,
  String.raw`\text{hydraulic:}\quad D = \frac{4 A}{P}`,
] as const;

/** From diameter D and velocity V to the friction factor f. */
export const factorFormulas = [
  relativeDensityFormula,
  stickinessFormula,
  String.raw`\mathrm{Re} = \frac{8.56 \times D \times V \times \sigma}{m}`,
  String.raw`f = \frac{64}{\mathrm{Re}} \text{ where } \mathrm{Re} < 2300, \text{ otherwise } \frac{1}{\sqrt{f}} = -2 \log_{10}\left(\frac{12 \times \mathrm{roughness}}{3.7 \times D} + \frac{2.51}{\mathrm{Re} \sqrt{f}}\right)`,
] as const;

/** What a duct of diameter D takes for each 100 ft, as the right side of an equation. */
export const darcyRate = String.raw`f \times \frac{1200}{D} \times \left(\frac{V}{4005}\right)^2 \times \sigma`;

/** From a section of any shape to everything that its friction rate is made of. */
export const ductFormulas = [
  ...openSectionFormulas,
  String.raw`\text{round:}\quad D = \mathrm{width}`,
  ...roundedFormulas,
  String.raw`V = \frac{576 \times \mathrm{airflow}}{\pi D^2} \text{ (equal friction)}, \quad V = \frac{144 \times \mathrm{airflow}}{A} \text{ (hydraulic)}`,
  ...factorFormulas,
] as const;

/** Velocity pressure in the air that a fitting stands in. */
export const velocityPressureFormula = String.raw`p = \left(\frac{\mathrm{velocity}}{4005}\right)^2 \times \sigma \quad \text{(velocity pressure)}`;

/** What slack makes of the friction of flex of diameter D, by the equation. */
export const slackFormula = String.raw`s = 1 + 58 \times \mathrm{compression} \times e^{-0.126 D} \quad \text{(slack)}`;
