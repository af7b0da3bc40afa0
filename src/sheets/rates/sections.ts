import type { RateKey } from "../../quantities/bed/rates";

/** A part of the rates: its heading, and each rate with a note. */
export interface RateSection {
  readonly heading: string;
  readonly rates: Readonly<Partial<Record<RateKey, string>>>;
}

const PAYLOAD = "GVWR less empty weight, people, and fuel";

/** All rates but the list of stone by kind, in the order in which they stand. */
export const rateSections: readonly RateSection[] = [
  {
    heading: "Stone of any other kind",
    rates: { stoneCost: "for stone that isn't listed, or is given by weight" },
  },
  {
    heading: "Edging, fabric, and pins, by the pack",
    rates: {
      borderHeight: "of metal edging; other kinds have sizes of their own",
      trenchDepth: "about 1.5 in for 4 in edging",
      pieceLength: "as bought; type 8' or 2.5 m if you like",
      stakesPerPiece: "included in the piece price",
      pieceCost: "each, with the stakes that come with it",
      stakeCost: "beyond those that come with the pieces",
      rollWidth: "feet and inches work too",
      rollLength: "feet and inches work too",
      rollCost: "a whole roll of this width and length",
      pinsPerBox: "pins or staples for the fabric",
      pinBoxCost: "a whole box of that many",
    },
  },
  {
    heading: "Hauling and dump fees",
    rates: {
      haulCost: "truck, driver, and fuel per load of spoil, without the fee",
      dumpFee: "dump or yard fee per load",
      truckYards: "what the haul-off truck holds, loose",
      truckPayload: PAYLOAD,
      deliveryCost: "a load of stone to the site",
      deliveryYards: "what the delivery truck holds, loose",
      deliveryPayload: PAYLOAD,
    },
  },
  {
    heading: "Crew",
    rates: {
      crewRate: "wage with payroll taxes, insurance, and paid time off",
      crewSize: "people working a bed together",
      crewDay: "hours on site per day",
    },
  },
  {
    heading: "Production",
    rates: {
      scrapeHours: "labor hours to cut sod and load, per bank cu yd",
      edgingRate: "one person",
      fabricRate: "one person",
      rakeRate: "one person, after wheeling it in",
    },
  },
  {
    heading: "Markups, overhead, and tax",
    rates: {
      materialMarkup: "added to the cost of every material line",
      laborMarkup: "added to the cost of every labor line",
      haulingMarkup: "added to the cost of every hauling line",
      overhead: "% of total cost, not marked up",
      minimumCharge: "a job is never priced below this",
      salesTax: "of the whole price; state law says what is taxed",
    },
  },
  {
    heading: "Ordering",
    rates: {
      waste: "added to the stone for waste and low spots",
      orderStep: "orders are rounded up to this step",
      orderMinimum: "0 if the yard has none",
    },
  },
];
