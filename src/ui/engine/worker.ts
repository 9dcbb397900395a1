import { expose } from 'comlink';
import { tradeFunctions } from '../../catalogue/list.ts';
import { createCalculator } from '../../engine/create.ts';

expose(createCalculator({ functions: tradeFunctions }));
