import { units } from "../../headings/units";
import { areaAddress } from "../../spreadsheet/areas";
import type { Cell } from "../book";
import { calledName, isCall, walk } from "../formula/tree";
import { fullName } from "../knowledge";
import { companion, type Measure } from "../sheet/measures";
import type { Study } from "../study";
import { addressFrom, nameOf, short } from "../words";
import { eachFormula, eachMeasure } from "./each";
import type { Observation, Rule } from "./rule";

const SLACK = 1.001;

export const payload: Rule = {
  id: "over-payload",
  title: "A load is heavier than what may be loaded",
  level: "odd",
  rank: 20,
  matters: "Stone fills the payload long before the box looks full: an overloaded truck, or a trip nobody charged.",
  *look(study) {
    const payloads = study.measures.filter(({ role, amount }) => role === "payload" && amount > 0);
    const [only] = payloads;
    if (!only) return;
    yield* eachMeasure(study, (measure) => {
      if (measure.role !== "loads" || measure.amount <= 0 || (measure.unit && units[measure.unit].measures !== "count"))
        return undefined;
      const limit = companion(study, measure, "payload") ?? (payloads.length === 1 ? only : undefined);
      return limit && overloaded(study, measure, limit);
    });
    const loads = fullName(study.knowledge, "LOADS").toUpperCase();
    yield* eachFormula(study, (cell, pattern) =>
      [...walk(pattern.tree ?? null)].some(
        ({ part }) => isCall(part) && calledName(part) === loads && part.arguments.length < 4,
      )
        ? byVolumeOnly(study, cell, pattern.id, only)
        : undefined,
    );
  },
};

function overloaded(study: Study, loads: Measure, limit: Measure): Observation | undefined {
  const { cell } = loads;
  const tons = companion(study, loads, "tons");
  if (!tons || tons.amount <= loads.amount * limit.amount * SLACK) return undefined;
  const each = tons.amount / loads.amount;
  return {
    cell,
    more: [tons.cell, limit.cell],
    group: `${cell.sheet}:${cell.column}`,
    about: `${loads.amount} ${tons.amount} ${limit.amount}`,
    seen:
      `${areaAddress(cell)} (${nameOf(study.book, cell)}): ${short(tons.amount)} tons in ${short(loads.amount)} loads are ${short(each)} tons each, ` +
      `over the payload of ${short(limit.amount)} in ${addressFrom(study.book, cell, limit.cell)}.`,
    todo: `Count ${Math.ceil(tons.amount / limit.amount)} loads, or a truck that may carry more.`,
  };
}

function byVolumeOnly(study: Study, cell: Cell, pattern: number, limit: Measure): Observation {
  const { book } = study;
  return {
    cell,
    more: [limit.cell],
    group: `${cell.sheet}:${pattern}`,
    about: "by volume only",
    seen: `${areaAddress(cell)} (${nameOf(book, cell)}) counts loads by volume only, though a payload stands in ${addressFrom(book, cell, limit.cell)} (${short(limit.amount)} tons).`,
    todo: "Give the weight of a yard and the payload, too.",
  };
}
