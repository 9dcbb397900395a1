import { done } from '../../base/outcome.ts';
import { dryThickness, surfaceTemperature } from '../../trade/wrap/sweating.ts';
import { defineFunction } from '../call.ts';
import { fromTrade } from '../from-trade.ts';
import { figure, sayCut } from '../say.ts';
import { saySection, sectionArguments, sectionOf } from '../section.ts';
import { conductivityArgument } from './layer-arguments.ts';
import { drySteps, sweatingArguments } from './sweating.ts';
import { bareMinimum, wholeRetarder, worstHour } from './sweating-cautions.ts';
import { filmArguments, outerFilmOf } from './wall-arguments.ts';
import { wallDrawing } from './wall-drawing.ts';

/** Installed thickness that keeps the outer face of cold duct dry, flat or round. Inches. Faults: `no_wrap_so_thick`, and
 *  those of a section. Source: maker bulletin on condensation; radial conduction. */
export const wrapDryThickness = defineFunction({
  name: 'WRAP.DRYTHICKNESS',
  says: 'How thick wrap must lie on cold duct to keep its outer face from sweating.',
  words: ['thickness against sweating', 'condensation', 'how thick insulation', 'dripping duct', 'wet duct'],
  gives: { label: 'Thickness against sweating', unit: 'in' },
  arguments: { ...sectionArguments, ...sweatingArguments, k: conductivityArgument, ...filmArguments },
  formula: [
    String.raw`\text{flat:}\quad t = k R`,
    String.raw`\text{round:}\quad r_2 \ln\frac{r_2}{r_1} = k R, \quad t = r_2 - r_1, \quad r_1 = \frac{\text{width}}{2}`,
    String.raw`R = \text{film} \times \frac{\text{dew point} - \text{inside}}{\text{around} - \text{dew point}} - \text{inner film} \quad \text{(never below 0)}`,
    String.raw`p_s(\text{dew point}) = \text{humidity} \times p_s(\text{around}), \quad p_s \text{ as in WRAP.DEWPOINT}`,
  ],
  work: (given) => {
    const section = sectionOf(given);
    if (!section.ok) return section;
    const film = outerFilmOf(given);
    const wall = {
      around: given.around,
      inside: given.inside,
      outerFilm: film.r,
      innerFilm: given.inner_film,
    };
    const dry = fromTrade(dryThickness(section.value, wall, given.humidity, given.k));
    if (!dry.ok) return dry;
    return done({
      section: section.value,
      film,
      wall: surfaceTemperature(wall, dry.value.needed.r),
      ...dry.value,
    });
  },
  result: ({ thickness }) => thickness,
  steps: ({ section, film, needed, flat, thickness }, given) => [
    ...drySteps(film, needed, given),
    ...(section.shape === 'round'
      ? [
          {
            label: 'Flat, to compare',
            sum: `${figure(given.k)} × ${figure(needed.r)}`,
            value: flat,
            unit: 'in',
            source: 'radial-conduction',
          } as const,
        ]
      : []),
    {
      label: 'Thickness on the duct',
      sum:
        section.shape === 'round'
          ? `so that r₂ × ln(r₂ ÷ ${figure(section.diameter / 2)}) = ${figure(flat)}, r₂ = ${figure(section.diameter / 2 + thickness)}`
          : `${figure(given.k)} × ${figure(needed.r)}`,
      value: thickness,
      unit: 'in',
      source: 'radial-conduction',
    },
  ],
  drawing: ({ section, needed, thickness, wall }, { around, inside, inner_film }) =>
    wallDrawing({
      title: 'Wrap that just keeps the face dry',
      describes: `${saySection(section)} duct, ${figure(inside, 1)} °F inside and ${figure(around, 1)} °F around it: ${figure(thickness, 2)} in of wrap keeps the face at the dew point of ${figure(needed.dewPoint, 1)} °F or above.`,
      inside,
      metal: inside + ((around - inside) * inner_film) / wall.total,
      surface: wall.surface,
      around,
      dewPoint: needed.dewPoint,
      wrap: `${sayCut(thickness)} on the duct`,
    }),
  cautions: ({ thickness }) => [
    wholeRetarder,
    worstHour,
    ...(thickness > 0
      ? [
          bareMinimum,
          {
            level: 'look',
            sentence: `This is the thickness on the duct, squeezed as it lies there, with k for that state. Out of the package wrap is about a third thicker: ${figure(thickness / 0.75, 2)} in at least.`,
            source: 'wrap-guide-specification',
          } as const,
        ]
      : []),
  ],
  sources: ['sweating-bulletin', 'radial-conduction', 'saturation-equations'],
  examples: [
    {
      says: 'an 8 in pipe with 55 °F air in 90 °F at 80 %, under bright foil, underside',
      given: { shape: 'round', width: 8, around: 90, humidity: 0.8, inside: 55, face: 'underside' },
      gives: 1.246,
      tolerance: 0.02,
      source: 'radial-conduction',
    },
    {
      says: 'the same air in a rectangular duct',
      given: {
        shape: 'rectangular',
        width: 20,
        depth: 8,
        around: 90,
        humidity: 0.8,
        inside: 55,
        face: 'underside',
      },
      gives: 1.42,
      tolerance: 0.02,
      source: 'sweating-bulletin',
    },
  ],
});
