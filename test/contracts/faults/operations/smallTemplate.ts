import { TEMPLATE_FORMAT, TEMPLATE_VERSION, type Template } from "../../../../src/sheets/templates/template";

/** A template with all that one can hold: looks, a list, a rule, merged cells. */
export const smallTemplate: Template = {
  format: TEMPLATE_FORMAT,
  version: TEMPLATE_VERSION,
  name: "Day sheet",
  rows: 3,
  columns: 2,
  widths: [24, 12],
  cells: [
    { at: "A1", text: "Day sheet" },
    { at: "A2", text: "Hours" },
    { at: "B2", number: 8 },
    { at: "A3", text: "Half" },
    { at: "B3", formula: "=B2/2" },
  ],
  looks: [{ at: ["A1:B1"], fill: "#24413A", color: "#FFFFFF", bold: true, rules: { bottom: "#112233" } }],
  merged: ["A1:B1"],
  choices: [{ at: "A2", names: ["Hours", "Days"] }],
  warnings: [{ at: "B2", when: "=B2>12" }],
};
