import { loads } from "../../quantities/hauling";
import { MOST_TONS_PER_YARD } from "../../quantities/stone";
import { may, needs } from "../argument";
import { declare } from "../declare";
import { wholeUpOf } from "../native/arithmetic";
import { positive, positiveOrZero } from "../read";
import { weightOrZero } from "../readNamed";
import { roundedUp, shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const LOADS = worksheetFunction(
  loads,
  needs("yards", positiveOrZero),
  needs("truck_yards", positive),
  may("tons_per_yard", weightOrZero, 0, MOST_TONS_PER_YARD),
  may("payload_tons", positiveOrZero, 0),
);

export const loadsDeclared = /* @__PURE__ */ declare(LOADS, {
  name: "LOADS",
  purpose: "Dig and haul",
  about: "Truck or trailer loads, by volume or by weight, whichever is more. No weight given: weight isn't checked.",
  gives: "loads to haul",
  returns: "Whole loads.",
  kind: "count",
  whole: true,
  rule: "Whole loads by volume and, if you give both weights, by payload, whichever is more.",
  example: "=BED.LOADS(4.63, 5, 1.3, 2.55) gives 3",
  source: "Plain arithmetic; checking weight as well as volume is common practice.",
  related: ["SPOIL_YARDS", "BARROW_TRIPS"],
  arguments: {
    yards: { about: "Loose cubic yards to haul. 0 yards is 0 loads.", kind: "cu yd" },
    truck_yards: { about: "Cubic yards the truck or trailer holds.", kind: "cu yd" },
    tons_per_yard: {
      about: "Weight of the load, tons/cu yd. Default (or blank or 0): weight isn't checked.",
    },
    payload_tons: {
      about: "Payload in tons: GVWR less empty weight. Default (or blank or 0): weight isn't checked.",
      kind: "tons",
      role: "payload",
    },
  },
  native: (yards, truck, tons, payload) => {
    const byVolume = wholeUpOf(`${yards.text}/${truck.text}`);
    if (tons.constant === 0 || payload.constant === 0) return { text: byVolume, least: "0 or more" };
    const byWeight = wholeUpOf(`${yards.text}*${tons.text}/${payload.text}`);
    return {
      text: `IF(OR(${tons.text}=0,${payload.text}=0),${byVolume},MAX(${byVolume},${byWeight}))`,
      least: "0 or more",
    };
  },
  working: (answer, yards, truck, weight, payload) => {
    const volume = roundedUp(`by volume: ${shown(yards)} ÷ ${shown(truck)}`, yards / truck);
    if (weight === 0 || payload === 0) return [volume, "by weight: not checked"];
    const heavy = roundedUp(
      `by weight: ${shown(yards)} × ${shown(weight)} ÷ ${shown(payload)}`,
      (yards * weight) / payload,
    );
    return [volume, heavy, `the larger: ${shown(answer)} loads`];
  },
});
