import type { RateKey } from "../../quantities/bed/rates";

/** A part of the rates: its heading, and each rate with a note. */
export interface RateSection {
  readonly heading: string;
  readonly rates: Readonly<Partial<Record<RateKey, string>>>;
}

const PAYLOAD = "GVWR less empty weight, people and fuel";

/** All rates but the list of stone by kind, in the order in which they stand. */
export const rateSections: readonly RateSection[] = [
  {
    heading: "Stone of any other kind",
    rates: { stoneCost: "for stone that is not listed, or given by its weight" },
  },
  {
    heading: "Border, fabric and pins, by the pack",
    rates: {
      pieceLength: "as bought; tape text may be typed, such as 8' or 2.5 m",
      stakesPerPiece: "in the price of the piece",
      pieceCost: "each, with the stakes that come with it",
      stakeCost: "beyond those that come with the pieces",
      rollWidth: "tape text may be typed",
      rollLength: "tape text may be typed",
      rollCost: "a whole roll of this width and length",
      pinsPerBox: "pins or staples for the fabric",
      pinBoxCost: "a whole box of that many",
    },
  },
  {
    heading: "Hauling and dump fees",
    rates: {
      haulCost: "truck, driver and fuel for a load of spoil, without the fee",
      dumpFee: "what the dump or yard takes for such a load",
      truckYards: "what the truck that hauls off takes, loose",
      truckPayload: PAYLOAD,
      deliveryCost: "a load of stone to the site",
      deliveryYards: "what the delivering truck takes, loose",
      deliveryPayload: PAYLOAD,
    },
  },
  {
    heading: "Crew",
    rates: {
      crewRate: "wage with payroll taxes, insurance and paid time",
      crewSize: "who work on a bed together",
      crewDay: "hours on the site",
    },
  },
  {
    heading: "Production",
    rates: {
      scrapeHours: "labor hours to cut sod and load, per bank cu yd",
      edgingRate: "one person",
      fabricRate: "one person",
      rakeRate: "one person, after the barrow",
    },
  },
  {
    heading: "Markups, overhead and tax",
    rates: {
      materialMarkup: "added to the cost of every line that is material",
      laborMarkup: "added to the cost of every line that is labor",
      haulingMarkup: "added to the cost of every line that is hauling",
      overhead: "share of the sum of costs, passed on without markup",
      minimumCharge: "a job is never priced under this",
      salesTax: "of the whole price; the law of the place says what is taxed",
    },
  },
  {
    heading: "Ordering",
    rates: {
      waste: "added to the stone for waste and low spots",
      orderStep: "orders are rounded up to whole steps",
      orderMinimum: "0 where the yard has none",
    },
  },
];
