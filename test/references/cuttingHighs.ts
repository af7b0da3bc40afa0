import loadHighs from "highs";

const loading = loadHighs();

/**
 * The fewest stock lengths by another road: HiGHS, a general solver, on the arc-flow model of Valério de Carvalho
 * (Exact Solution of Bin-Packing Problems Using Column Generation and Branch-and-Bound, 1999: from memory). A unit of
 * flow is a stock length; it steps from cut to cut along whole units of length, and a piece is a step of its length.
 *
 * @param capacity whole units, not too many: there is a row for each.
 * @param sizes whole units, each once.
 * @param counts how many of each size.
 */
export async function fewestByHighs(
  capacity: number,
  sizes: readonly number[],
  counts: readonly number[],
): Promise<number> {
  const highs = await loading;
  const steps = sizes.flatMap((size, piece) =>
    Array.from({ length: capacity - size + 1 }, (_, from) => ({
      name: `s${from}_${piece}`,
      piece,
      from,
      to: from + size,
    })),
  );
  const names = (chosen: typeof steps) => chosen.map(({ name }) => name);
  const rows = counts.map(
    (count, piece) => `${names(steps.filter((step) => step.piece === piece)).join(" + ")} >= ${count}`,
  );
  for (let at = 1; at < capacity; at++) {
    const leaving = names(steps.filter(({ from }) => from === at));
    const arriving = names(steps.filter(({ to }) => to === at));
    if (leaving.length > 0)
      rows.push(`${[...arriving, ...leaving.map((name) => `- ${name}`)].join(" + ").replaceAll("+ -", "-")} >= 0`);
  }
  const model = [
    "Minimize",
    `stocks: ${names(steps.filter(({ from }) => from === 0)).join(" + ")}`,
    "Subject To",
    ...rows.map((row, n) => `r${n}: ${row}`),
    "General",
    names(steps).join("\n"),
    "End",
  ].join("\n");
  const answer = highs.solve(model);
  if (answer.Status !== "Optimal") throw new Error(`HiGHS: ${answer.Status}`);
  return Math.round(answer.ObjectiveValue);
}
