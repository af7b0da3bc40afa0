import type { CrewAmounts } from "./crewAmounts";

/** Something to load in the morning. */
export interface Tool {
  readonly tool: string;
  /** How many; undefined where one or a kit of it serves the whole crew. */
  readonly count?: number;
  readonly why: string;
}

interface ToolRule {
  readonly tool: string;
  readonly why: string;
  readonly when?: (job: CrewAmounts) => boolean;
  readonly count?: (job: CrewAmounts, people: number) => number;
}

/** A floor larger than this is tamped with a plate compactor rather than by hand; common practice. */
export const LARGE_FLOOR_SQ_FT = 400;
/** One loads and one rakes for every barrow that is on its way; common practice. */
export const PEOPLE_PER_BARROW = 2;
/** Shovelled by hand, more sod than this takes longer than fetching a machine; common practice. */
export const MUCH_SOD_SQ_FT = 500;

const everybody = (_: CrewAmounts, people: number) => people;
const halfOf = (_: CrewAmounts, people: number) => Math.ceil(people / PEOPLE_PER_BARROW);
const digs = ({ bankYards }: CrewAmounts) => bankYards > 0;
const setsBorder = ({ borderFt, pieces }: CrewAmounts) => borderFt > 0 || pieces > 0;
const drivesStakes = (job: CrewAmounts) =>
  setsBorder(job) && (job.stakes > 0 || (job.sandYards === 0 && job.cutEdgeFt === 0));
const laysFabric = ({ fabricSqFt, rolls }: CrewAmounts) => fabricSqFt > 0 || rolls > 0;
const spreadsStone = ({ stoneTons }: CrewAmounts) => stoneTons > 0;

/** What a job of its kind takes along: common practice, no source. Offices add their own to the sheet. */
const RULES: readonly ToolRule[] = [
  { tool: "Ticket, drawing, order, and this sheet", why: "dig by the ticket" },
  { tool: "Gloves, eye protection, dust masks", count: everybody, why: "sharp stone, harmful dust" },
  { tool: "Tape, string, stakes, and marking paint", why: "layout" },
  { tool: "Flat shovels", count: everybody, why: "scrape, load, and spread" },
  { tool: "Sod cutter", when: ({ areaSqFt }) => areaSqFt > MUCH_SOD_SQ_FT, why: "a lot of sod" },
  { tool: "Spade", when: digs, why: "edges, and hand digging beside marks" },
  { tool: "Tarp for the pile", when: digs, why: "keep soil off lawn and street" },
  {
    tool: "Hand tamper",
    when: (job) => digs(job) && job.areaSqFt <= LARGE_FLOOR_SQ_FT,
    why: "low spots",
  },
  { tool: "Plate compactor", when: (job) => digs(job) && job.areaSqFt > LARGE_FLOOR_SQ_FT, why: "a large floor" },
  { tool: "Level and straightedge", when: setsBorder, why: "depth, and slope away from the house" },
  { tool: "Trenching spade", when: setsBorder, why: "edging trench" },
  { tool: "Sledges and a wood block", when: drivesStakes, count: halfOf, why: "stakes and spikes" },
  { tool: "Drill and long bit", when: ({ spikes }) => spikes > 0, why: "spike holes" },
  { tool: "Screed board and rails", when: ({ sandYards }) => sandYards > 0, why: "sand under pavers" },
  { tool: "Rubber mallets", when: ({ sandYards }) => sandYards > 0, count: halfOf, why: "pavers" },
  { tool: "Half-moon edger", when: ({ cutEdgeFt }) => cutEdgeFt > 0, why: "spade-cut edge" },
  {
    tool: "Cut-off saw, file, ear protection",
    when: ({ cutPieces }) => cutPieces > 0,
    why: "edging cut to length",
  },
  {
    tool: "Masonry saw with water to the blade, or splitter",
    when: ({ cutPavers }) => cutPavers > 0,
    why: "pavers cut to length",
  },
  { tool: "Saw for timbers, goggles", when: ({ cutTimbers }) => cutTimbers > 0, why: "timbers cut to length" },
  {
    tool: "Ear protection",
    when: ({ cutPieces, cutPavers, cutTimbers }) => cutPieces === 0 && cutPavers + cutTimbers > 0,
    why: "sawing",
  },
  { tool: "Utility knives, spare blades", when: laysFabric, count: halfOf, why: "fabric" },
  { tool: "Hammers", when: ({ pins }) => pins > 0, count: halfOf, why: "pins" },
  { tool: "Wheelbarrows", when: ({ barrowTrips }) => barrowTrips > 0, count: halfOf, why: "stone, and soil" },
  { tool: "Planks for wheelbarrows", when: ({ barrowTrips }) => barrowTrips > 0, why: "over fabric, lawn, and edging" },
  { tool: "Rakes", when: spreadsStone, count: halfOf, why: "spread" },
  { tool: "Broom or blower", why: "clean up" },
];

/**
 * The tools of a job, by its amounts and the people in the crew.
 *
 * @param people a whole number, 1 or more.
 * @example crewTools(amounts, 3).find(({ tool }) => tool === "Wheelbarrows")?.count // 2
 */
export function crewTools(job: CrewAmounts, people: number): Tool[] {
  return RULES.filter(({ when = () => true }) => when(job)).map(({ tool, why, count }) => ({
    tool,
    why,
    ...(count ? { count: count(job, people) } : {}),
  }));
}
