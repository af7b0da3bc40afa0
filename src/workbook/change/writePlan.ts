import { type Look, looks, warned } from "../../sheets/looks";
import type { PageSetup, Plan } from "../../sheets/plan";
import { pointsOfCharacters } from "../../sheets/points";
import { rowsThatWrap } from "../../sheets/rowHeights";
import type { Area } from "../../spreadsheet/areas";
import { fittedPicture, freeShapeName, queuePicture, queueShapes } from "../drawing/picture";
import { rangeAt, rangeInside } from "../read/areas";
import { queueCellStyles } from "../read/cellStyle";
import { areOthers } from "../read/cells";
import { type OverwrittenContent, queueBefore, queueOverwritten, queueWidths } from "./overwritten";
import { type Heading, queueUnder } from "./place";
import type { PlaceBefore, ReceiptPart } from "./receipt";

/** A plan, and where in the workbook it is written. */
export interface Part {
  readonly plan: Plan;
  readonly area: Area;
  readonly sheetName: string;
  /** Left out for a sheet that is made for it. */
  readonly sheetId?: string;
  /** The name of a sheet that is made for it until all of it is in place: one that no one else gives. */
  readonly tempName?: string;
  /** How the place was; left out for a sheet that is made for it. */
  readonly before?: PlaceBefore;
  /** The name of its table, where it has one: one that is free. */
  readonly tableName?: string | undefined;
  /** The heading that it goes under, if any. */
  readonly under?: Heading | undefined;
}

/** The host's own plain style: the cells keep the looks of the plan. */
const TABLE_STYLE = "TableStyleLight1";
/** As wide as the host makes columns, in points: 64 px at 96 px and 72 pt an inch (from memory). */
const USUAL_COLUMN_POINTS = 48;
const PICTURE_STEM = "Bedrow picture";
const RULE_SIDES = { ruleAbove: "EdgeTop", ruleBelow: "EdgeBottom" } as const;

/**
 * Queues the cells of a part onto its sheet. The table, the sheet's own name, and the pictures wait for `finish`: before
 * the cells are there, they can't be told from what someone else makes at the same moment, and cells get their size
 * only then.
 */
export function queuePart(context: Excel.RequestContext, part: Part) {
  const { plan, area, sheetId, sheetName, tempName, before } = part;
  const { worksheets } = context.workbook;
  const worksheet = sheetId === undefined ? worksheets.add(tempName) : worksheets.getItem(sheetId);
  worksheet.load("id");
  const target = rangeAt(worksheet, area);
  const placeBefore = before ? () => before : queueBefore(context, target);
  const overwritten = before && queueOverwritten(context, target, plan);
  const isUnder = queueUnder(worksheet, part.under, area.row);

  for (const { name, area: named } of plan.names ?? []) context.workbook.names.add(name, rangeInside(target, named));
  target.numberFormat = plan.formats as string[][];
  target.formulas = plan.formulas as (string | number)[][];
  queueLooks(target, plan);
  if (plan.dress) queueCellStyles(target, plan.dress);
  for (const merged of plan.merged ?? []) rangeInside(target, merged).merge();
  queueWiden(target, plan.widths, before);
  if (plan.page && sheetId === undefined) {
    for (const { row, points } of rowsThatWrap(plan)) target.getRow(row).format.rowHeight = points;
    queuePage(worksheet, target, plan.page);
  }
  for (const { row, rows } of (sheetId === undefined && plan.groups) || [])
    target
      .getRow(row)
      .getResizedRange(rows - 1, 0)
      .getEntireRow()
      .group(Excel.GroupOption.byRows);

  target.load("formulas");
  const widthsWritten = queueWidths(target, area.columns);
  const pictures = (plan.pictures ?? []).map(({ png, altText, area: cells }) => {
    const frame = rangeInside(target, cells);
    frame.load("left,top,width,height");
    return { png, altText, frame };
  });
  const shapes = pictures.length > 0 ? queueShapes(worksheet) : undefined;
  let finished: Excel.Range | undefined;
  return {
    part,
    target,
    worksheet,
    /** After the request: what this has overwritten; undefined where the place was blank as it should. */
    overwritten: (): OverwrittenContent | undefined => overwritten?.(),
    /** After the request: whether the heading that it goes under was where it should. */
    isUnder,
    /** After the request: the shapes that were on the sheet before the pictures. */
    shapesBefore: (): readonly string[] => shapes?.ids() ?? [],
    /** After the request: queues the rest, and gives what it takes to undo all of it. */
    finish: (): ReceiptPart => {
      if (sheetId === undefined) worksheet.name = sheetName;
      if (plan.table && part.tableName) {
        const table = worksheet.tables.add(rangeInside(target, plan.table.area), true);
        table.name = part.tableName;
        table.style = TABLE_STYLE;
      }
      if (plan.table || pictures.length > 0) {
        // An object of its own, since what is written to a range counts as read from it.
        finished = target.getResizedRange(0, 0);
        finished.load("formulas");
      }
      const taken = shapes?.names() ?? [];
      const names = pictures.map(({ png, altText, frame }) => {
        const name = freeShapeName(PICTURE_STEM, taken);
        taken.push(name);
        queuePicture(worksheet, fittedPicture(png, altText, frame), frame, name);
        return name;
      });
      return {
        sheetId: worksheet.id,
        area,
        formulas: target.formulas,
        pictures: names,
        names: (plan.names ?? []).map(({ name }) => name),
        before: { ...placeBefore(), widthsWritten: widthsWritten() },
        newSheet: sheetId === undefined,
      };
    },
    /** After the last request: whether table and pictures missed its cells, since rows or columns were put in right before. */
    isMissed: (): boolean => finished !== undefined && areOthers(target.formulas, finished.formulas),
  };
}

