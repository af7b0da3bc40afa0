import type { UnitName } from "./units";

/** How headings and labels say what their cells hold: words of the trade in American English, with abbreviations. */
export interface RoleWords {
  /** The unit that is usual for it; absent for names. */
  readonly unit?: UnitName;
  /** The whole heading without its unit, for which the role is plain. */
  readonly plain?: RegExp;
  /** Words within a longer heading. */
  readonly within?: RegExp;
  /** Words that say that it is something else. */
  readonly not?: RegExp;
}

const STONE = "stone|rock|gravel|aggregate|river rock";
const BORDER = "border|edging|edge|edger";
const SPOIL = "spoil|soil|dirt|haul(?:ing)?(?: off)?|haul-off|dump|debris";

/** Things that a unit may count, where the heading names them without saying more. */
export const KNOWN_THING = new RegExp(`\\b(?:${STONE}|${BORDER}|fabric|${SPOIL}|crew|labor|bed)\\b`);

const OTHER_THING =
  /\b(roll|rolls|fabric|trench|border|edging|edge|truck|trailer|piece|pieces|stake|stakes|pin|pins|lap|overlap|spacing|gap|walk|driveway|house|fence|wall|price|cost|rate|size|stone size|haul|distance|tape|unit)\b/;
const MONEY = /\b(cost|costs|price|prices|rate|rates|charge|\$)|\$/;

const re = (source: string) => new RegExp(source);

