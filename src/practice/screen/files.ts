import type { Shelf } from "../keep/database";
import type { KeptFile } from "../keep/keptFile";
import { element } from "./element";
import { type Openings, openFile } from "./openFile";
import { saveFile } from "./saveFile";
import { sayInBar } from "./say";

/**
 * Lets a person open a file in the place of the workbook, and save the workbook as a new file.
 *
 * @param kept where the file is kept that the workbook was opened from.
 */
export function offerFiles(given: Omit<Openings, "save">, kept: Shelf<KeptFile>): void {
  const [open, save] = ["practice-open", "practice-save"].map((id) => element(id) as HTMLButtonElement);
  const chooser = element("practice-file") as HTMLInputElement;
  const buttons = [open, save].filter((button) => button !== undefined);
  const atWork = async (work: () => Promise<void>) => {
    for (const button of buttons) button.disabled = true;
    try {
      await work();
    } finally {
      for (const button of buttons) button.disabled = false;
    }
  };
  const openings: Openings = { ...given, save: () => saveFile(given.grid, given.functions, kept) };
  open?.addEventListener("click", () => chooser.click());
  chooser.addEventListener("change", () => {
    const [file] = chooser.files ?? [];
    if (file) void atWork(() => openFile(file, openings)).finally(() => (chooser.value = ""));
  });
  save?.addEventListener("click", () => {
    void atWork(async () => {
      sayInBar("Making the file…");
      sayInBar((await openings.save()) ?? "");
    });
  });
  for (const button of buttons) button.disabled = false;
}
