import { useCallback, useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Rates } from "../../quantities/bed/rates";
import { Problem } from "../../quantities/problem";
import { workbookFile } from "../../sheets/file/workbookFile";
import { base64Of } from "../../spreadsheet/base64";
import { setSheetsAside } from "../../workbook/change/setAside";
import { undoLastInsert } from "../../workbook/change/undo";
import type { WrittenBlock } from "../../workbook/change/updateBlock";
import { WorkbookFailure } from "../../workbook/failure";
import { sheetsAndNames } from "../../workbook/read/selection";
import { canOpenWorkbooks, openAsWorkbook } from "../../workbook/sheets";
import { download } from "../copy/download";
import { useStored } from "../keep/useStored";
import { undoInsert } from "../undoInsert";
import { useLater } from "../useLater";
import { useStatus } from "../useStatus";
import { entriesOf } from "./after/useLessons";
import { cheaperFabric } from "./cheaperFabric";
import { type JobDetails, startingDetails, storedDetails } from "./details";
import { enoughOf } from "./enough";
import {
  insertSheets,
  isReplaced,
  type MadeSheets,
  type PaperKind,
  papersOf,
  type Question,
  takenNames,
  titleOf,
  type Wanted,
} from "./insertPapers";
import { insertJob, insertOption, isInJob, jobOnSheetOf, type NewOption, priceTogether } from "./jobTogether";
import { type Job, jobOf } from "./makePapers";
import { noticeOf } from "./noticeOf";
import { proposalOf, proposalPlan } from "./proposalOf";
import { type FoundBed, type FoundJob, readJob } from "./readJob";
import { SET_YOUR_OWN, samplesIn } from "./samplePrices";
import { jobChanges, updateComparison } from "./updateJob";
import { useJobUpdate } from "./useJobUpdate";

const cheaperFabricFor = ({ job, rates }: { job: Job | undefined; rates: Rates | undefined }) =>
  job && cheaperFabric(job, rates);

const CHANGED = "The beds just changed, so nothing was written. Refresh, then try again.";

/** What could be worked out, or why not, and which of what was typed is to be changed. */
interface Computed<T> {
  readonly value: T | undefined;
  readonly problem: string | undefined;
  readonly argument?: string | undefined;
}

