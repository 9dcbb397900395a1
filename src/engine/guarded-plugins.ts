import { type FunctionPluginDefinition, HyperFormula } from 'hyperformula';
import { carryFault } from './carried-fault.ts';
import { takingOneWay } from './lazy-if.ts';
import { gaveUpFault } from './wording.ts';

type Method = (...given: unknown[]) => unknown;

/** The engine's own functions, each with a guard: one that runs out of room (a text of a thousand million letters) gives
 *  a fault in its cell instead of throwing out of the whole build. */
export function guardedPlugins(): readonly FunctionPluginDefinition[] {
  return HyperFormula.getAllFunctionPlugins().map(guarded);
}

function guarded(plugin: FunctionPluginDefinition): FunctionPluginDefinition {
  class Guarded extends plugin {}
  for (const [name, { method }] of Object.entries(plugin.implementedFunctions)) {
    const own: Method = Reflect.get(plugin.prototype, method);
    const original = name === 'IF' ? takingOneWay(own) : own;
    // The engine looks for a function's method on the class itself, not on the one it extends.
    Object.defineProperty(Guarded.prototype, method, {
      value(this: unknown, ...given: unknown[]) {
        try {
          return original.apply(this, given);
        } catch {
          return carryFault(gaveUpFault);
        }
      },
    });
  }
  return Guarded;
}
