import { type FieldKey, fields } from "./fields";

/** The fields behind the argument names that problems of the arithmetic speak of. */
const fieldOfArgument: Readonly<Record<string, FieldKey>> = {
  border_height_in: "borderHeight",
  trench_depth_in: "trenchDepth",
  top_gap_in: "topGap",
  corner_radius: "cornerRadius",
  rounded_corners: "roundedCorners",
  inner_diameter: "innerDiameter",
  diameter: "diameter",
  cut_outs: "cutOuts",
  overlap_in: "overlap",
  end_lap_in: "endLap",
  lap_in: "pieceLap",
  length: "length",
  stone: "stone",
  soil: "soil",
};

const ARGUMENT_WITH_UNDERSCORE = /\b[a-z]+(?:_[a-z]+)+\b/g;

/** The field that a problem of the arithmetic is about; undefined where it is about a list or several. */
export function fieldOf(argument: string | undefined): FieldKey | undefined {
  return fieldOfArgument[argument ?? ""];
}

/** A message in which argument names are put as the form's labels: `border_height_in` as “Border height”. */
export function inFormWords(message: string): string {
  return message.replace(ARGUMENT_WITH_UNDERSCORE, (name) => {
    const key = fieldOf(name);
    return key ? `“${fields[key].label}”` : name;
  });
}