/** The beds of the workbook, which of them belong to the job, and its papers. */
export function usePapers() {
  const [found, setFound] = useState<FoundJob>();
  const [turned, setTurned] = useState<readonly string[]>([]);
  const { value: details, setValue: setDetails, unkept } = useStored(storedDetails, startingDetails);
  const { status, isWorking, attempt } = useStatus();
  /** The id of the insert that can be undone. */
  const [canUndo, setCanUndo] = useState<string>();
  /** The table of options that was written along with it. */
  const [along, setAlong] = useState<WrittenBlock>();
  /** The documents that were made last, by this pane. */
  const [last, setLast] = useState<MadeSheets>();
  const [question, setQuestion] = useState<Question>();

  /** The job estimate whose beds are checked at first: the one with the job's name, or the only one. */
  const current = useMemo(() => {
    const jobs = found?.jobs ?? [];
    // Of the versions of a job, documents follow the chosen one.
    const named = jobs.filter(({ name }) => name.trim() === details.job.trim());
    const of = named.length > 0 || details.job.trim() !== "" ? named : jobs;
    return of.find(({ isChosen }) => isChosen) ?? of[0];
  }, [found, details.job]);
  const isTicked = useCallback(
    (bed: FoundBed) => turned.includes(bed.id) !== (current ? isInJob(bed, current) : bed.tickedAtFirst),
    [turned, current],
  );
  const chosen = useMemo(() => (found?.beds ?? []).filter((bed) => bed.worked && isTicked(bed)), [found, isTicked]);
  const onSheet = useMemo(() => jobOnSheetOf(found?.jobs ?? [], chosen), [found, chosen]);
  const job = useMemo(
    () => computed(() => (chosen.length > 0 ? jobOf(chosen, onSheet, found?.jobs) : undefined)),
    [chosen, onSheet, found],
  );
  const together = useMemo(() => computed(() => (chosen.length > 0 ? priceTogether(chosen) : undefined)), [chosen]);
  const priced = useMemo(() => ({ job: job.value, rates: found?.rates }), [job, found]);
  const fabric = useLater(priced, cheaperFabricFor);
  /** What is worth knowing before the job is ordered. */
  const advice = [...(job.value ? enoughOf(job.value, entriesOf(found?.past)) : []), ...(fabric ? [fabric] : [])];
  const notice = useMemo(() => computed(() => noticeOf(details, job.value?.crew.wholeDays ?? 1)), [details, job]);

  const read = () =>
    attempt("Reading the beds…", async () => {
      const now = await readJob();
      setFound(now);
      // The job whose estimate is selected is the one to work on.
      const name = now.selected?.name.trim() || details.job;
      if (name.trim() !== details.job.trim()) {
        setTurned([]);
        setDetails((all) => ({ ...all, job: name }));
      }
      return undefined;
    });
  // Read once when the screen comes up; after that the person asks for it.
  const readFirst = useRef(read);
  useEffect(() => void readFirst.current(), []);

  /** The job as the workbook has it now: what was shown may have changed since. */
  const again = async (): Promise<Job> => {
    const now = await readJob();
    setFound(now);
    const ids = chosen.map(({ id }) => id);
    const beds = now.beds.filter(({ id }) => ids.includes(id));
    if (beds.length < ids.length || beds.some(({ worked }) => !worked)) {
      throw new WorkbookFailure(CHANGED);
    }
    return jobOf(beds, jobOnSheetOf(now.jobs, beds), now.jobs);
  };

  /** Shows the workbook as it is after a job was written: which beds are checked is what the job holds. */
  const reread = async () => {
    setTurned([]);
    setFound(await readJob());
  };
  /** The job's estimate that an update would write to: the one for just these beds, or the one that is open. */
  const there = onSheet ?? current;
  const update = useJobUpdate(
    attempt,
    async () => {
      const now = await readJob();
      const beds = now.beds.filter(({ id, worked }) => worked && chosen.some((one) => one.id === id));
      const target = now.jobs.find((one) => there && one.sheet === there.sheet && one.area.row === there.area.row);
      if (!target || beds.length < chosen.length) throw new WorkbookFailure(CHANGED);
      return { job: target, beds, found: now };
    },
    reread,
  );
  const outdated = useMemo(
    () => (there && found && chosen.length > 0 ? jobChanges(there, chosen, found) : []),
    [there, found, chosen],
  );

  /** Keeps the id of what was inserted, for undo, and what was written along with it. */
  const inserted = (id: string, along?: WrittenBlock) => {
    setCanUndo(id);
    setAlong(along);
    update.forget();
  };
  /** Keeps what was made for undo, and says where it is. */
  const made = (sheets: MadeSheets): string => {
    inserted(sheets.id);
    setLast(sheets);
    return `Added ${sheets.names.join(", ")}. Print them from the spreadsheet program.`;
  };

  return {
    found,
    details,
    /** Why the details are not kept over a closed pane, where they are not. */
    unkept,
    job,
    notice,
    status,
    isWorking,
    canUndo: update.canUndo || canUndo !== undefined,
    /** The job's estimate that an update would write to, and what of it no longer fits the beds. */
    there,
    outdated,
    update,
    opens: canOpenWorkbooks(),
    advice,
    /** What the beds cost as one job. */
    together,
    isTicked,
    tick: (bed: FoundBed, on: boolean) =>
      setTurned((now) =>
        isTicked(bed) === on ? now : now.includes(bed.id) ? now.filter((one) => one !== bed.id) : [...now, bed.id],
      ),
    /** Writes the estimate of the job on a new sheet. */
    insertJob: () =>
      attempt("Adding the job estimate…", async () => {
        const { beds } = await again();
        const added = await insertJob(details.job, beds);
        if (!added.done) throw new WorkbookFailure("A new sheet couldn't be added. Nothing was written. Try again.");
        inserted(added.id);
        await reread();
        return `Added the job estimate on the sheet ${added.sheetName}. The order, the crew sheet, and the proposal follow it.`;
      }),
    type: (typed: Partial<JobDetails>) => setDetails((now) => ({ ...now, ...typed })),
    read,
    /** Makes documents on new sheets; where the workbook has them already, it asks first. */
    make: (kinds: readonly PaperKind[]) =>
      attempt("Making the documents…", async () => {
        const now = await again();
        const sheets = await papersOf(kinds, now, details, notice.value);
        const wanted: Wanted = { title: titleOf(kinds, details), sheets };
        const taken = takenNames(sheets, (await sheetsAndNames()).sheets);
        if (taken.length === 0) return made(await insertSheets(wanted));
        const isLast = last !== undefined && isReplaced(last, taken, sheets);
        setQuestion({ wanted, taken, replaces: isLast ? last : undefined });
        return undefined;
      }),
    question,
    /** Adds the documents beside those of the same name, which stay. */
    keepBoth: () =>
      attempt("Making the documents…", async () => {
        setQuestion(undefined);
        return question && made(await insertSheets(question.wanted));
      }),
    /**
     * Makes the new documents in place of the earlier ones: those that were made last are removed, unless someone has
     * changed them; any others are hidden under another name.
     */
    replace: () =>
      attempt("Replacing the documents…", async () => {
        setQuestion(undefined);
        const before = question?.replaces;
        if (!question) return undefined;
        if (!before) {
          const showOld = await setSheetsAside(question.taken);
          try {
            return made({ ...(await insertSheets(question.wanted)), showOld });
          } catch (error) {
            await showOld();
            throw error;
          }
        }
        await undoLastInsert(before.id);
        try {
          return made({ ...(await insertSheets(question.wanted)), before });
        } catch (error) {
          made(await insertSheets(before));
          throw error;
        }
      }),
    cancel: () => setQuestion(undefined),
    /** @param accepted the line about sample prices that the person accepted, if any. */
    makeProposal: (accepted: string | undefined) =>
      attempt("Making the proposal…", async () => {
        const now = await again();
        const samples = samplesIn(now.beds);
        if (samples && samples !== accepted)
          throw new WorkbookFailure(`${samples} No proposal was made. ${SET_YOUR_OWN}`);
        const plan = proposalPlan(proposalOf(now, details), details);
        const title = ["Proposal", details.job.trim()].filter(Boolean).join(" ");
        const file = await workbookFile([{ sheetName: "Proposal", plan }], { valuesOnly: true, title });
        if (canOpenWorkbooks()) await openAsWorkbook(base64Of(file));
        else download(file, title);
        return "The proposal is a separate workbook. Check it, then print it, or save and send it.";
      }),
    /** Writes another version of the job on a new sheet. */
    addOption: (option: NewOption) =>
      attempt("Adding the option…", async () => {
        const { beds, onSheet: job } = await again();
        if (!job) throw new WorkbookFailure("Add the job estimate first: an option is another version of it.");
        const added = await insertOption(job, beds, option, found?.rates);
        if (!added.done) throw new WorkbookFailure("A new sheet couldn't be added. Nothing was written. Try again.");
        const now = await readJob();
        inserted(added.id, await updateComparison(job.name, now));
        setFound(await readJob());
        return `Added ${option.name} on the sheet ${added.sheetName}. To build it, set Chosen there to yes, and to no in the others.`;
      }),
    undo: update.canUndo
      ? update.undo
      : () =>
          attempt("Undoing…", async () => {
            await along?.undo();
            setAlong(undefined);
            const said = await undoInsert(canUndo);
            setCanUndo(undefined);
            const { before, showOld } = last?.id === canUndo ? (last ?? {}) : {};
            setLast(undefined);
            await showOld?.();
            if (showOld) return `${said} The earlier ones are back.`;
            if (!before) return said;
            made(await insertSheets(before));
            return `${said} The earlier ones are back.`;
          }),
    /** For what else is done with the job: the same words, the same way of failing. */
    attempt,
    setCanUndo: inserted,
  };
}

export type Papers = ReturnType<typeof usePapers>;

function computed<T>(compute: () => T | undefined): Computed<T> {
  try {
    return { value: compute(), problem: undefined };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return { value: undefined, problem: inWords(error), argument: error.argument };
  }
}

/** What an argument of a function is called in a formula means nothing in the pane. */
function inWords({ message, argument = "" }: Problem): string {
  return message.replaceAll(argument, argument.replaceAll("_", " "));
}
