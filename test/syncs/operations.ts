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
      what: "An estimate block is inserted on a new sheet",
      most: 3,
      run: () => insertPlan(block, { kind: "new sheet", name: "Bed" }),
    },
    { what: "The selection is looked at, in a block", most: 2, ready: onBlock, run: readSelected },
    { what: "The selection is looked at, in a list", most: 2, ready: onList, run: readSelected },
    { what: "A block is drawn", most: 3, ready: onBlock, run: () => redrawSelectedBlock(drawn) },
    { what: "A block is drawn anew", most: 3, ready: onBlock, run: () => redrawSelectedBlock(drawn) },
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
      what: "An estimate block is inserted at a cell",
      most: 3,
      ready: besideList,
      run: () => insertPlan(block, { kind: "selection" }),
    },
    { what: "An insert is taken back", most: 4, run: () => undoLastInsert() },
    {
      what: "What stands in the way is told, and another place",
      most: 3,
      ready: onList,
      run: () => insertPlan(block, { kind: "selection" }),
    },
    {
      what: "The sheet of rates is inserted",
      most: 3,
      run: () => insertPlan((at) => ratesSheet(at), { kind: "new sheet", name: "Rates" }),
    },
    { what: "The rates are read", most: 2, run: readRates },
    {
      what: "A list is started",
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
      what: "A list is read for filling",
      most: 2,
      ready: onList,
      run: async () => {
        proposed = await filled();
      },
    },
    {
      what: "The results are filled into the list",
      most: 2,
      run: async () => {
        written = await writeRows(proposed.fit, proposed.filling.changes);
      },
    },
    { what: "The filling is taken back", most: 2, run: () => undoChanges(written) },
    { what: "The workbook is read for a check", most: 2, run: readForCheck },
    {
      what: "A fix is written",
      most: 2,
      run: () => writeChanges("fix", [{ sheet: LIST, row: 1, column: 2, before: 20, after: 21 }]),
    },
    { what: "A finding is gone to", most: 1, run: () => goTo({ sheet: LIST, row: 1, column: 2, rows: 1, columns: 1 }) },
    { what: "The beds of a job are read", most: 4, run: readJob },
    {
      what: "A job's papers are inserted",
      most: 3,
      run: () => insertPlans("papers", [orderPaper(jobOf([foundBed(bed, 1)]), startingDetails, undefined)]),
    },
    {
      what: "Cells are read to be copied",
      most: 4,
      ready: () => select(LIST, "A1:H4"),
      run: () => readSource("cells"),
    },
    {
      what: "A copy without the add-in is written",
      most: 3,
      ready: async () => {
        await select(LIST, "A1:H4");
        source = await readSource("cells");
      },
      run: () => writeCopy(source, "formulas", { kind: "new sheet" }),
    },
    {
      what: "Cells are read to be saved as a template",
      most: 6,
      ready: () => select(LIST, "A1:H4"),
      run: async () => {
        const saved = await readToSave("cells");
        const made = templateOfCells(saved, new Map(), { name: "Beds", note: "", by: "" }, new Date(2026, 2, 2));
        template = made.template;
      },
    },
    {
      what: "A template is inserted",
      most: 3,
      run: () => writeTemplate(template, new Map(), { kind: "new sheet", name: "Template" }),
    },
  ];
}
