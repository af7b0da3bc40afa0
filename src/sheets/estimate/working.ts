import { DEPTH_LIMITS, depthVerdicts } from "../../quantities/bed/depthVerdict";
import { type BedForm, givenCutOuts, hasPlan, type Way } from "../../quantities/bed/form";
import type { DraftRow } from "../compose";
import { quoted } from "../typed";
import { closedCondition, inList } from "./measured";
import { stoneWeightFormula } from "./rateFormulas";
import { fieldRow, resultRow } from "./rows";

/** Depth follows from the border, stone from depth and area. `stoneNames` are offered to choose from. */
export function stoneRows(form: BedForm, stoneNames: readonly string[]): DraftRow[] {
  return [
    fieldRow(form, "borderHeight"),
    fieldRow(form, "trenchDepth"),
    fieldRow(form, "topGap"),
    resultRow(
      "Stone depth",
      { content: "=BED.STONE_DEPTH({borderHeight},{trenchDepth},{topGap})", key: "stoneDepth" },
      "in",
      "border, less trench, less gap",
    ),
    fieldRow(form, "stone", stoneNames),
    fieldRow(form, "stoneSize"),
    depthCheckRow(),
    fieldRow(form, "waste"),
    resultRow(
      "Stone weighs",
      { content: form.rates ? stoneWeightFormula() : "=BED.STONE_DENSITY({stone})", key: "stoneDensity" },
      "tons/cu yd",
      form.rates
        ? "loose, as weighed in the sheet Rates, or from the table of common stone"
        : "loose, from the table of common stone; a scale ticket beats it",
    ),
    resultRow(
      "Stone needed",
      { content: "=BED.STONE_YARDS({stoneArea},{stoneDepth},{waste})", key: "stoneYards" },
      "cu yd",
      "area × depth ÷ 324, and waste",
    ),
    resultRow(
      "Stone needed",
      { content: "=BED.STONE_TONS({stoneArea},{stoneDepth},{stoneDensity},{waste})", key: "stoneTons" },
      "tons",
    ),
    fieldRow(form, "orderStep"),
    fieldRow(form, "orderMinimum"),
    resultRow(
      "Stone to order",
      { content: "=BED.ORDER_UP({stoneTons},{orderStep},{orderMinimum})", key: "orderTons" },
      "tons",
      "up to the yard's next step",
    ),
  ];
}

function depthCheckRow(): DraftRow {
  const { stoneTooLarge, shallow, deep, fits } = depthVerdicts;
  const content =
    `=IF({stoneDepth}<${DEPTH_LIMITS.leastIn},${quoted(shallow)},IF({stoneSize.decimal}>{stoneDepth}*2/3,${quoted(stoneTooLarge)},` +
    `IF({stoneDepth}>${DEPTH_LIMITS.mostIn},${quoted(deep)},${quoted(fits)})))`;
  return {
    cells: [
      { content: "Depth check", look: "label" },
      { content, key: "depthCheck", look: "note", warnWhen: `={self}<>${quoted(fits)}` },
    ],
  };
}

export function diggingRows(form: BedForm, soilNames: readonly string[]): DraftRow[] {
  return [
    fieldRow(form, "scrapeDepth"),
    fieldRow(form, "trenchWidth"),
    resultRow(
      "Dig, in the ground",
      {
        content:
          "=BED.DIG_YARDS({stoneArea},{scrapeDepth},{borderRun}" +
          (form.way === "round" ? "+{innerRun}" : "") +
          ",{trenchWidth},{trenchDepth})",
        key: "digYards",
      },
      "cu yd",
      "the scrape and the trench below it",
    ),
    fieldRow(form, "soil", soilNames),
    resultRow(
      "Spoil, loose",
      { content: "=BED.SPOIL_YARDS({digYards},{soil})", key: "spoilYards" },
      "cu yd",
      "swollen by digging",
    ),
    fieldRow(form, "soilTonsPerYard"),
    fieldRow(form, "truckYards"),
    fieldRow(form, "truckPayload"),
    resultRow(
      "Spoil loads",
      {
        content: "=BED.LOADS({spoilYards},{truckYards},{soilTonsPerYard},{truckPayload})",
        key: "spoilLoads",
        format: "whole",
      },
      "loads",
      "the larger of by volume and by weight",
    ),
    fieldRow(form, "deliveryYards"),
    fieldRow(form, "deliveryPayload"),
    resultRow(
      "Stone deliveries",
      {
        content: "=BED.LOADS({orderTons}/{stoneDensity},{deliveryYards},{stoneDensity},{deliveryPayload})",
        key: "deliveries",
        format: "whole",
      },
      "loads",
    ),
  ];
}

