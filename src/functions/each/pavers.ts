import { pavers } from "../../quantities/pavers";
import { INCHES_PER_FOOT } from "../../quantities/units";
import { may, needs } from "../argument";
import { closedRun } from "../arguments";
import { declare } from "../declare";
import { wholeUpOf } from "../native/arithmetic";
import { choose } from "../native/named";
import { feetOrZero, inches, inchesOrZero } from "../read";
import { roundedUp, shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const PAVERS = worksheetFunction(
  pavers,
  needs("edge_length", feetOrZero),
  needs("along_in", inches),
  may("joint_in", inchesOrZero, 0),
  closedRun,
);

export const paversDeclared = /* @__PURE__ */ declare(PAVERS, {
  name: "PAVERS",
  purpose: "Set the edging",
  about: "Pavers or bricks in one row along an edge.",
  gives: "pavers",
  returns: "Whole pavers, the last one cut.",
  kind: "count",
  whole: true,
  rule: "Edge in inches over one paver and its joint, rounded up; the last paver of an open row needs no joint after it.",
  example: "=BED.PAVERS(50, 4, 0.125) gives 146",
  source: "Plain arithmetic. Joints of 1/16 to 3/16 in: Brick Industry Association, Technical Note 14A.",
  related: ["SAND_YARDS", "EDGE_LENGTH", "EDGING_PIECES"],
  arguments: {
    edge_length: { about: `Length of the row: feet, or text like 26' 9". 0 needs no pavers.`, role: "border" },
    along_in: { about: `Length of edge one paver takes up: inches, or text like 7 5/8".`, usual: [2, 12] },
    joint_in: { about: `Joint between two: inches, or text like 1/8". Default: 0.`, usual: [0, 0.5] },
  },
  native: (edge, along, joint, closed) => {
    const each = `(${along.text}+${joint.text})`;
    const open = `MAX(1,${wholeUpOf(`(${edge.text}*12+${joint.text})/${each}`)})`;
    const around = `MAX(1,${wholeUpOf(`${edge.text}*12/${each}`)})`;
    return { text: `IF(${edge.text}=0,0,${choose(closed, around, open)})`, least: "0 or more" };
  },
  working: (_, edge, along, joint, closed) => {
    if (edge === 0) return ["no edge, no pavers"];
    const inchesLong = edge * INCHES_PER_FOOT;
    const more = joint > 0 && !closed ? ` + ${shown(joint)}` : "";
    const each = joint > 0 ? `(${shown(along)} + ${shown(joint)})` : shown(along);
    const row = more ? `(${shown(inchesLong)}${more})` : shown(inchesLong);
    const count = (inchesLong + (closed ? 0 : joint)) / (along + joint);
    return [`${shown(edge)} ft × 12 = ${shown(inchesLong)} in`, `${roundedUp(`${row} ÷ ${each}`, count)} pavers`];
  },
});
