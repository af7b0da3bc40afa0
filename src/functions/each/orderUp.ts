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
  about: "Rounds an amount up to the yard's increment and minimum.",
  gives: "an order amount",
  returns: "The same unit as the amount.",
  kind: "amount",
  rule: "Rounded up to the next whole step and to the yard's minimum; 0 stays 0.",
  example: "=BED.ORDER_UP(6.02, 0.5) gives 6.5",
  source: "Plain arithmetic; the yard sets its steps and minimums.",
  related: ["STONE_TONS", "STONE_YARDS"],
  arguments: {
    amount: { about: "How much is needed. 0 stays 0.", kind: "amount" },
    step: { about: "The increment the yard sells in, in the same unit, like 0.5.", kind: "amount" },
    minimum: { about: "The yard's minimum, in the same unit. Default: 0.", kind: "amount" },
  },
  native: (amount, step, minimum) => {
    const wanted = minimum.constant === 0 ? amount.text : `MAX(${amount.text},${minimum.text})`;
    return {
      text: `IF(${amount.text}=0,0,MAX(1,${wholeUpOf(`${wanted}/${step.text}`)})*${step.text})`,
      least: "0 or more",
    };
  },
  working: (answer, amount, step, minimum) => {
    if (amount === 0) return ["nothing needed, nothing ordered"];
    const lines = [`up to the next ${shown(step)}: ${shown(orderUp(amount, step))}`];
    if (minimum > amount) lines.push(`the yard's minimum is ${shown(minimum)}: ${shown(answer)}`);
    return lines;
  },
});
