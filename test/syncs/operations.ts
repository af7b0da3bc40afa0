import { writeCopy } from "../../src/pane/copy/makeCopy";
import { readSource, type Source } from "../../src/pane/copy/source";
import { startingDetails } from "../../src/pane/papers/details";
import { jobOf, orderPaper } from "../../src/pane/papers/makePapers";
import { readJob } from "../../src/pane/papers/readJob";
import { writeTemplate } from "../../src/pane/templates/opening";
import { readToSave, templateOfCells } from "../../src/pane/templates/saving";
import {
  type OpenedBed,
  openBed,
  previewUpdate,
  type UpdatePreview,
  type WrittenUpdate,
  writeUpdate,
} from "../../src/pane/updateEstimate";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { newList } from "../../src/sheets/jobRows/newList";
import { rateKeysOf, usualAssumed } from "../../src/sheets/jobRows/setting";
import { ratesSheet } from "../../src/sheets/rates/ratesSheet";
import type { Template } from "../../src/sheets/templates/template";
import { undoChanges, type WrittenChanges, writeChanges } from "../../src/workbook/change/cells";
import { insertPlan, insertPlans } from "../../src/workbook/change/insert";
import { undoLastInsert } from "../../src/workbook/change/undo";
import { redrawSelectedBlock } from "../../src/workbook/drawing/drawing";
import { readListSheet, writeRows } from "../../src/workbook/jobRows";
import { readRates } from "../../src/workbook/read/rates";
import { readSelected } from "../../src/workbook/read/selectedBlock";
import { readForCheck } from "../../src/workbook/read/workbook";
import { goTo } from "../../src/workbook/sheets";
import { foundBed } from "../foundBed";
import { fillOf, fitOf } from "../listSheets";
import { ONE_PIXEL } from "./workbooks";

/** Something that the pane does with the workbook, and how many requests it may take, whatever the size. */
export interface Operation {
  readonly what: string;
  readonly most: number;
  /** Brings about what it starts from; its requests do not count. */
  readonly ready?: () => Promise<unknown>;
  readonly run: () => Promise<unknown>;
}

const LIST = "List";
const bed: BedForm = { ...blankForm(), name: "Front walk", typed: { length: `18' 6"`, width: "5" } };
const block = (at: { row: number; column: number }) => estimateBlock(bed, at);
const drawn = async () => ({ png: ONE_PIXEL, widthPoints: 300, heightPoints: 200, altText: "A bed in plan" });

async function select(sheet: string, address: string): Promise<void> {
  await Excel.run(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet);
    worksheet.activate();
    worksheet.getRange(address).select();
    await context.sync();
  });
}

const onBlock = () => select("Bed", "B8");
const onList = () => select(LIST, "A2");
/** A free cell beside the list. */
const besideList = () => select(LIST, "K1");

