import { airBranch, airEnlarge } from './air/branch.ts';
import { airDensity } from './air/density.ts';
import { airElbow, airMiter } from './air/elbow.ts';
import { airCoefficient, airLength, airLoss } from './air/fitting.ts';
import { airCompression, airFlex } from './air/flex.ts';
import { airCapacity, airFriction } from './air/friction.ts';
import { airFactor, airReynolds } from './air/friction-factor.ts';
import { airAtPressure, airClass, airLeakage, airTestClass } from './air/leakage.ts';
import { airCfm, airShare } from './air/load.ts';
import { airAvailable, airRate } from './air/pressure.ts';
import { airRectangularElbow } from './air/rectangular-elbow.ts';
import { airRound } from './air/round.ts';
import { airDiameter, airWidth } from './air/size.ts';
import { airTemperature } from './air/temperature.ts';
import { airVelocityInDuct } from './air/velocity.ts';
import { airPitot, airVelocityPressure } from './air/velocity-pressure.ts';
import { areaDuct } from './area/duct.ts';
import { blankBend } from './blank/bend.ts';
import { blankBoot } from './blank/boot.ts';
import { blankCone } from './blank/cone.ts';
import { blankEccentricCone } from './blank/eccentric-cone.ts';
import { blankEndCap } from './blank/end-cap.ts';
import { blankGore } from './blank/gore.ts';
import { blankLengthways } from './blank/length.ts';
import { blankOffset } from './blank/offset.ts';
import { blankPlenum } from './blank/plenum.ts';
import { blankRectangular } from './blank/rectangular.ts';
import { blankRectangularElbow } from './blank/rectangular-elbow.ts';
import { blankRound } from './blank/round.ts';
import { blankRoundCap } from './blank/round-cap.ts';
import { blankSquareToRound } from './blank/square-to-round.ts';
import { blankTapEnd } from './blank/tap-end.ts';
import { blankTapHole } from './blank/tap-hole.ts';
import { blankTransition } from './blank/transition.ts';
import type { AnyTradeFunction } from './define.ts';
import { gaugeLeast } from './gauge/least.ts';
import { gaugeThickness } from './gauge/thickness.ts';
import { gaugeWeight } from './gauge/weight.ts';
import { hangAnchor } from './hang/anchor.ts';
import { hangBar } from './hang/bar.ts';
import { hangCount } from './hang/count.ts';
import { hangLength } from './hang/length.ts';
import { hangLoad } from './hang/load.ts';
import { hangPlace } from './hang/place.ts';
import { hangSag } from './hang/sag.ts';
import { hangSize } from './hang/size.ts';
import { hangSpacing } from './hang/spacing.ts';
import { hangStrap } from './hang/strap.ts';
import { priceBreakEven } from './price/break-even.ts';
import { priceBuy } from './price/buy.ts';
import { priceCents } from './price/cents.ts';
import { priceCompare } from './price/compare.ts';
import { priceDiscount } from './price/discount.ts';
import { priceHours } from './price/hours.ts';
import { priceJob } from './price/job.ts';
import { priceLabor } from './price/labor.ts';
import { priceMargin, priceMarkup } from './price/margin.ts';
import { priceMarginOf, priceMarkupFor } from './price/markup-and-margin.ts';
import { priceMaterial } from './price/material.ts';
import { priceHourly, priceOverhead, priceShare } from './price/overhead.ts';
import { priceFoot, pricePound } from './price/per.ts';
import { priceTax } from './price/tax.ts';
import { priceWorker } from './price/worker.ts';
import { sealCartridges } from './seal/cartridges.ts';
import { sealFacing } from './seal/facing.ts';
import { sealJoint } from './seal/joint.ts';
import { sealLimit } from './seal/limit.ts';
import { sealMastic } from './seal/mastic.ts';
import { sealPails } from './seal/pails.ts';
import { sealRolls } from './seal/rolls.ts';
import { sealScrews } from './seal/screws.ts';
import { sealShare } from './seal/share.ts';
import { sealStaples } from './seal/staples.ts';
import { sealTap } from './seal/tap.ts';
import { tapeRead } from './tape/read.ts';
import { tapeRound } from './tape/round.ts';
import { tapeWrite } from './tape/write.ts';
import { weightBlank } from './weight/blank.ts';
import { weightDuct } from './weight/duct.ts';
import { wrapCutOut } from './wrap/cut-out.ts';
import { wrapDewPoint } from './wrap/dew-point.ts';
import { wrapDryThickness } from './wrap/dry-thickness.ts';
import { wrapFlatR } from './wrap/flat-r.ts';
import { wrapNeeded } from './wrap/needed.ts';
import { wrapOutside } from './wrap/outside.ts';
import { wrapPieces } from './wrap/pieces.ts';
import { wrapPins } from './wrap/pins.ts';
import { wrapRLeft } from './wrap/r-left.ts';
import { wrapRolls } from './wrap/rolls.ts';
import { wrapRoundR } from './wrap/round-r.ts';
import { wrapSqueezed } from './wrap/squeezed.ts';
import { wrapStretchout } from './wrap/stretchout.ts';
import { wrapSurface } from './wrap/surface.ts';
import { wrapSweating } from './wrap/sweating.ts';
import { wrapThickness } from './wrap/thickness.ts';

