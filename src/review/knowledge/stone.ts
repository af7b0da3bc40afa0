import { type FunctionKnowledge, needed, optional } from "./argument";

const area = needed("area", "sq ft", { role: "area" });
/** Common practice: under 1.5 in fabric shows, over 6 in tons lie where nobody sees them. */
const depth = needed("depth_in", "in", { role: "stone depth", usual: [1.5, 6] });
const stone = needed("stone", "stone", { role: "density" });
const waste = optional("waste", "share", 0, { zero: true, under: 1, role: "waste" });

/** The functions of stone. */
export const stoneFunctions: readonly FunctionKnowledge[] = [
  {
    name: "STONE_DEPTH",
    gives: "depth of the stone",
    kind: "in",
    rule: "The border above the scraped floor, less the gap that stays below its top edge.",
    arguments: [
      needed("border_height_in", "in", { role: "border height", usual: [2, 12] }),
      needed("trench_depth_in", "in", { zero: true, role: "trench depth" }),
      optional("top_gap_in", "in", 0.5, { zero: true }),
    ],
  },
  {
    name: "STONE_DENSITY",
    gives: "weight of a stone",
    kind: "tons/cu yd",
    rule: "From the table of common stone, loose and dry. The supplier's scale ticket beats every table.",
    arguments: [stone],
  },
  {
    name: "STONE_YARDS",
    gives: "stone by volume",
    kind: "cu yd",
    rule: "Area times depth over 324, since a cubic yard covers 324 square feet an inch deep; waste on top.",
    arguments: [area, depth, waste],
  },
  {
    name: "STONE_TONS",
    gives: "stone by weight",
    kind: "tons",
    rule: "Area times depth over 324 are cubic yards; times what a cubic yard weighs are tons; waste on top.",
    arguments: [area, depth, stone, waste],
  },
  {
    name: "STONE_COVERS",
    gives: "area that tons of stone cover",
    kind: "sq ft",
    rule: "Tons over what a cubic yard weighs are cubic yards; each covers 324 square feet an inch deep.",
    arguments: [needed("tons", "tons", { zero: true, role: "stone tons" }), depth, stone],
  },
  {
    name: "STONE_BAGS",
    gives: "bags of stone",
    kind: "count",
    whole: true,
    rule: "Cubic yards of stone times 27 are cubic feet; over what a bag holds, rounded up.",
    arguments: [area, depth, needed("bag_cubic_ft", "cu ft"), waste],
  },
  {
    name: "ORDER_UP",
    gives: "an amount as the yard sells it",
    kind: "amount",
    rule: "Up to the next whole step, and to the yard's minimum; nothing stays nothing.",
    arguments: [
      needed("amount", "amount", { zero: true }),
      needed("step", "amount"),
      optional("minimum", "amount", 0, { zero: true }),
    ],
  },
];
