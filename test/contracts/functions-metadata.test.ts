import { describe, expect, test } from "vitest";
import * as functions from "../../src/functions/index";
import { functionsFile } from "../../src/functions/metadata";
import { isList } from "../functionCases";

/**
 * Names and argument names are part of workbooks that offices keep for years. This list is the promise: a `?`
 * marks an argument that may be left out, `[]` one that takes a range. Arguments are only ever appended.
 */
const LAYING = "roll_width, roll_length, overlap_in, end_lap_in?, spacing_in?, cut_outs[]?, bay_ft?, direction?";
const EDGING = "piece_length?, stake_spacing_in?, lap_in?";
const PROMISED = {
  FEET: "measure",
  INCHES: "measure",
  AREA_RECTANGLE: "length, width, corner_radius?, rounded_corners?, cut_outs[]?",
  AREA_TRIANGLE: "side_a, side_b, side_c",
  AREA_ROUND: "diameter, inner_diameter?",
  AREA_WIDTHS: "spacing, widths[], rule?",
  AREA_POINTS: "points[]",
  EDGE_LENGTH: "sides[], corner_radius?, rounded_corners?",
  EDGE_WIDTHS: "spacing, widths[]",
  EDGE_POINTS: "points[], closed?",
  DIG_YARDS: "area, depth_in, trench_length?, trench_width_in?, trench_depth_in?",
  SPOIL_YARDS: "bank_yards, soil?",
  LOADS: "yards, truck_yards, tons_per_yard?, payload_tons?",
  EDGING_PIECES: "edge_length, piece_length, lap_in?, closed?",
  STAKES: "edge_length, piece_length, stake_spacing_in, lap_in?, corners?, closed?, first_side?, next_side?",
  FABRIC_STRIPS: "bed_width, roll_width, overlap_in",
  FABRIC_AREA: "length, width, roll_width, overlap_in, roll_length?, end_lap_in?",
  FABRIC_ROLLS: "length, width, roll_width, roll_length, overlap_in, end_lap_in?",
  PINS: "length, width, roll_width, overlap_in, spacing_in?, cut_around_ft?, bay_ft?",
  STONE_DEPTH: "border_height_in, trench_depth_in, top_gap_in?",
  STONE_DENSITY: "stone",
  STONE_YARDS: "area, depth_in, waste?",
  STONE_TONS: "area, depth_in, stone, waste?",
  STONE_COVERS: "tons, depth_in, stone",
  STONE_BAGS: "area, depth_in, bag_cubic_ft, waste?",
  STONE_BULK_BAGS: "area, depth_in, bag_cubic_yd?, waste?",
  PAVERS: "edge_length, along_in, joint_in?, closed?",
  SAND_YARDS: "edge_length, width_in, depth_in, waste?",
  ORDER_UP: "amount, step, minimum?",
  BARROW_TRIPS: "yards, stone, barrow_cubic_ft?, barrow_lb?",
  HAUL_HOURS: "trips, distance_ft, load_min?, dump_min?, walk_ft_min?",
  PRICE_MARKUP: "cost, markup",
  PRICE_MARGIN: "cost, margin",
  MARKUP_FOR_MARGIN: "margin",
  DIG_DATE: "notice_date, working_days, holidays[]?",
  FABRIC_CUTS: "length, width, roll_width, roll_length, overlap_in, end_lap_in?",
  PIN_MAP: "length, width, roll_width, overlap_in, spacing_in?, bay_ft?",
  JOB_PIECES: "runs[], piece_length, lap_in?, closed_runs[]?, loss_in?",
  JOB_ROLLS: "strips[], roll_length, end_lap_in?",
  CUT_COUNT: "stock_length, lengths[], counts[]?, loss_in?",
  CUT_LIST: "stock_length, lengths[], counts[]?, loss_in?",
  LAYOUT: `points[], ${LAYING}, ${EDGING}, edged[]?`,
  LAYOUT_WIDTHS: `spacing, widths[], ${LAYING}, ${EDGING}, end_sides?, edged[]?`,
  LAYOUT_RECTANGLE: `length, width, corner_radius, rounded_corners, ${LAYING}, ${EDGING}, long_sides?, short_sides?, edged[]?, rounded[]?`,
  LAYOUT_ROUND: `diameter, inner_diameter, ${LAYING}, ${EDGING}, inner_edging?`,
  LAYOUT_CUTS: `points[], ${LAYING}`,
  LAYOUT_PINS: `points[], ${LAYING}`,
};

interface ParameterMetadata {
  name: string;
  type: string;
  description?: string;
  dimensionality?: string;
  optional?: boolean;
  repeating?: boolean;
}
interface FunctionMetadata {
  id: string;
  name: string;
  description?: string;
  parameters: ParameterMetadata[];
  result: { type?: string; dimensionality?: string };
  options?: object;
}

const described: FunctionMetadata[] = JSON.parse(JSON.stringify(functionsFile("https://tools.example"))).functions;

/** The text a person reads while typing a formula is one line, and short enough not to be cut off. */
const LONGEST_DESCRIPTION = 115;

test("the host is told of exactly the promised functions with the promised arguments", () => {
  const told = described.map(({ id, parameters }) => [
    id,
    parameters
      .map(
        ({ name, dimensionality, optional }) =>
          name + (dimensionality === "matrix" ? "[]" : "") + (optional ? "?" : ""),
      )
      .join(", "),
  ]);
  expect(Object.fromEntries(told)).toEqual(PROMISED);
  expect(told.length).toBe(Object.keys(PROMISED).length);
});

test("every described function is one that the entry file gives, under the same name", () => {
  expect(Object.keys(functions).sort()).toEqual(Object.keys(PROMISED).sort());
});

describe.each(described)("$id", ({ id, name, description, parameters, result, options }) => {
  test("has an id the host takes: 3 characters or more, and not shaped like a cell", () => {
    expect(name).toBe(id);
    expect(id).toMatch(/^[A-Z][A-Z0-9_.]{2,}$/);
    // Columns run to XFD; R1C1 style is a cell too.
    expect(id).not.toMatch(/^[A-Z]{1,3}\d+$|^R\d*C\d*$/);
  });

  test("takes anything in each argument, since a length may be text, and gives a number or a list", () => {
    for (const parameter of parameters) {
      expect(parameter.type).toBe("any");
      expect(parameter.repeating).toBeUndefined();
      expect(["matrix", undefined]).toContain(parameter.dimensionality);
    }
    expect(result).toEqual(isList(id) ? { dimensionality: "matrix" } : { type: "number" });
  });

  test("is pure in the host's eyes: no option is asked for", () => {
    expect(options).toBeUndefined();
  });

  test("is explained, and so is each argument, in a line that fits", () => {
    for (const text of [description, ...parameters.map((parameter) => parameter.description)]) {
      expect(text).toMatch(/^\S.{8,}\.$/);
      expect(text!.length).toBeLessThanOrEqual(LONGEST_DESCRIPTION);
    }
  });

  test("says what is taken for an argument that is left out", () => {
    const optional = parameters.filter((parameter) => parameter.optional);
    for (const parameter of optional) expect(parameter.description).toMatch(/Default|Blanks are skipped/);
  });

  test("takes all its needed arguments before those that may be left out", () => {
    const flags = parameters.map((parameter) => Boolean(parameter.optional));
    expect(flags).toEqual([...flags].sort());
  });
});

test("the help of DIG_DATE says that the ticket and state law come first", () => {
  const dig = described.find(({ id }) => id === "DIG_DATE");
  expect(dig?.description).toMatch(/ticket and state law come first/);
});