export function borderRows(form: BedForm): DraftRow[] {
  const runs = runsOf(form);
  const pieces = runs.map(([run, closed]) => `BED.EDGING_PIECES({${run}},{pieceLength},{pieceLap},${closed})`);
  const stakes = runs.map(
    ([run, closed], index) =>
      `BED.STAKES({${run}},{pieceLength},{stakeSpacing},{pieceLap},${index === 0 ? "{squareCorners}" : "0"},${closed})`,
  );
  return [
    fieldRow(form, "borderFinish"),
    fieldRow(form, "pieceLength"),
    fieldRow(form, "pieceLap"),
    resultRow("Border pieces", { content: `=${pieces.join("+")}`, key: "pieces", format: "whole" }, "pieces"),
    fieldRow(form, "stakeSpacing"),
    resultRow(
      "Stakes",
      { content: `=${stakes.join("+")}`, key: "stakes", format: "whole" },
      "stakes",
      "at the ends, through both pieces at joints, between, and at corners",
    ),
    fieldRow(form, "stakesPerPiece"),
    resultRow(
      "Stakes to buy extra",
      { content: "=MAX(0,{stakes}-{pieces}*{stakesPerPiece})", key: "extraStakes", format: "whole" },
      "stakes",
    ),
  ];
}

/** The border's runs: the key of each one's length, and whether it closes on itself. */
function runsOf(form: BedForm): readonly (readonly [run: string, closed: string])[] {
  const outer = ["borderRun", closedCondition(form)] as const;
  return form.way === "round" ? [outer, ["innerRun", "TRUE"]] : [outer];
}

/** Which column of the list that the layout functions give holds what. */
const LAYOUT_COLUMNS = { strips: 3, fabric: 4, rolls: 5, pins: 7 } as const;

/** How fabric and pins are counted: by the rule for a plain rectangle, or on the bed laid out in plan. */
export function fabricRows(form: BedForm): DraftRow[] {
  const span = "{fabricLength},{fabricWidth},{rollWidth}";
  const [inPlan, isPlain] = [layoutCall(form), plainCondition(form)];
  const counted = (byRule: string, column: number, after = "") => {
    if (inPlan === undefined) return `=${byRule}`;
    const laid = `INDEX(${inPlan},2,${column})${after}`;
    return isPlain === undefined ? `=${laid}` : `=IF(${isPlain},${byRule},${laid})`;
  };
  const [ruleWords, planWords] = [quoted("by the rule for a plain rectangle"), quoted("on the bed laid out in plan")];
  const byLength = quoted("by length and widest width, so some is cut away");
  const how =
    inPlan === undefined ? `=${byLength}` : isPlain ? `=IF(${isPlain},${ruleWords},${planWords})` : `=${planWords}`;
  const others = "+BED.ORDER_UP({cutAround.decimal},{pinSpacing.decimal}/12)/({pinSpacing.decimal}/12)";
  const { strips, fabric, rolls, pins } = LAYOUT_COLUMNS;
  return [
    fieldRow(form, "rollWidth"),
    fieldRow(form, "rollLength"),
    fieldRow(form, "overlap"),
    fieldRow(form, "endLap"),
    ...(hasPlan(form.way) ? [fieldRow(form, "stripDirection")] : []),
    {
      cells: [
        { content: "Counted", look: "label" },
        { content: how, key: "counted", look: "note" },
      ],
    },
    resultRow(
      "Strips side by side",
      {
        content: counted("BED.FABRIC_STRIPS({fabricWidth},{rollWidth},{overlap})", strips),
        key: "fabricStrips",
        format: "whole",
      },
      "strips",
    ),
    resultRow(
      "Fabric lying in the bed",
      { content: counted(`BED.FABRIC_AREA(${span},{overlap},{rollLength},{endLap})`, fabric), key: "fabricArea" },
      "sq ft",
      "laps counted twice",
    ),
    resultRow(
      "Fabric rolls",
      {
        content: counted(`BED.FABRIC_ROLLS(${span},{rollLength},{overlap},{endLap})`, rolls),
        key: "rolls",
        format: "whole",
      },
      "rolls",
    ),
    fieldRow(form, "pinSpacing"),
    fieldRow(form, "pinBay"),
    resultRow(
      "Pins",
      {
        content: counted(`BED.PINS(${span},{overlap},{pinSpacing},{cutAround},{pinBay})`, pins, others),
        key: "pins",
        format: "whole",
      },
      "pins",
      "rows of pairs and singles, every lap, every corner",
    ),
    fieldRow(form, "pinsPerBox"),
    resultRow(
      "Boxes of pins",
      { content: "=BED.ORDER_UP({pins},{pinsPerBox})/{pinsPerBox}", key: "pinBoxes", format: "whole" },
      "boxes",
    ),
  ];
}

