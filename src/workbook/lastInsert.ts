import { queueReadReceipt } from "./receipt";
import { inWorkbook } from "./trouble";

/** An insert that can be taken back. */
export interface LastInsert {
  readonly title: string;
  /** Left out for one that an earlier version made. */
  readonly id?: string | undefined;
}

/** What would be taken back: what the person is asked about; undefined where there is nothing. */
export async function lastInsert(): Promise<LastInsert | undefined> {
  return inWorkbook(async (context) => {
    const read = queueReadReceipt(context);
    await context.sync();
    const kept = read.kept();
    if (kept.state === "none") return undefined;
    // Of one that cannot be read, the person is told when they want it taken back.
    return kept.state === "kept" ? { title: kept.value.title, id: kept.value.id } : { title: "what was inserted last" };
  });
}