/** The operations go on from one another, as a person's day does. */
export function operations(): readonly Operation[] {
  let written: WrittenChanges;
  let opened: OpenedBed;
  let update: UpdatePreview;
  let updated: WrittenUpdate;
  let template: Template;
  let source: Source;
  const filled = async () => {
    const { sheet } = await readListSheet();
    const fit = fitOf(sheet);
    return { fit, filling: fillOf(fit) };
  };
  let proposed: Awaited<ReturnType<typeof filled>>;
  return [
    {
      what: "Insert an estimate on a new sheet",
      most: 3,
      run: () => insertPlan(block, { kind: "new sheet", name: "Bed" }),
    },
    { what: "Read the selection, in an estimate", most: 2, ready: onBlock, run: readSelected },
    { what: "Read the selection, in a list", most: 2, ready: onList, run: readSelected },
    { what: "A block is drawn", most: 3, ready: onBlock, run: () => redrawSelectedBlock(drawn) },
    { what: "Redraw a bed", most: 3, ready: onBlock, run: () => redrawSelectedBlock(drawn) },
    {
      what: "An estimate is opened in the pane",
      most: 1,
      ready: onBlock,
      run: async () => {
        opened = await openBed("selected", undefined);
      },
    },
    {
      what: "An update of it is previewed",
      most: 1,
      run: async () => {
        const wider = { ...opened.form, typed: { ...opened.form.typed, width: "6" } };
        update = await previewUpdate(opened, wider, undefined);
      },
    },
    {
      what: "An estimate is updated in place",
      most: 2,
      run: async () => {
        updated = await writeUpdate(update, []);
      },
    },
    { what: "The update is undone", most: 2, run: () => updated.undo() },
    {
      what: "An update by which rows come and go is previewed",
      most: 3,
      run: async () => {
        update = await previewUpdate(opened, { ...opened.form, way: "round", typed: { diameter: "8" } }, undefined);
      },
    },
    {
      what: "An estimate is updated where rows come and go",
      most: 2,
      run: async () => {
        updated = await writeUpdate(update, []);
      },
    },
    { what: "That update is undone", most: 2, run: () => updated.undo() },
    {
      what: "Insert an estimate at a cell",
      most: 3,
      ready: besideList,
      run: () => insertPlan(block, { kind: "selection" }),
    },
    { what: "Undo an insert", most: 4, run: () => undoLastInsert() },
    {
      what: "Find what's in the way, and another place",
      most: 3,
      ready: onList,
      run: () => insertPlan(block, { kind: "selection" }),
    },
    {
      what: "Insert the Rates sheet",
      most: 3,
      run: () => insertPlan((at) => ratesSheet(at), { kind: "new sheet", name: "Rates" }),
    },
    { what: "Read the rates", most: 2, run: readRates },
    {
      what: "Start a list",
      most: 3,
      ready: besideList,
      run: () =>
        insertPlan(
          (at) =>
            newList(
              {
                first: { job: "Alder Court", bed: "Front", length: "20", width: "5" },
                assumed: usualAssumed,
                results: ["area", "tons"],
                rates: rateKeysOf([]),
                weighsStone: false,
                stones: ["river rock"],
              },
              at,
            ),
          { kind: "new sheet", name: "New list" },
        ),
    },
    {
      what: "Read a list to fill it",
      most: 2,
      ready: onList,
      run: async () => {
        proposed = await filled();
      },
    },
    {
      what: "Fill results into the list",
      most: 2,
      run: async () => {
        written = await writeRows(proposed.fit, proposed.filling.changes);
      },
    },
    { what: "Undo the filled results", most: 2, run: () => undoChanges(written) },
    { what: "Read the workbook for a check", most: 2, run: readForCheck },
    {
      what: "Write a fix",
      most: 2,
      run: () => writeChanges("fix", [{ sheet: LIST, row: 1, column: 2, before: 20, after: 21 }]),
    },
    { what: "Go to a finding", most: 1, run: () => goTo({ sheet: LIST, row: 1, column: 2, rows: 1, columns: 1 }) },
    { what: "Read the beds of a job", most: 4, run: readJob },
    {
      what: "Insert a job's documents",
      most: 3,
      run: () => insertPlans("papers", [orderPaper(jobOf([foundBed(bed, 1)]), startingDetails, undefined)]),
    },
    {
      what: "Read cells to copy",
      most: 4,
      ready: () => select(LIST, "A1:H4"),
      run: () => readSource("cells"),
    },
    {
      what: "Write a copy for others",
      most: 3,
      ready: async () => {
        await select(LIST, "A1:H4");
        source = await readSource("cells");
      },
      run: () => writeCopy(source, "formulas", { kind: "new sheet" }),
    },
    {
      what: "Read cells for a template",
      most: 6,
      ready: () => select(LIST, "A1:H4"),
      run: async () => {
        const saved = await readToSave("cells");
        const made = templateOfCells(saved, new Map(), { name: "Beds", note: "", by: "" }, new Date(2026, 2, 2));
        template = made.template;
      },
    },
    {
      what: "Insert a template",
      most: 3,
      run: () => writeTemplate(template, new Map(), { kind: "new sheet", name: "Template" }),
    },
  ];
}
