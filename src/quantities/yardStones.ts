import { plainName } from "./nearestName";
import { STONES } from "./stone";

/** How yards shorten and vary the words of our stones. */
const WORDS: Readonly<Record<string, string>> = {
  rr: "river rock",
  rvr: "river",
  riv: "river",
  rk: "rock",
  rocks: "rock",
  riverrock: "river rock",
  grvl: "gravel",
  grvel: "gravel",
  gvl: "gravel",
  grav: "gravel",
  gravels: "gravel",
  pgravel: "pea gravel",
  peagravel: "pea gravel",
  peastone: "pea gravel",
  ls: "limestone",
  lmst: "limestone",
  limest: "limestone",
  stn: "stone",
  crsh: "crushed",
  crshd: "crushed",
  crush: "crushed",
  dg: "decomposed granite",
  decomp: "decomposed",
  gran: "granite",
  lava: "lava rock",
  pebble: "pebbles",
  cobbles: "cobble",
  cobblestone: "cobble",
  conc: "concrete",
  nugget: "nuggets",
  woodchips: "wood chips",
};

/** What yards add that says nothing of the weight: washed, and how it is sized. */
const PASSED_OVER = new Set("in inch inches washed clean screened chips chip size sz nom x to".split(" "));
/** Two words of the yard that are one stone of ours. */
const TOGETHER: readonly (readonly [RegExp, string])[] = [
  [/\bpea (?:stone|rock)\b/, "pea gravel"],
  [/\blava rock rock\b/, "lava rock"],
];

/**
 * Our stone of which a yard's name speaks, with its size, its grade, and its shortenings: `RR 1-1/2`, `pea grvl`,
 * `#57 limestone`. Every word has to be known, so that a name with one that isn't, `granite boulders`, is asked about.
 *
 * @param name as it is written on the list or the ticket.
 * @returns the stone's name in our list; undefined where it isn't sure.
 * @source Common practice in American yards; no publication lists such names.
 * @example stoneOfYard("RR 1-1/2") // "river rock"
 */
export function stoneOfYard(name: string): string | undefined {
  // A number may have its sign spelled: no. 57. Initials may have dots: R.R.
  const whole = STONES.find((stone) => stone.name === plainName(name));
  if (whole) return whole.name;
  const words = plainName(name.replace(/(?<=\b\p{L})\.(?=\p{L}\b)/gu, ""))
    .replace(/(?:\bno )?\d+/g, " ")
    .split(" ")
    .filter((word) => word !== "" && !PASSED_OVER.has(word))
    .map((word) => WORDS[word] ?? word)
    // "Limestone, crushed" is the same.
    .sort((one, other) => Number(other === "crushed") - Number(one === "crushed"));
  const plain = TOGETHER.reduce((text, [written, ours]) => text.replace(written, ours), words.join(" "));
  const found = STONES.find((stone) => stone.name === plain);
  if (found) return found.name;
  // Limestone, basalt, and the like are sold crushed; granite is sold decomposed as well, and stone is any of them.
  if (plain === "granite" || plain === "stone") return undefined;
  return STONES.find((stone) => stone.name === `crushed ${plain}`)?.name;
}
