import { failed, type Outcome } from '../base/outcome.ts';
import type { TradeFault } from '../trade/fault.ts';
import type { CallFault } from './fault.ts';

/** Hands on what the trade maths gave; its fault becomes the fault of the call. */
export function fromTrade<T>(outcome: Outcome<T, TradeFault>): Outcome<T, CallFault> {
  return outcome.ok ? outcome : failed({ code: 'trade', fault: outcome.fault });
}
