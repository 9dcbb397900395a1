import {
  CellError,
  EmptyValue,
  FunctionArgumentType,
  FunctionPlugin,
  type FunctionPluginDefinition,
  HyperFormula,
  type ImplementedFunctions,
  SimpleRangeValue,
} from 'hyperformula';
import type { CellFault } from '../base/value.ts';
import type { RawArgument } from '../catalogue/argument.ts';
import type { AnyTradeFunction } from '../catalogue/define.ts';
import { wordFault } from '../catalogue/wording.ts';
import { carryFault } from './carried-fault.ts';
import { type InsideValue, plainBlock, plainValue } from './plain-value.ts';
import { gaveUpFault, notFinite } from './wording.ts';

/** What arrives at a function of ours: a value or a block. */
export type InsideArgument = InsideValue | SimpleRangeValue;

/** A function inside the engine: a name, how many arguments it takes, and what it does with them. */
export interface InsideFunction {
  readonly name: string;
  readonly arguments: number;
  /** May throw: then the cell gets the `gave_up` fault. */
  readonly body: (...given: readonly InsideArgument[]) => InsideArgument;
}

/** A trade function as the engine runs it. Arguments are loose here, since the spec checks them itself and names the one
 *  at fault; the spec gets one argument too many too, so that it can say so. */
export function insideFunction(spec: AnyTradeFunction): InsideFunction {
  return {
    name: spec.name,
    arguments: Object.keys(spec.arguments).length,
    body: (...given) => {
      const outcome = spec.call(given.map(rawArgument));
      if (outcome.ok) {
        const { value } = outcome.value;
        if (typeof value === 'string' || Number.isFinite(value)) return value;
        return carryFault({ fault: 'trade', sentence: notFinite(spec.name) });
      }
      if (outcome.fault.code === 'argument_in_fault') {
        const cause = given.find((one) => one instanceof CellError); // handed on as it is, so that it leads to its cell
        if (cause) return cause;
      }
      return carryFault({ fault: 'trade', sentence: wordFault(outcome.fault) });
    },
  };
}

function rawArgument(given: InsideArgument): RawArgument {
  return given instanceof SimpleRangeValue ? plainBlock(given) : plainValue(given);
}

/** The package exports no type for a parsed call and its surroundings; both are handed on untouched. */
interface ParsedCall {
  readonly args: never[];
}

/** One class for all functions of ours, made anew for each calculator, so that two may hold different ones. */
export function ownPlugin(functions: readonly InsideFunction[]): FunctionPluginDefinition {
  const implemented: ImplementedFunctions = Object.fromEntries(
    functions.map((one, index) => [
      one.name,
      {
        method: `own${index}`,
        parameters: Array.from({ length: Math.max(1, one.arguments) }, () => ({
          argumentType: FunctionArgumentType.ANY,
          defaultValue: EmptyValue,
          emptyAsDefault: true,
        })),
        repeatLastArgs: 1,
      },
    ]),
  );
  class OwnPlugin extends FunctionPlugin {
    static override implementedFunctions = implemented;

    run({ name, body }: InsideFunction, call: ParsedCall, surroundings: never): unknown {
      return this.runFunction(call.args, surroundings, this.metadata(name), (...given: InsideArgument[]) => {
        try {
          return body(...given) ?? carryFault(gaveUpFault);
        } catch {
          return carryFault(gaveUpFault);
        }
      });
    }
  }
  for (const [index, one] of functions.entries()) {
    Object.defineProperty(OwnPlugin.prototype, `own${index}`, {
      value(this: OwnPlugin, call: ParsedCall, surroundings: never) {
        return this.run(one, call, surroundings);
      },
    });
  }
  return OwnPlugin;
}

/** The engine knows a function only by a translated name. Registered once in a process, then extended. */
export function languageWith(names: readonly string[]): string {
  const language = 'stretchout';
  const english = HyperFormula.languages.enGB;
  if (!english) throw new Error('The engine came without its English names.');
  if (!HyperFormula.getRegisteredLanguagesCodes().includes(language)) {
    HyperFormula.registerLanguage(language, {
      ...english,
      langCode: language,
      functions: { ...english.functions },
    });
  }
  HyperFormula.getLanguage(language).extendFunctions(Object.fromEntries(names.map((name) => [name, name])));
  return language;
}

/** Functions that no person can call, since no formula with them passes the check. */
export const hidden = { fault: 'STRETCHOUT.FAULT', take: 'STRETCHOUT.TAKE' } as const;

/** A fault that stands in a cell in place of its formula. */
export function faultFunction(faults: readonly CellFault[]): InsideFunction {
  return {
    name: hidden.fault,
    arguments: 1,
    body: (index) => carryFault(faults[Number(index)] ?? gaveUpFault),
  };
}