/** What the columns of a list of beds hold, first what is typed, then what is worked out of it. */
export const columnRoles = {
  job: {
    plain: /^(job|jobs|job name|customer|customers|client|site|address|project|account|owner|property)$/,
    within: /\b(job|customer|client|project|address)\b/,
    not: /\b(no|number|#|id|date|type|total|cost|price|hours|phone|zip)\b|#/,
  },
  bed: {
    plain: /^(bed|beds|bed name|name|location|where|spot|place|section|zone|description|item|area name|planting bed)$/,
    within: /\b(bed|section|zone|location)\b/,
    not: /\b(no|number|length|width|depth|area|size|type|total|cost|price|edge|edging)\b|#/,
  },
  length: {
    unit: "ft",
    plain: /^(length|lengths|len|lgth|lngth|lg|long|l|bed length|length of bed|overall length|measured length)$/,
    within: /\b(length|len|long)\b/,
    not: OTHER_THING,
  },
  lengthInches: {
    unit: "in",
    plain: /^$/,
  },
  width: {
    unit: "ft",
    plain: /^(width|widths|wid|wdth|wide|w|breadth|across|bed width|width of bed|overall width|measured width)$/,
    within: /\b(width|wid|wide|breadth)\b/,
    not: OTHER_THING,
  },
  widthInches: {
    unit: "in",
    plain: /^$/,
  },
  radius: {
    unit: "ft",
    plain: /^(radius|rad|r|corner radius|radius of corners?|corner rad|corner r|rounding)$/,
    within: /\b(radius|rad)\b/,
    not: /\b(inner|outer|tree|circle|pipe)\b/,
  },
  corners: {
    unit: "each",
    plain:
      /^(rounded|rounded corners?|round corners?|corners rounded|corners|(no|number|#) ?(of )?(rounded |round )?corners|how many rounded|rounds)$/,
    within: /\b(rounded|round) corners?\b|\bcorners\b/,
    not: /\b(radius|rad|square|size)\b/,
  },
  depth: {
    unit: "in",
    plain: re(
      `^((?:(?:${STONE}|bed|finished|fill|layer|material|cover) )?(?:depth|dep|dpth|deep|thickness|thick)|d|depth of (?:the )?(?:${STONE}))$`,
    ),
    within: /\b(depth|deep|thick|thickness)\b/,
    not: /\b(roll|fabric|trench|border|edging|edge|price|cost|dig|digging|scrape|excavation|excavate|excavated|cut|strip|dig-out|pin|stake|frost|topsoil)\b/,
  },
  scrape: {
    unit: "in",
    plain:
      /^(scrape|scrape depth|dig|dig depth|digging depth|excavation|excavation depth|excavate|strip depth|cut depth|depth to dig|depth of dig)$/,
    within: /\b(dig|digging|scrape|excavation|excavate|strip)\b.*\b(depth|deep)\b|\b(depth|deep)\b.*\b(dig|scrape)\b/,
    not: /\b(trench|hours?|cost|date|yards)\b/,
  },
  stone: {
    plain: re(
      `^((?:kind|type|sort) of (?:${STONE}|material)|(?:${STONE}|material|product)(?: (?:type|kind|name|choice))?|stones)$`,
    ),
    within: re(`\\b(?:${STONE})\\b`),
    not: re(
      `${MONEY.source}|\\b(depth|deep|size|tons?|yards?|order|load|loads|delivery|deliveries|weight|area|waste|bags?|total|supplier)\\b`,
    ),
  },
  soldBy: {
    plain: re(`^(?:(?:(?:${STONE}|material) )?sold (?:by|in)(?: the)?|order unit|unit of order|(?:${STONE}) unit)$`),
  },
  edgingKind: {
    plain: re(`^(?:(?:kind|type|style) of (?:${BORDER})|(?:${BORDER}) (?:kind|type|style|material))$`),
  },
  edgingProduct: {
    plain: re(`^(?:(?:${BORDER}) product|product of (?:${BORDER}))$`),
  },
  fabricProduct: {
    plain: /^(?:(?:(?:landscape|weed) )?fabric product|product of fabric)$/,
  },
  waste: {
    unit: "%",
    plain:
      /^(waste|waste factor|waste allowance|waste share|allowance|overage|extra|loss|low spots|waste and low spots|waste & low spots|waste\/loss|add|shrinkage|contingency)( %)?$/,
    within: /\b(waste|overage|allowance|low spots)\b/,
    not: /\b(cost|price|tons|yards|loads|haul)\b/,
  },
  area: {
    unit: "sq ft",
    plain:
      /^(area|areas|bed area|net area|total area|surface|surface area|square footage|sq footage|footage|size of bed)$/,
    within: /\b(area|square footage)\b/,
    not: /\b(name|code|manager|fabric|cut|cost|price|no|number)\b|#/,
  },
  border: {
    unit: "ft",
    plain: re(
      `^(?:(?:${BORDER})(?: (?:run|length|len|total|needed|required))?|perimeter|length of (?:${BORDER})|border run|run of (?:${BORDER}))$`,
    ),
    within: re(`\\b(?:${BORDER}|perimeter)\\b`),
    not: re(
      `${MONEY.source}|\\b(pieces|piece|pcs|pc|sticks|sections|stakes|type|kind|height|high|name|color|colour|hours|depth|width|trench|style|side|sides|above|below|finish|lap)\\b`,
    ),
  },
  pieceLength: {
    unit: "ft",
    plain: re(`^(?:(?:(?:${BORDER}) )?piece length|length of (?:${BORDER}) pieces?)$`),
  },
  stakesIncluded: {
    unit: "stakes",
    plain: /^(stakes included|included stakes)$/,
  },
  pieces: {
    unit: "pieces",
    plain: re(
      `^(?:(?:(?:${BORDER}) )?(?:pieces|pcs|pc|sticks|sections)|pieces of (?:${BORDER})|(?:no|number|#) ?(?:of )?pieces)$`,
    ),
    within: re(`\\b(?:${BORDER})\\b.*\\b(?:pieces|pcs|sticks)\\b|\\b(?:pieces|pcs|sticks)\\b.*\\b(?:${BORDER})\\b`),
    not: MONEY,
  },
  stakes: {
    unit: "stakes",
    plain: /^((extra |more |edging |border )?stakes|stakes (to buy|extra))$/,
    within: /\bstakes\b/,
    not: MONEY,
  },
  sand: {
    unit: "cu yd",
    plain: /^(sand|sand to order|order sand|sand (for|under) pavers|paver sand|bedding sand)$/,
  },
  yards: {
    unit: "cu yd",
    plain: re(`^(?:(?:${STONE}) (?:yards|yds|cy|volume)|cubic yards|yardage|(?:yards|volume) of (?:${STONE}))$`),
    within: re(`\\b(?:${STONE})\\b.*\\b(?:yards|yardage|volume)\\b`),
    not: re(`${MONEY.source}|\\b(order|dig|${SPOIL})\\b`),
  },
  density: {
    unit: "tons/cu yd",
    plain:
      /^(density|stone density|stone weighs|tons (a|per) (cu yd|cubic yard|yard|cy)|stone tons a cu yd|tons\/(cu yd|cy|yd))$/,
  },
  tons: {
    unit: "tons",
    plain: re(
      `^(?:(?:${STONE}) (?:tons|tonnage|weight)|tonnage|tons|(?:net )?tons needed|tons of (?:${STONE})|(?:${STONE}) tons needed)$`,
    ),
    within: re(`\\b(?:${STONE})\\b.*\\b(?:tons|tonnage|weight|needed)\\b|\\btons\\b.*\\b(?:${STONE}|needed)\\b`),
    not: re(`${MONEY.source}|\\b(order|ordered|delivered|dig|used|actual|${SPOIL})\\b`),
  },
  order: {
    unit: "tons",
    plain: re(
      `^(?:order|to order|order tons|tons to order|(?:${STONE}) (?:to order|order)|(?:${STONE}) to order tons|order (?:${STONE})|order qty|order quantity|buy)$`,
    ),
    within: /\border\b/,
    not: re(`${MONEY.source}|\\b(no|number|date|by|status|fabric|pins|edging|border|pieces|po)\\b|#`),
  },
  orderSold: {
    plain: re(`^(?:(?:${STONE}) )?(?:to )?order as sold$`),
  },
  rollWidth: {
    unit: "ft",
    plain: /^fabric roll width$/,
  },
  rollLength: {
    unit: "ft",
    plain: /^fabric roll length$/,
  },
  rolls: {
    unit: "rolls",
    plain: /^((fabric |landscape fabric |weed fabric )?rolls|rolls of fabric|fabric rolls needed)$/,
    within: /\brolls\b/,
    not: MONEY,
  },
  pins: {
    unit: "pins",
    plain: /^((fabric |landscape )?(pins|staples)|pins needed|pins for fabric)$/,
    within: /\b(pins|staples)\b/,
    not: re(`${MONEY.source}|\\b(boxes|box|spacing|bags?)\\b`),
  },
  boxes: {
    unit: "boxes",
    plain: /^(boxes|(boxes|box) of (pins|staples)|(pin|staple|pins|staples) (boxes|box))$/,
    within: /\b(pins?|staples?)\b.*\bbox(es)?\b|\bbox(es)?\b.*\b(pins?|staples?)\b/,
    not: MONEY,
  },
  trench: {
    unit: "in",
    plain: /^trench below (?:the )?scrape$/,
  },
  dig: {
    unit: "cu yd",
    plain: re(
      `^(?:dig|dig yards|dig cu yd in the ground|digging|excavation|yards to dig|bank yards|cu yd in the ground)$`,
    ),
    within: /\b(dig|digging|excavation|bank)\b/,
    not: re(`${MONEY.source}|\\b(depth|deep|hours|date)\\b`),
  },
  spoilLoads: {
    unit: "loads",
    plain: re(`^(?:(?:${SPOIL}) (?:loads|trips)|loads (?:of (?:${SPOIL})|to dump|out)|(?:${SPOIL}))$`),
    within: re(`\\b(?:${SPOIL})\\b`),
    not: re(`${MONEY.source}|\\b(yards|tons|hours|fee|distance)\\b`),
  },
  deliveries: {
    unit: "loads",
    plain: re(
      `^(?:deliveries|(?:${STONE}) deliveries|(?:${STONE}) loads|loads (?:of )?(?:${STONE})|delivery loads|loads (?:delivered|in))$`,
    ),
    within: re(`\\bdeliver(?:y|ies)\\b|\\b(?:${STONE})\\b.*\\bloads\\b`),
    not: re(`${MONEY.source}|\\b(date|fee|address|note|notes)\\b`),
  },
  hours: {
    unit: "hr",
    plain:
      /^((crew |labor |labour |man |person |total )?(hours|hrs|h|time)|(crew|labor|labour)|man-hours|person-hours)$/,
    within: /\b(hours|hrs)\b/,
    not: MONEY,
  },
  stonePrice: {
    unit: "money",
    plain: re(
      `^(?:\\$ ?\\/ ?ton|(?:(?:${STONE}) )?(?:price|cost|rate) ?(?:\\/|per|a) ?ton|(?:${STONE}) (?:price|rate)(?: a ton)?|price a ton)$`,
    ),
    within: re(`\\b(?:price|cost|rate)\\b.*\\bton\\b`),
  },
  soldPrice: {
    unit: "money",
    plain: re(`^(?:(?:${STONE}) )?price as sold$`),
  },
  piecePrice: {
    unit: "money",
    plain: re(`^(?:(?:${BORDER}) )?piece price$`),
  },
  stakePrice: {
    unit: "money",
    plain: /^(?:extra )?stake price$/,
  },
  rollPrice: {
    unit: "money",
    plain: /^fabric roll price$/,
  },
  materialCost: {
    unit: "money",
    plain: /^(material|materials) ?(cost|costs|\$|total)$|^cost of materials?$/,
    within: /\bmaterials?\b.*\bcosts?\b/,
  },
  laborCost: {
    unit: "money",
    plain: /^(labor|labour) ?(cost|costs|\$|total)$|^cost of labou?r$/,
    within: /\blabou?r\b.*\bcosts?\b/,
  },
  haulingCost: {
    unit: "money",
    plain: /^(hauling|haul|haul off|trucking) ?(cost|costs|\$|total)$|^cost of hauling$/,
    within: /\bhaul(ing)?\b.*\bcosts?\b/,
  },
  price: {
    unit: "money",
    plain:
      /^(price|bed price|price before tax|total price|sell|sell price|selling price|charge|bid|quote|our price|price \$|\$)$/,
    within: /\b(price|sell|bid|quote)\b/,
    not: /\b(per|each|a|unit|ton|tons|yard|sq|roll|date|no|number|stone|rock|gravel|material|labor)\b|\/|#/,
  },
} as const satisfies Readonly<Record<string, RoleWords>>;

/**
 * What is told of a whole job, or of one line of an estimate, and is no column of a list of beds. What is narrower
 * comes before what is wider: the first that fits is taken.
 */
export const lineRoles = {
  "unit cost": {
    unit: "money",
    within: /^each$|\bunit cost\b|\bcost\s*(\/|per|each|ea|a)\b|\brate\b|\bour cost each\b/,
  },
  "unit price": { unit: "money", within: /\bunit price\b|\bprice\s*(\/|per|each|ea|a)\b|\bsell each\b/ },
  margin: { unit: "%", within: /\bmargin\b/ },
  markup: { unit: "%", within: /\bmark[\s-]?up\b/ },
  tax: { unit: "%", within: /\btax\b/ },
  overhead: { unit: "%", within: /\boverhead\b/ },
  payload: { unit: "tons", within: /\bpayload\b|\bload limit\b/ },
  overlap: { unit: "in", within: /\boverlap\b|\bside lap\b/ },
  "roll width": {
    unit: "ft",
    within: /\broll\b.*\b(width|wide)\b|\bwidth of (the )?roll\b|\bfabric (width|wide)\b/,
  },
  "roll length": { unit: "ft", within: /\broll\b.*\b(length|long)\b|\blength of (the )?roll\b/ },
  "trench depth": {
    unit: "in",
    within: /\btrench\b.*\b(depth|deep|below)\b|\btrench below\b|\bdepth of (the )?trench\b/,
  },
  "border height": {
    unit: "in",
    within: re(`\\b(?:${BORDER})\\b.*\\b(?:height|high)\\b|\\bheight of (?:the )?(?:${BORDER})\\b`),
  },
  "stone size": {
    unit: "in",
    within: re(
      `\\b(?:${STONE}|largest)\\b.*\\b(?:size|sized)\\b|\\blargest (?:${STONE}|piece)\\b|\\bsize of (?:the )?(?:${STONE})\\b`,
    ),
  },
  spacing: { unit: "in", within: /\bspacing\b|\bapart\b|\bon cent(er|re)\b/ },
  // Whatever is hauled: spoil out, stone in.
  loads: { unit: "loads", within: /\bloads\b/ },
  quantity: { within: /^(qty|quantity|amount needed|count|how many)\b/ },
  cost: { unit: "money", within: /\bcosts?\b/ },
} as const satisfies Readonly<Record<string, RoleWords>>;

export type ColumnRole = keyof typeof columnRoles;
/** What a heading or a label may say that its cells hold. */
export type Role = ColumnRole | keyof typeof lineRoles;

const all: Readonly<Record<Role, RoleWords>> = { ...columnRoles, ...lineRoles };

/** The unit that a number of a role is in where its sheet names none; undefined for names and mere counts. */
export const usualUnit = (role: Role): UnitName | undefined => all[role].unit;