/** Every trade function. A function is in the product once it stands here. */
export const tradeFunctions: readonly AnyTradeFunction[] = [
  blankRound,
  blankRectangular,
  blankLengthways,
  blankBend,
  blankTransition,
  blankRectangularElbow,
  blankOffset,
  blankEndCap,
  blankPlenum,
  blankBoot,
  blankCone,
  blankEccentricCone,
  blankSquareToRound,
  blankGore,
  blankTapHole,
  blankTapEnd,
  blankRoundCap,
  areaDuct,
  weightDuct,
  weightBlank,
  gaugeThickness,
  gaugeLeast,
  gaugeWeight,
  wrapStretchout,
  wrapThickness,
  wrapRLeft,
  wrapPieces,
  wrapRolls,
  wrapPins,
  wrapOutside,
  wrapCutOut,
  wrapNeeded,
  wrapSqueezed,
  wrapFlatR,
  wrapRoundR,
  wrapDewPoint,
  wrapSurface,
  wrapSweating,
  wrapDryThickness,
  sealJoint,
  sealTap,
  sealFacing,
  sealRolls,
  sealMastic,
  sealPails,
  sealCartridges,
  sealScrews,
  sealStaples,
  sealLimit,
  sealShare,
  airCfm,
  airShare,
  airAvailable,
  airRate,
  airDiameter,
  airWidth,
  airRound,
  airCapacity,
  airFriction,
  airFlex,
  airCompression,
  airVelocityInDuct,
  airVelocityPressure,
  airPitot,
  airLoss,
  airElbow,
  airMiter,
  airRectangularElbow,
  airBranch,
  airEnlarge,
  airLength,
  airCoefficient,
  airTemperature,
  airLeakage,
  airClass,
  airTestClass,
  airAtPressure,
  airDensity,
  airReynolds,
  airFactor,
  hangSpacing,
  hangCount,
  hangPlace,
  hangSize,
  hangStrap,
  hangLength,
  hangBar,
  hangLoad,
  hangAnchor,
  hangSag,
  priceBuy,
  priceMaterial,
  priceHours,
  priceWorker,
  priceLabor,
  priceOverhead,
  priceShare,
  priceHourly,
  priceMargin,
  priceMarkup,
  priceMarkupFor,
  priceMarginOf,
  priceDiscount,
  priceBreakEven,
  priceTax,
  priceJob,
  priceCents,
  priceFoot,
  pricePound,
  priceCompare,
  tapeRead,
  tapeWrite,
  tapeRound,
];

/** Upper and lower case are alike, as in formulas. */
export function findFunction(name: string): AnyTradeFunction | undefined {
  const wanted = name.toUpperCase();
  return tradeFunctions.find((one) => one.name === wanted);
}
