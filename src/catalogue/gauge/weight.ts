import { defineFunction } from '../call.ts';
import {
  askedSheet,
  gaugeCautions,
  sheetArguments,
  sheetDrawing,
  weightFormulas,
  weightSteps,
} from './sheet.ts';

export const gaugeWeight = defineFunction({
  name: 'GAUGE.WEIGHT',
  says: 'What a square foot of sheet of a gauge weighs.',
  words: ['gage', 'ga', 'pounds per square foot', 'sheet weight', 'how heavy', 'galvanized', 'stainless'],
  gives: { label: 'Sheet weight', unit: 'lbPerSqFt' },
  arguments: sheetArguments,
  formula: [...weightFormulas],
  work: askedSheet,
  result: ({ weight }) => weight,
  steps: weightSteps,
  drawing: sheetDrawing,
  cautions: gaugeCautions,
  sources: [],
  examples: [
    {
      says: '26 ga galvanized',
      given: { gauge: 26 },
      gives: 0.906,
      source: 'galvanized-gauge-table',
    },
    {
      says: '26 ga stainless',
      given: { gauge: 26, material: 'stainless' },
      gives: 0.7803,
      tolerance: 0.003,
      source: 'stainless-gauge-table',
    },
    {
      says: '20 ga bare steel, 24 oz to the square foot',
      given: { gauge: 20, material: 'bare steel' },
      gives: 1.5,
      source: 'us-standard-gauge',
    },
  ],
});