/** The call that lays this bed out in plan; undefined where no more than its area is known. */
function layoutCall(form: BedForm): string | undefined {
  const cutOuts = givenCutOuts(form).length;
  const placed = cutOuts > 0 ? `{cutOut1.x}:{cutOut${cutOuts}.deep}` : "";
  const laying = `{rollWidth},{rollLength},{overlap},{endLap},{pinSpacing},${placed},{pinBay},IF(ISNUMBER({stripDirection}),{stripDirection},"")`;
  const shapes: Record<Way, string | undefined> = {
    rectangle: `BED.LAYOUT_RECTANGLE({length},{width},{cornerRadius},{roundedCorners},${laying})`,
    round: `BED.LAYOUT_ROUND({diameter},{innerDiameter},${laying})`,
    widths: `BED.LAYOUT_WIDTHS({spacing},{first}:{last},${laying})`,
    points: `BED.LAYOUT({first}:{last.y},${laying})`,
    area: undefined,
  };
  const call = shapes[form.way];
  return call && inList(form, call);
}

/** The condition under which the bed is a plain rectangle; undefined where it never is. */
function plainCondition(form: BedForm): string | undefined {
  if (form.way !== "rectangle" || givenCutOuts(form).length > 0) return undefined;
  return "OR({cornerRadius.decimal}=0,{roundedCorners}=0)";
}

export function crewRows(form: BedForm): DraftRow[] {
  const hours = (label: string, key: string, content: string, how = "") =>
    resultRow(label, { content, key }, "person-h", how);
  return [
    fieldRow(form, "crewRate"),
    fieldRow(form, "crewSize"),
    fieldRow(form, "crewDay"),
    fieldRow(form, "scrapeHours"),
    fieldRow(form, "edgingRate"),
    fieldRow(form, "fabricRate"),
    fieldRow(form, "rakeRate"),
    fieldRow(form, "barrowSize"),
    fieldRow(form, "barrowLoad"),
    fieldRow(form, "barrowDistance"),
    fieldRow(form, "cleanUpHours"),
    resultRow(
      "Barrow trips",
      {
        content: "=BED.BARROW_TRIPS({stoneYards},{stoneDensity},{barrowSize},{barrowLoad})",
        key: "barrowTrips",
        format: "whole",
      },
      "trips",
      "by tray or by load limit",
    ),
    hours("Scrape and load", "scrapeTime", "={digYards}*{scrapeHours}"),
    hours(
      "Set edging",
      "edgingTime",
      form.way === "round" ? "=({borderRun}+{innerRun})/{edgingRate}" : "={borderRun}/{edgingRate}",
    ),
    hours("Lay and pin fabric", "fabricTime", "={fabricArea}/{fabricRate}"),
    hours(
      "Barrow and spread",
      "spreadTime",
      "=BED.HAUL_HOURS({barrowTrips},{barrowDistance})+{stoneArea}/{rakeRate}",
      "load 2 min, dump half a minute, walk 200 ft a minute; then rake",
    ),
  ];
}
