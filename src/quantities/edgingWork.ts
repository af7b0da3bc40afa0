import type { EdgingKind } from "./edgingKinds";
import { must } from "./must";
import type { Caution } from "./tables";

const SILICA: Caution = {
  about: "Silica",
  text: "Sawing pavers or brick makes silica dust. Use a saw that feeds water to the blade, outdoors, and stay upwind.",
  source:
    "29 CFR 1926.1153, Table 1, handheld power saws; read in California’s copy, 8 CCR 1532.3. Upwind: common practice",
};
const TREATED: Caution = {
  about: "Treated wood",
  text: "Wear gloves, goggles, and a dust mask to cut it. Pick up the sawdust, and don't burn what's left over.",
  source:
    "EPA consumer information sheet, as the US Forest Products Laboratory gives it in its Wood Handbook; read there",
};
const HEAVY: Caution = {
  about: "Heavy timbers",
  text: "An 8 ft 6 by 6 weighs about 75 lb, more when it's wet. Lift it with a partner.",
  source:
    "By hand: 5 1/2 by 5 1/2 in by 8 ft is 1.68 cu ft, at 45 lb for treated pine (from memory). The NIOSH lifting constant is 51 lb",
};
const SPIKES: Caution = {
  about: "Spikes",
  text: "They go deeper than the trench. Hand dig beside marks first, and drive none over a marked line.",
  source: "Common practice; 49 CFR 196.103 for waiting for the marks",
};
const UPKEEP: Caution = {
  about: "Cut edge",
  text: "Have it recut every year. Where it fills in, stone works into the lawn, and a mower can throw it.",
  source: "Common practice, no source",
};
const LOOSE: Caution = {
  about: "No edging",
  text: "Nothing holds the stone in. It works into the lawn, and a mower can throw it.",
  source: "Common practice, no source",
};

/** How the crew sets each kind of edging, and what a drawing calls it: fetched with what shows it. */
export interface EdgingWork {
  /** What it is called in a drawing, as a heading; and in its legend, with what fastens it. */
  readonly called: string;
  readonly edge: string;
  readonly fastener?: string;
  /** What the crew does: common practice. */
  readonly step?: { readonly label: string; readonly hint: string };
  /** How it does what was left for last, once stone is in: common practice. */
  readonly close?: string;
  readonly cautions?: readonly Caution[];
}

/** By the kinds' names. The steps of metal edging are in `job/crewSteps.ts`; none takes none. */
export const EDGING_WORK: Readonly<Record<string, EdgingWork>> = {
  metal: {
    called: "Edging",
    edge: "edging, gap at a joint",
    fastener: "stake",
  },
  plastic: {
    called: "Plastic edging",
    edge: "plastic edging, gap at a joint",
    fastener: "stake",
    step: {
      label: "Trench and set plastic edging",
      hint: "Let coils warm up flat first; smooth face out; a connector and a stake at each joint; leave a piece out for wheelbarrows.",
    },
  },
  pavers: {
    called: "Pavers",
    edge: "pavers",
    step: {
      label: "Trench, bed sand, and set pavers",
      hint: "Screed the sand level and don't walk on it; set to a string, smooth face out; sweep sand into the joints; leave a few out for wheelbarrows.",
    },
    close: "Set the pavers that were left out, sweep sand into the joints, and rake stone up to them.",
    cautions: [SILICA],
  },
  timber: {
    called: "Timber",
    edge: "timber, gap at a joint",
    fastener: "spike",
    step: {
      label: "Trench, set, and spike timbers",
      hint: "Drill first, and drive spikes only where the marks are clear; butt the ends; smooth face out; leave a timber out for wheelbarrows.",
    },
    close: "Set and spike the last timbers, and rake stone up to them.",
    cautions: [SPIKES, TREATED, HEAVY],
  },
  "spade cut": {
    called: "Spade-cut edge",
    edge: "spade-cut edge",
    step: {
      label: "Cut the edge",
      hint: "Cut straight down along the line, then slope the bed side; keep the lawn side sharp, and leave a ramp for wheelbarrows.",
    },
    close: "Cut the ramp away, and rake stone up to the edge.",
    cautions: [UPKEEP],
  },
  none: { called: "No edging", edge: "bed edge", cautions: [LOOSE] },
};

/** How a kind is set and called. */
export const workOf = ({ name }: Pick<EdgingKind, "name">): EdgingWork => must(EDGING_WORK[name]);

/** What to mind about some kinds of edging together, each caution once. */
export function edgingCautions(kinds: readonly string[]): readonly Caution[] {
  return [...new Set(kinds.flatMap((kind) => EDGING_WORK[kind]?.cautions ?? []))];
}
