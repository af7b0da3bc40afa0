import { NO_EDGING } from "../edgingKinds";
import { must } from "../must";
import { feetIn } from "../tape";
import { type FieldKey, fields } from "./fields";
import {
  type BedForm,
  cornerFields,
  countFields,
  countsEdging,
  edgingFields,
  picksCorners,
  secondOf,
  textOf,
  type Way,
} from "./form";
import { secondKey } from "./secondEdging";
import { rectangleSides, widthsEdged, widthsSides } from "./sides";

/*
 * Which sides of a bed have edging and which of its corners are rounded, as they are picked one by one.
 */

/** What some fields are to hold; undefined gives one back to what it has by default. */
export type Fills = Readonly<Partial<Record<FieldKey, string | undefined>>>;

/** A side or a corner that can be picked. */
export interface Pick {
  readonly label: string;
  readonly isOn: boolean;
  /** What the form's fields hold once it's picked the other way. */
  readonly fills: Fills;
}

const SIDE_NAMES = {
  rectangle: ["House", "Right end", "Front", "Left end"],
  widths: ["Base line", "Last end", "Outer edge", "First end"],
} as const;
const CORNER_NAMES = ["Front left corner", "Front right corner", "Back left corner", "Back right corner"] as const;

const isOn = (form: BedForm, key: FieldKey) => Number(textOf(form, key)) > 0;

/** The sides of a bed that can have edging or none, numbered from 1 as in the fields; of a ring, its inside. */
export function pickedSides(form: BedForm): readonly Pick[] {
  const { way } = form;
  if (way === "round") {
    if ((feetIn(textOf(form, "innerDiameter")) ?? 0) === 0) return [];
    const inside = isOn(form, "innerBorder");
    return [{ label: "Around the inside, too", isOn: inside, fills: { innerBorder: inside ? "0" : "1" } }];
  }
  if (way !== "rectangle" && way !== "widths") return [];
  const edged = edgedSides(form, way);
  const keys: readonly FieldKey[] = edgingFields[way];
  return SIDE_NAMES[way].map((label, side) => ({
    label,
    isOn: edged[side] === true,
    fills: {
      ...Object.fromEntries(countFields[way].map((key) => [key, undefined])),
      ...Object.fromEntries(keys.map((key, other) => [key, (edged[other] === true) !== (other === side) ? "1" : "0"])),
      // A side has one edging.
      ...(edged[side] !== true && isSecond(form, way, side) && { [secondSide(way, side)]: "0" }),
    },
  }));
}

const secondSide = (way: keyof typeof edgingFields, side: number) => secondKey<FieldKey>(must(edgingFields[way][side]));
const isSecond = (form: BedForm, way: keyof typeof edgingFields, side: number) =>
  secondOf(form) !== NO_EDGING && isOn(form, secondSide(way, side));

/** The sides that can have the second edging; a side that is picked for it loses the first. */
export function pickedSecondSides(form: BedForm): readonly Pick[] {
  const { way } = form;
  if (secondOf(form) === NO_EDGING || (way !== "rectangle" && way !== "widths")) return [];
  const first = pickedSides(form);
  return SIDE_NAMES[way].map((label, side) => {
    const key = secondSide(way, side);
    const isPicked = isOn(form, key);
    return {
      label,
      isOn: isPicked,
      fills: { ...(!isPicked && first[side]?.isOn && first[side].fills), [key]: isPicked ? "0" : "1" },
    };
  });
}

function edgedSides(form: BedForm, way: keyof typeof edgingFields): readonly boolean[] {
  const keys: readonly FieldKey[] = edgingFields[way];
  if (!countsEdging(form)) return keys.map((key) => isOn(form, key));
  if (way === "widths") return widthsEdged(Number(textOf(form, "endBorders"))).map((edged) => edged > 0);
  const [length = 0, width = 0] = (["length", "width"] as const).map((key) => feetIn(textOf(form, key)));
  const [long = 0, short = 0] = countFields.rectangle.map((key) => Number(textOf(form, key)));
  const sides = rectangleSides(length, width, long, short);
  return keys.map((_, side) => sides.includes(side + 1));
}

/** The corners of a rectangle, rounded or square, in the order in which a count of them takes them. */
export function pickedCorners(form: BedForm): readonly Pick[] {
  if (form.way !== "rectangle") return [];
  const count = Number(textOf(form, "roundedCorners"));
  const rounded = cornerFields.map((key, corner) => (picksCorners(form) ? isOn(form, key) : corner < count));
  return CORNER_NAMES.map((label, corner) => {
    const after = rounded.map((on, other) => on !== (other === corner));
    const counted = after.filter(Boolean).length;
    // As many as there are from the front are a count, as in a list of jobs; others are told one by one.
    const isCount = after.lastIndexOf(true) === counted - 1;
    return {
      label,
      isOn: rounded[corner] === true,
      fills: {
        roundedCorners: isCount ? String(counted) : undefined,
        ...Object.fromEntries(cornerFields.map((key, other) => [key, isCount ? undefined : after[other] ? "1" : "0"])),
      },
    };
  });
}

/** Which of {@link pickedSides} a side of the plan belongs to, by its number there; -1 for one that can't be picked. */
export function pickedSideOf(way: Way, widthsFt: readonly number[], side: number): number {
  if (way !== "widths") return way === "rectangle" ? side - 1 : -1;
  return edgingFields.widths.findIndex((_, place) =>
    widthsSides(
      widthsFt,
      edgingFields.widths.map((_key, other) => Number(other === place)),
    ).includes(side),
  );
}

/** Fields of sides, which the pane shows only where what is in them can't be picked. */
export function sideFieldsOf({ way }: BedForm): readonly FieldKey[] {
  if (way === "round") return ["innerBorder"];
  if (way !== "rectangle" && way !== "widths") return [];
  return [...edgingFields[way], ...countFields[way]].filter((key) => key in fields);
}
