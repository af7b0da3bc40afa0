import * as functions from "../src/functions/index";

/** Any of the functions, called as the host calls it. */
export type CellFunction = (...given: unknown[]) => number;

/** What an argument takes; the rules for blanks, zeros and hostile values follow from it. */
export type Kind =
  | "feet"
  | "feetOrZero"
  | "inches"
  | "inchesOrZero"
  | "number"
  | "numberOrZero"
  | "count"
  | "shareUnderOne"
  | "share"
  | "stone"
  | "soil"
  | "rule"
  | "flag"
  | "date"
  | "areas"
  | "sides"
  | "widths"
  | "points"
  | "dates"
  | "lengths"
  | "counts"
  | "runs"
  | "strips";

export interface ArgumentCase {
  readonly name: string;
  readonly kind: Kind;
  /** A value that is fine beside the samples of the other arguments. */
  readonly sample: unknown;
  /** What an omitted argument is taken for; undefined where the argument is required. */
  readonly fallback?: unknown;
}

const needed = (name: string, kind: Kind, sample: unknown): ArgumentCase => ({ name, kind, sample });
const optional = (name: string, kind: Kind, sample: unknown, fallback: unknown): ArgumentCase => ({
  name,
  kind,
  sample,
  fallback,
});

const fabric = [needed("length", "feet", 30), needed("width", "feet", 11), needed("roll_width", "feet", 6)];
const overlap = needed("overlap_in", "inchesOrZero", 12);
const area = needed("area", "number", 108);
const depth = needed("depth_in", "inches", 3);
const stone = needed("stone", "stone", 1.35);
const waste = optional("waste", "shareUnderOne", 0.1, 0);
const corners = [optional("corner_radius", "feetOrZero", 2, 0), optional("rounded_corners", "count", 2, 0)];
const widths = [needed("spacing", "feet", 15), needed("widths", "widths", [[3.9], [5], [5.1], [6.5]])];
const triangle = [
  [0, 0],
  [4, 0],
  [0, 3],
];

/** Functions that give a list; their own tests are in `src/functions/lists.test.ts`. */
export const LISTS = [
  "CUT_LIST",
  "FABRIC_CUTS",
  "PIN_MAP",
  "LAYOUT",
  "LAYOUT_WIDTHS",
  "LAYOUT_RECTANGLE",
  "LAYOUT_ROUND",
  "LAYOUT_CUTS",
  "LAYOUT_PINS",
] as const satisfies readonly (keyof typeof functions)[];

/** A bed twelve feet square, and how it's laid: width and length of the roll, and its overlap. */
export const LAID = {
  points: [
    [0, 0],
    [12, 0],
    [12, 12],
    [0, 12],
  ],
  laying: [6, 50, 6],
};

/** Arguments with which each of them gives a list. */
export const LIST_SAMPLES: Readonly<Record<(typeof LISTS)[number], readonly unknown[]>> = {
  CUT_LIST: [16, [[8], [7], [6], ["5'"], [4], [2]], null, 0],
  FABRIC_CUTS: [30, 11, 6, 50, 12],
  PIN_MAP: [12, 12, 12, 0, 18, 3],
  LAYOUT: [LAID.points, ...LAID.laying],
  LAYOUT_WIDTHS: ["4'", [["3'"], [`4' 6"`], [5.5], ["0"]], ...LAID.laying],
  LAYOUT_RECTANGLE: [`18' 6"`, 5, 2, 2, ...LAID.laying],
  LAYOUT_ROUND: [10, 3, ...LAID.laying],
  LAYOUT_CUTS: [LAID.points, ...LAID.laying],
  LAYOUT_PINS: [LAID.points, ...LAID.laying],
};

export const isList = (id: string): boolean => (LISTS as readonly string[]).includes(id);

type ScalarId = Exclude<keyof typeof functions, (typeof LISTS)[number]>;

