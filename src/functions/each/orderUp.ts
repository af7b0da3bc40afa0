import { orderUp } from "../../quantities/stoneAmounts";
import { may, needs } from "../argument";
import { declare } from "../declare";
import { wholeUpOf } from "../native/arithmetic";
import { positive, positiveOrZero } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const ORDER_UP = worksheetFunction(
  orderUp,
  needs("amount", positiveOrZero),
  needs("step", positive),
  may("minimum", positiveOrZero, 0),
);

export const orderUpDeclared = /* @__PURE__ */ declare(ORDER_UP, {
  name: "ORDER_UP",
  purpose: "Order stone",
  about: "An amount as the yard sells it: up to the next whole step, and to its minimum.",
  gives: "an amount as the yard sells it",
  returns: "The same unit as the amount.",
  kind: "amount",
  rule: "Up to the next whole step, and to the yard's minimum; nothing stays nothing.",
  example: "=BED.ORDER_UP(6.02, 0.5) gives 6.5",
  source: "Plain arithmetic; steps and smallest orders are the yard's own.",
  related: ["STONE_TONS", "STONE_YARDS"],
  arguments: {
    amount: { about: "How much is needed. 0 stays 0.", kind: "amount" },
    step: { about: "The yard sells in steps of this, in the same unit, such as 0.5.", kind: "amount" },
    minimum: { about: "The least it delivers, in the same unit. Left out: 0.", kind: "amount" },
  },
  native: (amount, step, minimum) => {
    const wanted = minimum.constant === 0 ? amount.text : `MAX(${amount.text},${minimum.text})`;
    return {
      text: `IF(${amount.text}=0,0,MAX(1,${wholeUpOf(`${wanted}/${step.text}`)})*${step.text})`,
      least: "0 or more",
    };
  },
  working: (answer, amount, step, minimum) => {
    if (amount === 0) return ["nothing is needed, so nothing is ordered"];
    const lines = [`up to the next ${shown(step)}: ${shown(orderUp(amount, step))}`];
    if (minimum > amount) lines.push(`the yard's minimum is ${shown(minimum)}: ${shown(answer)}`);
    return lines;
  },
});
