import { type EdgingKind, METAL } from "../../quantities/edgingKinds";
import { workOf } from "../../quantities/edgingWork";
import { stoneDepth } from "../../quantities/stoneAmounts";
import { finite, positive } from "../readMeasure";
import { type Block, paragraphs } from "./flow";
import { Pen } from "./pen";
import { ground, layers } from "./sectionLayers";
import { depthMarks } from "./sectionMarks";
import { type DrawingOptions, sheet, textSizeFor } from "./sheet";
import { element, short } from "./svg";
import { depthTaped } from "./words";

/** The depths of a bed, in inches, as `BED.STONE_DEPTH` and the digging functions take them. */
export interface Depths {
  /** Lawn to the scraped floor; 0 or more. */
  readonly scrapeDepthIn: number;
  readonly borderHeightIn: number;
  /** Scraped floor to the foot of the border; 0 or more. */
  readonly trenchDepthIn: number;
  readonly trenchWidthIn: number;
  /** Top edge of the border down to the stone; 0 or more. */
  readonly topGapIn: number;
  /** The largest stones, drawn to scale [1]. */
  readonly stoneSizeIn?: number;
  /** What the bed is edged with [metal]. */
  readonly edging?: EdgingKind;
  /** Sand under pavers [0]. */
  readonly sandDepthIn?: number;
  /** Whether fabric is laid [true]. */
  readonly hasFabric?: boolean;
}

/** Levels of a section in inches above the lawn, and what the sheet needs to draw them. */
export interface SectionView {
  readonly pen: Pen;
  readonly depths: Required<Depths>;
  readonly levels: SectionLevels;
  /** Pixels an inch. */
  readonly scale: number;
  readonly width: number;
  readonly left: number;
  readonly right: number;
  /** Where the border's outer face stands, and how thick it is, in pixels. */
  readonly borderX: number;
  readonly borderWide: number;
  readonly y: (level: number) => number;
  /** Where the earth that is shown ends, below everything. */
  readonly bottom: number;
}

export interface SectionLevels {
  readonly floor: number;
  readonly foot: number;
  /** Where the border stands: above the sand, if there is any. */
  readonly base: number;
  readonly top: number;
  readonly stone: number;
}

const EDGE = 8;
/**
 * Room for the dimensions on the left (border, scrape) and on the right (gap, stone, trench), in text sizes. Pavers and
 * timbers have longer ones.
 */
const LEFT_TEXTS = { plate: 6, thick: 8 };
const RIGHT_TEXTS = 8;
/** Lawn and bed that are shown beside the border, in inches. */
const LAWN_IN = 3;
const BED_BEYOND_TRENCH_IN = 5;
/** The section is at most this many times as high as the sheet is wide. */
const MOST_HEIGHT = 0.55;
/** How thick metal and plastic are drawn, in inches; thinner, they would not show. */
const PLATE_IN = 0.3;
/** Earth that is shown below the lowest thing, in inches. */
const EARTH_BELOW_IN = 0.8;

/**
 * The cross-section of a bed's edge, to scale: lawn, border, trench, fabric and stone, with their depths and the gap
 * below the border's top edge.
 *
 * @param depths in inches.
 * @param options width in pixels to be shown at, theme, title and id, as for the plan.
 * @returns SVG as text: self-contained, with a title and a description.
 * @throws Problem where a depth is no number, or no depth is left for stone.
 * @example
 * drawSection({ scrapeDepthIn: 2.5, borderHeightIn: 4, trenchDepthIn: 1.5, trenchWidthIn: 4, topGapIn: 0.5 })
 */
export function drawSection(depths: Depths, options: DrawingOptions = {}): string {
  const { widthPx = 350, theme = "auto", title = "Cross-section at the edging", id = "bed-section" } = options;
  const pen = new Pen(id, theme, textSizeFor(widthPx));
  const view = viewOf(pen, checked(depths), widthPx);
  const drawing = element("g", { fill: "none" }, ground(view), layers(view), depthMarks(view));

  const parts: string[] = [];
  let top = EDGE;
  const add = ({ svg, height }: Block) => {
    parts.push(element("g", { transform: `translate(0 ${short(top)})` }, svg));
    top += height;
  };
  add(paragraphs(pen, [{ heading: title, items: ["to scale both ways"] }], EDGE, 0, widthPx - 2 * EDGE));
  add({ svg: drawing, height: view.bottom + pen.size * 2.4 });
  return sheet(pen, { width: widthPx, height: top, title, description: describeSection(view.depths) }, parts);
}

