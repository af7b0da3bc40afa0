import { useEffect, useState } from "preact/hooks";
import type { Changed, KeptTemplate } from "../../sheets/templates/keptTemplates";
import { changeKeptTemplates, readKeptTemplates } from "../../workbook/templates";
import { WorkbookTrouble } from "../../workbook/trouble";

/** The templates that this workbook keeps. */
export function useKept() {
  const [templates, setTemplates] = useState<readonly KeptTemplate[]>([]);
  const [trouble, setTrouble] = useState<string>();
  useEffect(() => {
    readKeptTemplates().then(setTemplates, (error) => {
      if (!(error instanceof WorkbookTrouble)) throw error;
      setTrouble(error.message);
    });
  }, []);
  return {
    templates,
    /** Why they cannot be read. */
    trouble,
    change: async (change: (templates: readonly KeptTemplate[]) => Changed) => {
      setTemplates(await changeKeptTemplates(change));
      setTrouble(undefined);
    },
  };
}

export type Kept = ReturnType<typeof useKept>;
