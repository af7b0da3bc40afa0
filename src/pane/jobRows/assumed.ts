import { readShare } from "../../quantities/numberText";
import { Problem } from "../../quantities/problem";
import { readTape } from "../../quantities/tape";
import { borderWords } from "../../sheets/jobRows/assumptions";
import { type Assumed, usualAssumed } from "../../sheets/jobRows/setting";

/** What is taken for every bed where no column says it, as typed. */
export interface AssumedTexts {
  readonly depth: string;
  readonly stone: string;
  /** Blank for the office's rate, or the usual share where it has none. */
  readonly waste: string;
  /** Long and short sides with border, such as "1 2". */
  readonly border: string;
}

export const usualTexts: AssumedTexts = {
  depth: String(usualAssumed.depthIn),
  stone: usualAssumed.stone,
  waste: "",
  border: `${usualAssumed.longBorders} ${usualAssumed.shortBorders}`,
};

/** How deep the beds of a list are is asked, not assumed. */
export const askedTexts: AssumedTexts = { ...usualTexts, depth: "" };

/** Along which sides a border can run, as it is offered. */
export const borderChoices = [
  [1, 2],
  [2, 2],
  [1, 1],
  [1, 0],
  [2, 1],
  [2, 0],
].map(([longBorders = 0, shortBorders = 0]) => ({
  value: `${longBorders} ${shortBorders}`,
  label: longBorders + shortBorders === 4 ? "all around" : borderWords({ longBorders, shortBorders }),
}));

/** What was typed, read; and what is wrong with a field that cannot be read: then its usual value is in. */
export function readAssumed(texts: AssumedTexts): {
  readonly assumed: Assumed;
  readonly problems: Readonly<Partial<Record<keyof AssumedTexts, string>>>;
} {
  const problems: Partial<Record<keyof AssumedTexts, string>> = {};
  const read = <T>(field: keyof AssumedTexts, usual: T, reader: () => T): T => {
    try {
      return reader();
    } catch (problem) {
      if (!(problem instanceof Problem)) throw problem;
      problems[field] = problem.message;
      return usual;
    }
  };
  const refuse = (text: string): never => {
    throw new Problem("value", text);
  };
  const depthIn = read("depth", usualAssumed.depthIn, () => {
    if (texts.depth.trim() === "") refuse("Stone depth is blank. Type the depth for every bed, such as 2.");
    const inches = readTape(texts.depth, "in", "Depth");
    return inches > 0 ? inches : refuse("Type a depth over 0, such as 2 in.");
  });
  const waste = read("waste", undefined, () => {
    if (texts.waste.trim() === "") return undefined;
    const share = readShare(texts.waste, "Waste");
    return share >= 0 && share < 1 ? share : refuse("Type a percent from 0% to under 100%, such as 8%.");
  });
  const stone = read(
    "stone",
    usualAssumed.stone,
    () => texts.stone.trim() || refuse("Type a kind of stone, such as river rock."),
  );
  const [longBorders = 1, shortBorders = 2] = texts.border.split(" ").map(Number);
  return {
    assumed: { ...usualAssumed, depthIn, stone, longBorders, shortBorders, ...(waste !== undefined && { waste }) },
    problems,
  };
}
