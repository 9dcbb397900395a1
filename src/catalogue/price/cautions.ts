import type { Caution } from '../working.ts';

export const ownFigures: Caution = {
  level: 'care',
  sentence:
    'A price is only as good as the figures behind it: use your own wages, hours, overhead and quotes, and look at old jobs beside it.',
};

export const notMarkup: Caution = {
  level: 'care',
  sentence:
    'Margin is a share of the price and markup a share of the cost: the same number gives two prices.',
  source: 'markup-article-2024',
};

export const taxRules: Caution = {
  level: 'care',
  sentence:
    'Who pays sales tax, on what and when differs by state and by contract, also for duct that a shop makes itself. Ask the tax office or an accountant.',
  source: 'sales-tax-guides',
};

export const payrollRules: Caution = {
  level: 'care',
  sentence:
    'Payroll taxes, their bases and insurance rates change every year and by state. Take them from your own payroll and policy.',
  source: 'payroll-taxes',
};

export const laborFromOwn: Caution = {
  level: 'care',
  sentence:
    'Labor units are the shop’s own: no published table was reached, and any that a table begins with is from memory. Time your own work and correct them.',
  source: 'labor-units',
};