/** Every other function with its arguments in order: the defaults are those of the published contract. */
export const CASES: Readonly<Record<ScalarId, readonly ArgumentCase[]>> = {
  FEET: [needed("measure", "feet", 6.5)],
  INCHES: [needed("measure", "inches", 6.5)],
  AREA_RECTANGLE: [
    needed("length", "feet", 18.5),
    needed("width", "feet", 5),
    ...corners,
    optional("cut_outs", "areas", [[4], [2]], [[]]),
  ],
  AREA_TRIANGLE: [needed("side_a", "feet", 10), needed("side_b", "feet", 15), needed("side_c", "feet", 7)],
  AREA_ROUND: [needed("diameter", "feet", 10), optional("inner_diameter", "feetOrZero", 3, 0)],
  AREA_WIDTHS: [...widths, optional("rule", "rule", "trapezoid", "simpson")],
  AREA_POINTS: [needed("points", "points", triangle)],
  EDGE_LENGTH: [needed("sides", "sides", [[5], [18.5], [5]]), ...corners],
  EDGE_WIDTHS: widths,
  EDGE_POINTS: [needed("points", "points", triangle), optional("closed", "flag", false, true)],
  DIG_YARDS: [
    area,
    depth,
    optional("trench_length", "feetOrZero", 60, 0),
    optional("trench_width_in", "inches", 3, 4),
    optional("trench_depth_in", "inchesOrZero", 1.5, 0),
  ],
  SPOIL_YARDS: [needed("bank_yards", "numberOrZero", 3.7), optional("soil", "soil", 0.4, "loam")],
  LOADS: [
    needed("yards", "numberOrZero", 4.63),
    needed("truck_yards", "number", 5),
    optional("tons_per_yard", "numberOrZero", 1.3, 0),
    optional("payload_tons", "numberOrZero", 2.55, 0),
  ],
  EDGING_PIECES: [
    needed("edge_length", "feetOrZero", 31.4),
    needed("piece_length", "feet", 8),
    optional("lap_in", "inchesOrZero", 2, 0),
    optional("closed", "flag", true, false),
  ],
  STAKES: [
    needed("edge_length", "feetOrZero", 26.75),
    needed("piece_length", "feet", 8),
    needed("stake_spacing_in", "inches", 47),
    optional("lap_in", "inchesOrZero", 2, 0),
    optional("corners", "count", 2, 0),
    optional("closed", "flag", true, false),
    optional("first_side", "feetOrZero", 3.9, 0),
    optional("next_side", "feetOrZero", 6, 0),
  ],
  FABRIC_STRIPS: [needed("bed_width", "feet", 11), needed("roll_width", "feet", 6), overlap],
  FABRIC_AREA: [
    ...fabric,
    overlap,
    optional("roll_length", "feet", 20, Number.POSITIVE_INFINITY),
    optional("end_lap_in", "inchesOrZero", 18, 12),
  ],
  FABRIC_ROLLS: [...fabric, needed("roll_length", "feet", 20), overlap, optional("end_lap_in", "inchesOrZero", 0, 12)],
  PINS: [
    ...fabric,
    overlap,
    optional("spacing_in", "inches", 18, 12),
    optional("cut_around_ft", "feetOrZero", 7, 0),
    optional("bay_ft", "feet", 2, 4),
  ],
  STONE_DEPTH: [
    needed("border_height_in", "inches", 4),
    needed("trench_depth_in", "inchesOrZero", 1.5),
    optional("top_gap_in", "inchesOrZero", 0.25, 0.5),
  ],
  STONE_DENSITY: [stone],
  STONE_YARDS: [area, depth, waste],
  STONE_TONS: [area, depth, stone, waste],
  STONE_COVERS: [needed("tons", "numberOrZero", 1.35), depth, stone],
  STONE_BAGS: [area, depth, needed("bag_cubic_ft", "number", 0.5), waste],
  STONE_BULK_BAGS: [area, depth, optional("bag_cubic_yd", "number", 0.01, 1), waste],
  PAVERS: [
    needed("edge_length", "feetOrZero", 17.18),
    needed("along_in", "inches", 4),
    optional("joint_in", "inchesOrZero", 0.125, 0),
    optional("closed", "flag", true, false),
  ],
  SAND_YARDS: [
    needed("edge_length", "feetOrZero", 20),
    needed("width_in", "inches", 8),
    needed("depth_in", "inches", 1),
    waste,
  ],
  ORDER_UP: [
    needed("amount", "numberOrZero", 1.2),
    needed("step", "number", 0.5),
    optional("minimum", "numberOrZero", 3, 0),
  ],
  BARROW_TRIPS: [
    needed("yards", "numberOrZero", 13.5),
    needed("stone", "stone", 0.5),
    optional("barrow_cubic_ft", "number", 7, 6),
    optional("barrow_lb", "number", 240, 300),
  ],
  HAUL_HOURS: [
    needed("trips", "numberOrZero", 61),
    needed("distance_ft", "feet", 150),
    optional("load_min", "numberOrZero", 3, 2),
    optional("dump_min", "numberOrZero", 1, 0.5),
    optional("walk_ft_min", "number", 180, 200),
  ],
  JOB_PIECES: [
    needed("runs", "runs", [[28.3], [2.4]]),
    needed("piece_length", "feet", 8),
    optional("lap_in", "inchesOrZero", 2, 0),
    optional("closed_runs", "runs", [[11.9], [26.9]], [[]]),
    optional("loss_in", "inchesOrZero", 6, 0.125),
  ],
  JOB_ROLLS: [
    needed("strips", "strips", [["2 x 33.2"], ["33.2"]]),
    needed("roll_length", "feet", 50),
    optional("end_lap_in", "inchesOrZero", 0, 12),
  ],
  CUT_COUNT: [
    needed("stock_length", "feet", 16),
    needed("lengths", "lengths", [[8], [7], [6], [5], [4], [2]]),
    optional("counts", "counts", [[2], [2], [2], [2], [2], [2]], [[1], [1], [1], [1], [1], [1]]),
    optional("loss_in", "inchesOrZero", 6, 0),
  ],
  PRICE_MARKUP: [needed("cost", "numberOrZero", 100), needed("markup", "share", 0.25)],
  PRICE_MARGIN: [needed("cost", "numberOrZero", 100), needed("margin", "shareUnderOne", 0.2)],
  MARKUP_FOR_MARGIN: [needed("margin", "shareUnderOne", 0.2)],
  DIG_DATE: [
    needed("notice_date", "date", 46083),
    needed("working_days", "count", 2),
    optional("holidays", "dates", [[46084]], [[]]),
  ],
};

/** Each function that gives a number, with its name and its arguments. */
export const EVERY_FUNCTION = (Object.keys(CASES) as ScalarId[]).map((id) => {
  const call: CellFunction = (...given) => Reflect.apply(functions[id], undefined, given);
  return { id, call, given: CASES[id] };
});

/** Each argument of each function, with a way to call the function with one value changed. */
export const EVERY_ARGUMENT = EVERY_FUNCTION.flatMap(({ id, given, call }) =>
  given.map((argument, place) => ({
    id,
    argument,
    name: argument.name,
    /** Calls with the samples, and this argument as given. */
    callWith: (value: unknown) => call(...given.map((other, i) => (i === place ? value : other.sample))),
  })),
);