function checked(depths: Depths): Required<Depths> {
  const least = (what: string, value: number, argument: string) => {
    finite(what, value, argument);
    return Math.max(0, value);
  };
  const { edging = METAL } = depths;
  // Who reads a bed reads the sizes that its edging has.
  const isSet = edging.lines.edging !== undefined;
  const isDug = isSet || edging.drawn === "cut";
  return {
    scrapeDepthIn: least("The scrape", depths.scrapeDepthIn, "scrape_depth_in"),
    borderHeightIn: isSet ? positive("The edging height", depths.borderHeightIn, "border_height_in") : 0,
    trenchDepthIn: isDug ? least("The trench depth", depths.trenchDepthIn, "trench_depth_in") : 0,
    trenchWidthIn: isDug ? positive("The trench width", depths.trenchWidthIn, "trench_width_in") : 0,
    topGapIn: least("The gap", depths.topGapIn, "top_gap_in"),
    stoneSizeIn: positive("The stone size", depths.stoneSizeIn ?? 1, "stone_size_in"),
    edging,
    hasFabric: depths.hasFabric ?? true,
    sandDepthIn: edging.inSand ? least("The sand", depths.sandDepthIn ?? 0, "sand_depth_in") : 0,
  };
}

/** How thick the edging is, in inches: pavers fill their trench, and a timber is about as wide as it is high. */
function thicknessOf({ edging, trenchWidthIn, borderHeightIn }: Required<Depths>): number {
  if (!edging.lines.edging) return 0;
  if (edging.inSand) return trenchWidthIn;
  return edging.fastened === "each" ? Math.min(trenchWidthIn, borderHeightIn) : PLATE_IN;
}

/** Levels in inches above the lawn. Without edging stone reaches up to the lawn, less the gap. */
function levelsOf(depths: Required<Depths>): SectionLevels {
  const { edging, borderHeightIn, trenchDepthIn, scrapeDepthIn, topGapIn, sandDepthIn } = depths;
  const floor = -scrapeDepthIn;
  const foot = floor - trenchDepthIn;
  if (!edging.lines.edging)
    return { floor, foot, base: foot, top: 0, stone: floor + stoneDepth(scrapeDepthIn, 0, topGapIn) };
  const base = foot + sandDepthIn;
  const top = base + borderHeightIn;
  return { floor, foot, base, top, stone: floor + stoneDepth(top - foot, trenchDepthIn, topGapIn) };
}

function viewOf(pen: Pen, depths: Required<Depths>, width: number): SectionView {
  const levels = levelsOf(depths);
  const { foot, top } = levels;
  const thickness = thicknessOf(depths);
  const left = EDGE + (thickness > PLATE_IN ? LEFT_TEXTS.thick : LEFT_TEXTS.plate) * pen.size;
  const right = width - EDGE - RIGHT_TEXTS * pen.size;
  const across = LAWN_IN + depths.trenchWidthIn + BED_BEYOND_TRENCH_IN;
  const highest = Math.max(top, 0);
  const deep = highest - foot + EARTH_BELOW_IN;
  const scale = Math.min((right - left) / across, (width * MOST_HEIGHT) / deep);
  const head = pen.size * 2;
  const y = (level: number) => head + (highest - level) * scale;
  const borderWide = thickness * scale;
  const borderX = left + LAWN_IN * scale;
  return { pen, depths, levels, scale, width, left, right, borderX, borderWide, y, bottom: y(foot - EARTH_BELOW_IN) };
}

function describeSection(depths: Required<Depths>): string {
  const { edging, scrapeDepthIn, borderHeightIn, trenchDepthIn, topGapIn, sandDepthIn } = depths;
  const { floor, stone: stoneTop, top: above } = levelsOf(depths);
  const stone = stoneTop - floor;
  const inLength = (value: number) => depthTaped(Math.abs(value));
  const stands =
    Math.abs(above) < 0.01 ? "level with the lawn" : `${inLength(above)} ${above > 0 ? "above" : "below"} the lawn`;
  const scraped = `The bed is scraped ${inLength(scrapeDepthIn)} below the lawn.`;
  const { called } = workOf(edging);
  const lies = (fabric: string) => (depths.hasFabric ? `${fabric}; on it is` : "There is no fabric; on the ground is");
  if (!edging.lines.edging) {
    const cut = `The edge is cut straight down along the lawn, ${inLength(trenchDepthIn)} below that, and sloped on the bed side.`;
    return [
      scraped,
      edging.drawn === "cut" ? cut : "There is no edging.",
      `${lies("Fabric covers the floor")} ${inLength(stone)} of stone, ending ${inLength(topGapIn)} below the lawn.`,
    ].join(" ");
  }
  const onSand = edging.inSand ? `on ${inLength(sandDepthIn)} of sand ` : "";
  const sits = edging.inSand ? "sit" : "sits";
  return [
    scraped,
    `${called} ${inLength(borderHeightIn)} ${edging.inSand ? "thick" : "high"} ${sits} ${onSand}in a trench ${inLength(trenchDepthIn)} below that, ${edging.inSand ? "the top" : "its top edge"} ${stands}.`,
    `${lies("Fabric covers the floor up to the edging")} ${inLength(stone)} of stone,`,
    `ending ${inLength(topGapIn)} below the top edge.`,
  ].join(" ");
}
