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
      "kept where": store.title,
      texts: TEXTS,
      read: found.kept,
      refused: found.refused,
      faults: found.faults.length,
      "slowest, ms": short(found.slowestMs),
    };
  });
  if (faults.length > 0) throw new Error(`Faults found:\n${faults.join("\n")}`);
  const claim = {
    what: `Faults in ${(TEXTS * stores.length).toLocaleString("en-US")} texts that stand where something is kept`,
    measured: faults.length,
    most: 0,
    unit: "",
    how: "what was kept is read and written back whole, or known to be unreadable; nothing fails",
  };
  return { title: "Fuzz: what is kept is read or refused, whatever stands there", rows, claims: [claim] };
}
