import { defineFunction } from '../call.ts';
import {
  askedSheet,
  gaugeCautions,
  sheetArguments,
  sheetDrawing,
  thicknessFormulas,
  thicknessSteps,
} from './sheet.ts';

export const gaugeThickness = defineFunction({
  name: 'GAUGE.THICKNESS',
  says: 'How thick a sheet of a gauge is.',
  words: ['gage', 'ga', 'sheet thickness', 'how thick', 'decimal', 'galvanized', 'stainless', 'aluminum'],
  gives: { label: 'Thickness', unit: 'in' },
  arguments: sheetArguments,
  formula: [...thicknessFormulas],
  work: askedSheet,
  result: ({ thickness }) => thickness,
  steps: thicknessSteps,
  drawing: sheetDrawing,
  cautions: gaugeCautions,
  sources: [],
  examples: [
    {
      says: '24 ga galvanized',
      given: { gauge: 24 },
      gives: 0.0276,
      source: 'galvanized-gauge-table',
    },
    {
      says: 'the thinnest 26 ga galvanized that passes',
      given: { gauge: 26, material: 'galvanized', basis: 'minimum' },
      gives: 0.0187,
      source: 'galvanized-gauge-table',
    },
    {
      says: '26 ga aluminum',
      given: { gauge: 26, material: 'aluminum' },
      gives: 0.0159,
      tolerance: 0.0001,
      source: 'wire-gauge-rule',
    },
    {
      says: '24 ga bare steel',
      given: { gauge: 24, material: 'bare steel' },
      gives: 0.0239,
      tolerance: 0.0001,
      source: 'steel-gauge-fact-sheet',
    },
  ],
});
