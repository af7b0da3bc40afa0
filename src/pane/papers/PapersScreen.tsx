import { useEffect, useRef } from "preact/hooks";
import { dateWords } from "../../quantities/calendar/calendarDay";
import { Button } from "../Button";
import { TextField } from "../Field";
import { Group } from "../Group";
import { UnkeptNote } from "../keep/UnkeptNote";
import { onEscape } from "../onEscape";
import { Select } from "../Select";
import { StatusMessage } from "../StatusMessage";
import { AfterTheJob } from "./after/AfterTheJob";
import { BedList } from "./BedList";
import { DateField } from "./DateField";
import { DAYS } from "./days";
import type { JobDetails } from "./details";
import { JobPrice } from "./JobPrice";
import { OTHER_HOLIDAYS, START_DATE } from "./noticeOf";
import { ProposalPart } from "./ProposalPart";
import { TextArea } from "./TextArea";
import { Together } from "./Together";
import { type Papers, usePapers } from "./usePapers";

const papers = [
  { value: "letter", label: "Letter" },
  { value: "a4", label: "A4" },
];

/** One job of several beds: its order, crew sheet, dig notice, and proposal, and what came of it. */
export function PapersScreen() {
  const work = usePapers();
  const { found, details, job, notice, status, isWorking: working, canUndo, type, make } = work;
  const beds = found?.beds ?? [];
  return (
    <>
      <header>
        <h1>Job documents</h1>
        <Button off={working} onPress={() => void work.read()}>
          Refresh
        </Button>
      </header>
      {found && beds.length === 0 && (
        <p class="notice">
          This workbook has no beds yet. Add an estimate or a list with one bed per row, then come back.
        </p>
      )}
      {beds.length > 0 && <BedList beds={beds} isTicked={work.isTicked} onTick={work.tick} />}
      {job.problem && <p class="notice trouble">{job.problem}</p>}
      {job.value && (
        <>
          <h2>The job</h2>
          <UnkeptNote unkept={work.unkept} />
          <TextField label="Job" value={details.job} onType={(text) => type({ job: text })} />
          <JobPrice work={work} job={job.value} disabled={working} />
          <Together job={job.value} />
          <TextField label="Job site" value={details.place} onType={(text) => type({ place: text })} />
          <TextField label="Your company" value={details.office} onType={(text) => type({ office: text })} />
          <Select
            label="Paper"
            value={details.paper}
            options={papers}
            onChoose={(paper) => type({ paper: paper as JobDetails["paper"] })}
          />
          <NoticePart details={details} notice={notice} onType={type} />
          <h2>Sheets for this workbook</h2>
          <p class="below">Each is added as a new sheet, sized to print. Nothing else in the workbook changes.</p>
          <p class="row">
            <Button
              main
              off={working || !notice.value}
              title={notice.value ? undefined : "Type the start date first"}
              onPress={() => void make(["order", "crew", "notice"])}
            >
              All three
            </Button>
            <Button off={working} onPress={() => void make(["order"])}>
              Order
            </Button>
            <Button off={working} onPress={() => void make(["crew"])}>
              Crew sheet
            </Button>
            <Button off={working || !notice.value} onPress={() => void make(["notice"])}>
              Dig notice
            </Button>
          </p>
          <ProposalPart work={work} job={job.value} disabled={working} />
          <AfterTheJob work={work} job={job.value} past={found?.past} disabled={working} />
        </>
      )}
      <div class="insert-bar">
        {work.question && <ReplaceQuestion work={work} />}
        {canUndo && !work.question && (
          <p class="row">
            <Button off={working} onPress={() => void work.undo()}>
              Undo
            </Button>
          </p>
        )}
        <StatusMessage status={status} />
      </div>
    </>
  );
}

/** Asks what becomes of documents that the workbook has already. */
function ReplaceQuestion({ work: { question, replace, keepBoth, cancel } }: { readonly work: Papers }) {
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  if (!question) return null;
  const { taken, replaces } = question;
  const are = taken.length === 1 ? "is" : "are";
  return (
    <div role="alertdialog" aria-labelledby="replace-question" class="notice" onKeyDown={onEscape(cancel, false)}>
      <p id="replace-question">
        {taken.join(", ")} {are} already in this workbook.{" "}
        {replaces
          ? "A sheet you changed since isn't replaced."
          : `Replace keeps what's there as ${taken.length === 1 ? "a hidden sheet" : "hidden sheets"}: Old ${taken.join(", Old ")}.`}
      </p>
      <p class="row">
        <Button at={first} main onPress={() => void replace()}>
          Replace
        </Button>
        <Button onPress={() => void keepBoth()}>Keep both</Button>
        <Button onPress={cancel}>Cancel</Button>
      </p>
    </div>
  );
}

interface NoticePartProps {
  readonly details: JobDetails;
  readonly notice: Papers["notice"];
  readonly onType: (typed: Partial<JobDetails>) => void;
}

/** What a problem of the notice calls the fields; any other is about the start. */
const noticeFields = {
  days: DAYS.notice,
  marks: DAYS.marks,
  holidays: OTHER_HOLIDAYS,
} as const;

function NoticePart({ details, notice: { value: notice, problem, argument }, onType }: NoticePartProps) {
  const isOf = (field: keyof typeof noticeFields) => noticeFields[field] === argument;
  const isInGroup = isOf("marks") || isOf("holidays");
  return (
    <section aria-labelledby="notice-heading">
      <h2 id="notice-heading">Start and dig notice</h2>
      <DateField
        label={START_DATE}
        value={details.start}
        problem={isInGroup || isOf("days") ? undefined : problem}
        onType={(start) => onType({ start })}
      />
      <TextField
        label="Notice, full business days"
        value={details.noticeDays}
        note="your state's rule; the day you call isn't counted"
        problem={isOf("days") ? problem : undefined}
        onType={(noticeDays) => onType({ noticeDays })}
      />
      <Group heading="Holidays and how long marks last" opens={isInGroup}>
        <Select
          label="Federal holidays"
          value={details.federal}
          options={[
            { value: "yes", label: "don't count as business days" },
            { value: "no", label: "count as business days" },
          ]}
          onChoose={(federal) => onType({ federal: federal as JobDetails["federal"] })}
        />
        <TextArea
          label="Other holidays, one per line"
          value={details.ownHolidays}
          note="11/27/2026 Friday after Thanksgiving"
          problem={isOf("holidays") ? problem : undefined}
          onType={(ownHolidays) => onType({ ownHolidays })}
        />
        <TextField
          label="Marks are good for"
          unit="days"
          value={details.marksDays}
          note="from the ticket; leave blank to leave it off"
          problem={isOf("marks") ? problem : undefined}
          onType={(marksDays) => onType({ marksDays })}
        />
        <Select
          label="These days are"
          value={details.marksCounted}
          options={[
            { value: "calendar", label: "calendar days" },
            { value: "working", label: "business days" },
          ]}
          onChoose={(counted) => onType({ marksCounted: counted as JobDetails["marksCounted"] })}
        />
      </Group>
      {notice && (
        <>
          <p>
            Give notice by <strong>{dateWords(notice.lastNoticeDate)}</strong>. If you call today, dig from{" "}
            {dateWords(notice.earliestIfToday)}.
            {notice.marksLastDay !== undefined && ` Marks are good through ${dateWords(notice.marksLastDay)}.`} Go by
            the ticket and your state's law.
          </p>
          {notice.warnings.map(({ kind, text }) => (
            <p key={kind} class="notice trouble">
              {text}
            </p>
          ))}
        </>
      )}
    </section>
  );
}
