import { fuzzStore } from "../fuzz/fuzzStores";
import { stores } from "../fuzz/stores";
import { short, type Table } from "./table";

const TEXTS = Number(process.env.FUZZ_CALLS ?? 100_000);

/** Every place where something is kept, with texts that are nearly right: what was read, what was refused, and faults. */
export async function bench(): Promise<Table> {
  const faults: string[] = [];
  const rows = stores.map((store) => {
    const found = fuzzStore(store, TEXTS, 11);
    faults.push(...found.faults.map((fault) => `${store.title}: ${fault}`));
    return {
      "stored where": store.title,
      texts: TEXTS,
      read: found.kept,
      refused: found.refused,
      faults: found.faults.length,
      "slowest, ms": short(found.slowestMs),
    };
  });
  if (faults.length > 0) throw new Error(`Faults found:\n${faults.join("\n")}`);
  const claim = {
    what: `Faults in ${(TEXTS * stores.length).toLocaleString("en-US")} texts put where something is stored`,
    measured: faults.length,
    most: 0,
    unit: "",
    how: "stored data is read and written back in full, or known to be unreadable; nothing fails",
  };
  return { title: "Fuzz: stored data is read or refused, whatever is there", rows, claims: [claim] };
}
