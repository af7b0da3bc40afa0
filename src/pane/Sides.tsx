import { useState } from "preact/hooks";
import type { FieldKey } from "../quantities/bed/fields";
import { type BedForm, givenWidths, textOf } from "../quantities/bed/form";
import { readTape } from "../quantities/tape";

/** A side of a bed on its drawing. */
export interface DrawnSide {
  readonly label: string;
  readonly path: string;
  readonly isEdged: boolean;
}

interface SideDrawingProps {
  /** What gets edging in any case, and what never does. */
  readonly always?: string | undefined;
  readonly never?: string | undefined;
  readonly sides: readonly DrawnSide[];
  readonly box: string;
  readonly onToggle: (index: number) => void;
}

/** The sides of a bed, thick where they get edging; a click on one changes that. The check boxes beside it do the same. */
export function SideDrawing({ always, never, sides, box, onToggle }: SideDrawingProps) {
  return (
    <svg class="sides" viewBox={box} aria-hidden="true">
      <path d={never} class="bare" />
      <path d={always} class="thick" />
      {sides.map(({ label, path, isEdged }, index) => (
        // biome-ignore lint/a11y/noStaticElementInteractions: the keyboard has the check boxes
        <g key={label} onClick={() => onToggle(index)}>
          <path d={path} class={isEdged ? "thick" : "bare"} />
          <path d={path} class="hit" />
        </g>
      ))}
    </svg>
  );
}

interface PickerProps {
  readonly form: BedForm;
  readonly onType: (field: FieldKey, text: string) => void;
}

/** A field that counts sides with edging, and the sides in the order in which the layout gives them edging. */
interface Counted {
  readonly field: FieldKey;
  readonly sides: readonly (readonly [label: string, path: string])[];
  readonly always?: string | undefined;
  readonly never?: string | undefined;
}

/** Along which sides edging is set, picked on a drawing of the bed. The form keeps only how many there are of each kind. */
export function Sides({ form, onType }: PickerProps) {
  const [picked, setPicked] = useState<Partial<Record<FieldKey, readonly string[]>>>({});
  const counted = countedSides(form).filter(({ field, sides }) => isCount(textOf(form, field), sides.length));
  if (counted.length === 0) return null;
  const all = counted.flatMap(({ field, sides }) => {
    const labels = sides.map(([label]) => label);
    const drawn = labels.slice(0, Number(textOf(form, field)));
    const kept = picked[field]?.filter((label) => labels.includes(label)) ?? [];
    const edged = kept.length === drawn.length ? kept : drawn;
    return sides.map(([label, path]) => ({
      label,
      path,
      field,
      isEdged: edged.includes(label),
      isDrawnSo: drawn.includes(label),
    }));
  });
  const toggle = (index: number) => {
    const side = all[index];
    if (!side) return;
    const edged = all.filter((one) => one.field === side.field && one.isEdged !== (one === side));
    setPicked({ ...picked, [side.field]: edged.map(({ label }) => label) });
    onType(side.field, String(edged.length));
  };
  const isTurned = all.some(({ isEdged, isDrawnSo }) => isEdged !== isDrawnSo);
  return (
    <fieldset class="edged">
      <legend>Edging along</legend>
      <SideDrawing
        always={counted[0]?.always}
        never={counted[0]?.never}
        sides={all}
        box="0 0 150 76"
        onToggle={toggle}
      />
      <div class="pairs">
        {all.map(({ label, isEdged }, index) => (
          <label key={label} class="tick">
            <input type="checkbox" checked={isEdged} onChange={() => toggle(index)} />
            {label}
          </label>
        ))}
      </div>
      {isTurned && (
        <p class="below">
          The layout draws it the other way around, along:{" "}
          {all
            .filter(({ isDrawnSo }) => isDrawnSo)
            .map(({ label }) => label.toLowerCase())
            .join(", ")}
          .
        </p>
      )}
    </fieldset>
  );
}

/** Fields that the drawing of sides stands for, unless what is in them is no count of its sides. */
export function pickedFields(form: BedForm): ReadonlySet<FieldKey> {
  return new Set(
    countedSides(form)
      .filter(({ field, sides }) => isCount(textOf(form, field), sides.length))
      .map(({ field }) => field),
  );
}

const isCount = (text: string, most: number) => /^\d$/.test(text.trim()) && Number(text) <= most;

const [WIDE, HIGH] = [138, 64];

function countedSides(form: BedForm): readonly Counted[] {
  if (form.way === "rectangle") {
    const [length, width] = [feetOf(form, "length", 16), feetOf(form, "width", 6)];
    const scale = Math.min(WIDE / length, HIGH / width);
    const [wide, high] = [Math.max(30, length * scale), Math.max(18, width * scale)];
    const [left, top] = [75 - wide / 2, 38 - high / 2];
    const along = [
      ["Front", `M${left} ${top}h${wide}`],
      ["House", `M${left} ${top + high}h${wide}`],
    ] as const;
    const across = [
      ["Right end", `M${left + wide} ${top}v${high}`],
      ["Left end", `M${left} ${top}v${high}`],
    ] as const;
    const [long, short] = length >= width ? [along, across] : [across, along];
    return [
      { field: "longBorders", sides: long },
      { field: "shortBorders", sides: short },
    ];
  }
  if (form.way === "round" && feetOf(form, "innerDiameter", 0) > 0) {
    return [{ field: "innerBorder", sides: [["Around the inside, too", circle(14)]], always: circle(30) }];
  }
  if (form.way === "widths") {
    const widths = givenWidths(form).map((text) => read(text, 0));
    const taped = widths.length > 1 ? widths : [3, 5, 4, 5];
    const [step, most] = [WIDE / (taped.length - 1), Math.max(...taped, 0.1)];
    const at = (index: number) => `${6 + index * step} ${70 - ((taped[index] ?? 0) / most) * HIGH}`;
    const ends = [
      ["First end", `M6 70L${at(0)}`],
      ["Last end", `M144 70L${at(taped.length - 1)}`],
    ] as const;
    const outer = `M${taped.map((_, index) => at(index)).join("L")}`;
    return [{ field: "endBorders", sides: ends, always: outer, never: "M6 70H144" }];
  }
  return [];
}

const circle = (radius: number) =>
  `M${75 - radius} 38a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0`;

const feetOf = (form: BedForm, field: FieldKey, otherwise: number) => read(textOf(form, field), otherwise);

function read(text: string, otherwise: number): number {
  const feet = feetIn(text);
  return feet !== undefined && feet > 0 ? feet : otherwise;
}

/** A length as far as it's typed; undefined where it can't be read yet, which its field says. */
export function feetIn(text: string): number | undefined {
  try {
    return readTape(text, "ft", "length");
  } catch {
    return undefined;
  }
}
