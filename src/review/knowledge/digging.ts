import { type FunctionKnowledge, needed, optional } from "./argument";

/** The functions of digging and hauling, by truck and by barrow. */
export const digging: readonly FunctionKnowledge[] = [
  {
    name: "DIG_YARDS",
    gives: "soil to dig, in the ground",
    kind: "cu yd",
    rule: "Area times depth over 324, since a cubic yard is 324 square feet an inch deep; and the trench below it.",
    arguments: [
      needed("area", "sq ft", { role: "area" }),
      needed("depth_in", "in", { role: "dig depth", usual: [1, 12] }),
      optional("trench_length", "ft", 0, { zero: true }),
      optional("trench_width_in", "in", 4),
      optional("trench_depth_in", "in", 0, { zero: true, role: "trench depth" }),
    ],
  },
  {
    name: "SPOIL_YARDS",
    gives: "soil to haul, loose",
    kind: "cu yd",
    rule: "Soil takes more room once it is dug: the yards in the ground and its swell on top.",
    arguments: [needed("bank_yards", "cu yd", { zero: true }), optional("soil", "soil", "loam")],
  },
  {
    name: "LOADS",
    gives: "loads to carry",
    kind: "count",
    whole: true,
    rule: "Whole loads by what the box holds and, where both weights are given, by what may be loaded: the larger.",
    arguments: [
      needed("yards", "cu yd", { zero: true }),
      needed("truck_yards", "cu yd"),
      optional("tons_per_yard", "tons/cu yd", 0, { zero: true }),
      optional("payload_tons", "tons", 0, { zero: true, role: "payload" }),
    ],
  },
  {
    name: "BARROW_TRIPS",
    gives: "barrow trips",
    kind: "count",
    whole: true,
    rule: "Whole trips with what the tray holds or what a person can push, whichever is less.",
    arguments: [
      needed("yards", "cu yd", { zero: true }),
      needed("stone", "stone", { role: "density" }),
      optional("barrow_cubic_ft", "cu ft", 6),
      optional("barrow_lb", "lb", 300),
    ],
  },
  {
    name: "HAUL_HOURS",
    gives: "time to barrow",
    kind: "person-h",
    rule: "Each trip takes its loading, its dumping and the way there and back.",
    arguments: [
      needed("trips", "count", { zero: true }),
      needed("distance_ft", "ft"),
      optional("load_min", "min", 2, { zero: true }),
      optional("dump_min", "min", 0.5, { zero: true }),
      optional("walk_ft_min", "ft/min", 200),
    ],
  },
];