export type QueuedPart = ReturnType<typeof queuePart>;

/** Columns only ever get wider, since other things may be in them. */
function queueWiden(target: Excel.Range, widths: readonly number[], before: PlaceBefore | undefined): void {
  widths.forEach((characters, index) => {
    const width = pointsOfCharacters(characters);
    if ((before?.columnWidths[index] ?? USUAL_COLUMN_POINTS) < width)
      target.getColumn(index).format.columnWidth = width;
  });
}

/** Queues a plan's looks, warnings and lists onto the range that it is written to. */
export function queueLooks(range: Excel.Range, plan: Pick<Plan, "looks" | "warnings" | "choices">): void {
  for (const { area, look } of plan.looks) queueLook(rangeInside(range, area), looks[look]);
  for (const { area, when } of plan.warnings) {
    const { custom } = rangeInside(range, area).conditionalFormats.add(Excel.ConditionalFormatType.custom);
    custom.rule.formula = when;
    if (warned.fill) custom.format.fill.color = warned.fill;
    if (warned.color) custom.format.font.color = warned.color;
  }
  for (const { area, names } of plan.choices) {
    // The cell may also hold what is not in the list, such as a density, so a choice is offered and not forced.
    const { dataValidation } = rangeInside(range, area);
    dataValidation.rule = { list: { inCellDropDown: true, source: names.join(",") } };
    dataValidation.errorAlert = { showAlert: false, style: "Information", title: "", message: "" };
  }
}

function queueLook({ format }: Excel.Range, look: Look): void {
  const { fill, color, bold, italic, size, align, indent, wrap, top } = look;
  if (fill) format.fill.color = fill;
  if (color) format.font.color = color;
  if (bold !== undefined) format.font.bold = bold;
  if (italic !== undefined) format.font.italic = italic;
  if (size) format.font.size = size;
  if (align) format.horizontalAlignment = align;
  if (indent) format.indentLevel = indent;
  if (wrap) format.wrapText = true;
  if (wrap || top) format.verticalAlignment = "Top";
  for (const rule of ["ruleAbove", "ruleBelow"] as const) {
    const ruleColor = look[rule];
    if (!ruleColor) continue;
    const border = format.borders.getItem(RULE_SIDES[rule]);
    border.style = "Continuous";
    border.color = ruleColor;
  }
}

/** Queues how a sheet is printed. @param target the cells that are printed: where the plan is. */
function queuePage(worksheet: Excel.Worksheet, target: Excel.Range, page: PageSetup): void {
  const { paper, landscape, pagesWide, pagesTall, headingRows, breaksAbove = [], marginsIn, footer } = page;
  const { pageLayout, horizontalPageBreaks } = worksheet;
  if (paper) pageLayout.paperSize = paper === "a4" ? "A4" : "Letter";
  pageLayout.orientation = landscape ? "Landscape" : "Portrait";
  pageLayout.zoom = {
    horizontalFitToPages: pagesWide,
    ...(pagesTall !== undefined && { verticalFitToPages: pagesTall }),
  };
  pageLayout.setPrintMargins("Inches", marginsIn);
  pageLayout.setPrintArea(target);
  if (headingRows) {
    const headings = target.getRow(0).getResizedRange(headingRows - 1, 0);
    pageLayout.setPrintTitleRows(headings.getEntireRow());
  }
  for (const row of breaksAbove) horizontalPageBreaks.add(target.getCell(row, 0));
  if (footer) pageLayout.headersFooters.defaultForAllPages.centerFooter = footer;
}
