import { done } from '../../base/outcome.ts';
import { inches } from '../../base/quantity.ts';
import { roundLayer } from '../../trade/wrap/layer.ts';
import { choice, optional, quantity } from '../argument.ts';
import { defineFunction } from '../call.ts';
import { figure, sayInches } from '../say.ts';
import type { Step } from '../working.ts';
import { codeDecides } from './cautions.ts';
import { conductivityArgument, layerThickness } from './layer-arguments.ts';

/** R of a layer round a pipe, on its bare metal or on its outer face. h·ft²·°F/Btu. Source: radial conduction. */
export const wrapRoundR = defineFunction({
  name: 'WRAP.ROUNDR',
  says: 'The R that wrap has round a pipe: less than flat on the bare metal, more than flat on its outer face.',
  words: ['cylinder', 'round r-value', 'true r', 'pipe insulation', 'curved', 'flex r-value'],
  gives: { label: 'R, round', unit: 'r' },
  arguments: {
    diameter: quantity('in', {
      says: 'the diameter of the bare duct',
      least: 2,
      most: 120,
      why: 'ducts under 2 in or over 10 ft are not shop duct, so it is most likely a slip of the unit',
    }),
    thickness: layerThickness,
    k: conductivityArgument,
    on: optional(
      choice(['bare metal', 'outer face'], {
        says: 'the area that the R is for: bare metal for heat along a run, outer face for sweating',
      }),
      'bare metal',
      'heat along a run is reckoned on the bare duct',
    ),
  },
  formula: [
    String.raw`R_{\text{bare metal}} = \frac{r_1}{k} \ln\frac{r_2}{r_1}, \quad r_1 = \text{diameter} / 2,\ r_2 = r_1 + \text{thickness}`,
    String.raw`R_{\text{outer face}} = \frac{r_2}{k} \ln\frac{r_2}{r_1}`,
  ],
  work: ({ diameter, thickness, k, on }) => {
    const layer = roundLayer(diameter, thickness, k);
    return done({ layer, asked: on === 'bare metal' ? layer.onBare : layer.onFace });
  },
  result: ({ asked }) => asked,
  steps: ({ layer, asked }, { diameter, thickness, k, on }): readonly Step[] => {
    const radius = on === 'bare metal' ? layer.inner : layer.outer;
    return [
      { label: 'Bare radius', sum: `${figure(diameter)} ÷ 2`, value: layer.inner, unit: 'in' },
      {
        label: 'Outer radius',
        sum: `${figure(layer.inner)} + ${figure(thickness)}`,
        value: layer.outer,
        unit: 'in',
        source: 'geometry',
      },
      {
        label: 'Flat, to compare',
        sum: `${figure(thickness)} ÷ ${figure(k)}`,
        value: layer.flat,
        unit: 'r',
        source: 'radial-conduction',
      },
      {
        label: on === 'bare metal' ? 'R on the bare metal' : 'R on the outer face',
        sum: `${figure(radius)} × ln(${figure(layer.outer)} ÷ ${figure(layer.inner)}) ÷ ${figure(k)}`,
        value: asked,
        unit: 'r',
        source: 'radial-conduction',
      },
    ];
  },
  drawing: ({ layer, asked }, { diameter, thickness, on }) => {
    const outer = 58;
    const inner = Math.min(outer - 4, Math.max(8, (outer * layer.inner) / layer.outer));
    return {
      title: 'A layer round a pipe',
      describes: `${sayInches(diameter)} pipe in ${sayInches(thickness)} of wrap: R ${figure(asked, 2)} on the ${on}, and flat it would be R ${figure(layer.flat, 2)}.`,
      height: 168,
      marks: [
        { type: 'ring', center: { x: 90, y: 76 }, inner, outer, role: 'wrap' },
        { type: 'circle', center: { x: 90, y: 76 }, radius: inner, role: 'metal' },
        {
          type: 'measure',
          from: { x: 90 - inner, y: 158 },
          to: { x: 90 + inner, y: 158 },
          text: sayInches(diameter),
        },
        {
          type: 'label',
          at: { x: 176, y: 48 },
          text: `${sayInches(inches(thickness))} of wrap`,
          anchor: 'start',
        },
        {
          type: 'label',
          at: { x: 176, y: 70 },
          text: `R ${figure(layer.onBare, 2)} on bare metal`,
          anchor: 'start',
        },
        { type: 'label', at: { x: 176, y: 92 }, text: `R ${figure(layer.flat, 2)} flat`, anchor: 'start' },
        {
          type: 'label',
          at: { x: 176, y: 114 },
          text: `R ${figure(layer.onFace, 2)} on its outer face`,
          anchor: 'start',
        },
      ],
    };
  },
  cautions: () => [
    codeDecides,
    {
      level: 'look',
      sentence:
        'Labels and codes mean flat R. Compare them with WRAP.FLATR, never with the R of a round layer.',
    },
  ],
  sources: ['radial-conduction', 'round-duct-paper'],
  examples: [
    {
      says: '1 1/2 in of wrap round a 12 in pipe, on the bare metal',
      given: { diameter: 12, thickness: 1.5, k: 0.268 },
      gives: 4.9958,
      tolerance: 0.001,
      source: 'radial-conduction',
    },
    {
      says: '1 1/8 in round a 6 in pipe, on the outer face',
      given: { diameter: 6, thickness: 1.125, k: 0.268, on: 'outer face' },
      gives: 4.9016,
      tolerance: 0.001,
      source: 'radial-conduction',
    },
    {
      says: '6 in flex that is rated R 8 really has less on its core',
      given: { diameter: 6, thickness: 8 * 0.356, k: 0.356 },
      gives: 5.62,
      tolerance: 0.03,
      source: 'round-duct-paper',
    },
  ],
});
