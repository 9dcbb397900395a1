import { done } from '../../base/outcome.ts';
import { flatR } from '../../trade/wrap/layer.ts';
import { defineFunction } from '../call.ts';
import { figure } from '../say.ts';
import { codeDecides } from './cautions.ts';
import { conductivityArgument, layerThickness } from './layer-arguments.ts';

/** R of a flat layer. h·ft²·°F/Btu. Source: conduction. */
export const wrapFlatR = defineFunction({
  name: 'WRAP.FLATR',
  says: 'The R of a flat layer from its thickness and conductivity; labels and codes mean this one.',
  words: ['r-value', 'thickness to r', 'k value', 'conductivity', 'r per inch', 'duct board', 'liner'],
  gives: { label: 'R, flat', unit: 'r' },
  arguments: { thickness: layerThickness, k: conductivityArgument },
  formula: [String.raw`R = \frac{\text{thickness}}{k}`],
  work: ({ thickness, k }) => done(flatR(thickness, k)),
  result: (r) => r,
  steps: (r, { thickness, k }) => [
    {
      label: 'R, flat',
      sum: `${figure(thickness)} ÷ ${figure(k)}`,
      value: r,
      unit: 'r',
      source: 'radial-conduction',
    },
  ],
  cautions: () => [codeDecides],
  sources: ['radial-conduction', 'wrap-r-table'],
  examples: [
    {
      says: '1 1/8 in of wrap on the duct',
      given: { thickness: 1.125, k: 0.268 },
      gives: 4.1978,
      tolerance: 1e-4,
      source: 'radial-conduction',
    },
    {
      says: '1 1/2 in of duct board',
      given: { thickness: 1.5, k: 0.23 },
      gives: 6.52,
      tolerance: 0.05,
    },
  ],
});
