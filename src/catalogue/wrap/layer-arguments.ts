import { optional, quantity } from '../argument.ts';

/** Thickness and conductivity of one layer as it lies on the duct. */
export const layerThickness = quantity('in', {
  says: 'the thickness of the layer as it lies on the duct',
  least: 0.05,
  most: 12,
  why: 'no wrap, board or liner is thinner or thicker',
});

export const conductivityArgument = optional(
  quantity('k', {
    says: 'the conductivity of the wrap as it lies on the duct; the installed thickness divided by the installed R',
    least: 0.1,
    most: 1,
    why: 'everything that insulates ducts lies in between',
  }),
  0.27,
  'wrap of 0.75 lb/cu ft has 0.27 to 0.28 on the duct by its data sheet',
);
