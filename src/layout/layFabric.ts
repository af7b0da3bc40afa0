import { must } from "../quantities/must";
import { chooseFabric, type FabricPlan, fabricInBed } from "./fabric";
import type { FabricCut, FabricLayout, Line } from "./layout";
import type { FabricRules } from "./options";
import type { Outline } from "./outline";
import { placePins } from "./pins";
import { distance, toPlan } from "./plane";
import { seamsOf } from "./seams";

/**
 * Lays fabric and pins over an outline: strips in the direction that takes least, the lengths to cut, seams, end laps
 * and pins. The same outline and rules give the same answer.
 *
 * @param outline from `outlineOf`.
 * @param rules from `fabricRulesOf`.
 * @throws Problem where the counts show that a unit is wrong.
 * @example layFabric(outlineOf(bed), fabricRulesOf({ rollWidthFt: 6, overlapIn: 6 })).counts.pins
 */
export function layFabric(outline: Outline, rules: FabricRules): FabricLayout {
  const { plan, pins } = withFewestPins(chooseFabric(outline, rules), rules);
  const direction = plan.frame.along;
  const cuts = cutsInPlan(plan);
  const seams = seamsOf(plan).map(({ at, stretch: { from, to } }): Line => {
    const point = (x: number) => toPlan(plan.frame, { x, y: at });
    return { from: point(from), to: point(to) };
  });
  return {
    rules,
    direction,
    // 0 up to 180.
    directionDegrees: (Math.atan2(direction.y, direction.x) * (180 / Math.PI) + 180) % 180,
    strips: plan.bands.map(({ low, high }, i) => ({ number: i + 1, widthFt: high - low })),
    cuts,
    seams,
    pins: pins.map((pin) => ({ ...toPlan(plan.frame, pin), kind: pin.kind })),
    counts: {
      strips: plan.bands.length,
      cuts: cuts.length,
      rolls: plan.rolls,
      fabricLengthFt: plan.lengthFt,
      fabricSqFt: fabricInBed(plan, rules),
      fabricOffRollsSqFt: plan.lengthFt * rules.rollWidthFt,
      seamLengthFt: seams.reduce((sum, { from, to }) => sum + distance(from, to), 0),
      endLaps: cuts.reduce((sum, { pieces }) => sum + pieces.length - 1, 0),
      pins: pins.length,
    },
  };
}

/** Of the plans that cost the same, the one that takes the fewest pins. */
function withFewestPins(plans: readonly FabricPlan[], rules: FabricRules) {
  const ways = plans.map((plan) => ({ plan, pins: placePins(plan, rules) }));
  return ways.reduce((best, way) => (way.pins.length < best.pins.length ? way : best));
}

function cutsInPlan(plan: FabricPlan): FabricCut[] {
  return plan.cuts.map(({ band, from, to }, i) => {
    const { low, high } = must(plan.bands[band]);
    const at = (x: number, y: number) => toPlan(plan.frame, { x, y });
    return {
      number: i + 1,
      strip: band + 1,
      lengthFt: to - from,
      pieces: must(plan.pieces[i]),
      corners: [at(from, low), at(to, low), at(to, high), at(from, high)],
    };
  });
}
