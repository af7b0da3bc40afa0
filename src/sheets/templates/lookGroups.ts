import { must } from "../../quantities/must";
import { type Area, areaAddress } from "../../spreadsheet/areas";
import type { Region } from "../plain/region";
import type { CellStyle } from "../plan";
import { hidingIn } from "./hidingLook";
import type { TemplateLook } from "./template";

const PLAIN_FORMAT = "General";

/** The looks of a region as a template holds them, and which cells hide something that the template shows. */
export interface Looks {
  readonly looks: readonly TemplateLook[];
  /** Places in the region, and why each was hidden. */
  readonly shown: readonly { readonly row: number; readonly column: number; readonly why: string }[];
}

/** Collects cells that look alike. What hides a cell's contents is left out, and told where the cell holds something. */
export function looksOf({ dress, formats, formulas }: Region): Looks {
  const areas = new Map<string, { look: Omit<TemplateLook, "at">; areas: Area[] }>();
  const shown: { row: number; column: number; why: string }[] = [];
  formats.forEach((row, down) => {
    let last: string | undefined;
    row.forEach((numberFormat, across) => {
      const { look, why } = openLook(dress?.[down]?.[across], numberFormat);
      if (formulas[down]?.[across] !== "") for (const one of why) shown.push({ row: down, column: across, why: one });
      const key = JSON.stringify(look);
      if (key !== "{}") {
        const known = areas.get(key) ?? { look, areas: [] };
        areas.set(key, known);
        const before = known.areas.at(-1);
        if (last === key && before) known.areas[known.areas.length - 1] = { ...before, columns: before.columns + 1 };
        else known.areas.push({ row: down, column: across, rows: 1, columns: 1 });
      }
      last = key;
    });
  });
  return {
    looks: [...areas.values()].map(({ look, areas: places }) => ({ at: joinedDown(places).map(areaAddress), ...look })),
    shown,
  };
}

function openLook(dress: CellStyle | undefined, numberFormat: string) {
  const look: Omit<TemplateLook, "at"> = { ...(numberFormat !== PLAIN_FORMAT && { numberFormat }), ...dress };
  const hiding = hidingIn(look);
  const parts: readonly string[] = hiding.map(({ part }) => part);
  const open = Object.fromEntries(Object.entries(look).filter(([part]) => !parts.includes(part)));
  // Without a color of their own letters may still not show on a dark ground.
  const left = hidingIn(open).some(({ part }) => part === "color");
  if (left) delete open.fill;
  return { look: open as typeof look, why: hiding.map(({ why }) => why) };
}

function joinedDown(areas: readonly Area[]): Area[] {
  const joined: Area[] = [];
  const ending = new Map<string, number>();
  for (const area of areas) {
    const above = ending.get(`${area.row},${area.column},${area.columns}`);
    const index = above ?? joined.length;
    joined[index] = above === undefined ? area : { ...must(joined[above]), rows: must(joined[above]).rows + 1 };
    ending.set(`${area.row + 1},${area.column},${area.columns}`, index);
  }
  return joined;
}
