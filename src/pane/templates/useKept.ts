import { useEffect, useState } from "preact/hooks";
import type { Changed, KeptTemplate } from "../../sheets/templates/keptTemplates";
import { WorkbookFailure } from "../../workbook/failure";
import { changeKeptTemplates, readKeptTemplates } from "../../workbook/settings/templates";
import { useOnceMore } from "../useOnceMore";

/** The templates that this workbook keeps. */
export function useKept() {
  const [templates, setTemplates] = useState<readonly KeptTemplate[]>([]);
  const [trouble, setTrouble] = useState<string>();
  const onceMore = useOnceMore();
  useEffect(() => {
    readKeptTemplates().then(setTemplates, (error) => {
      if (!(error instanceof WorkbookFailure)) throw error;
      setTrouble(error.message);
    });
  }, []);
  return {
    templates,
    /** Why they cannot be read. */
    trouble,
    change: async (change: (templates: readonly KeptTemplate[]) => Changed) => {
      setTemplates(await onceMore((startOver) => changeKeptTemplates(change, startOver)));
      setTrouble(undefined);
    },
  };
}

export type Kept = ReturnType<typeof useKept>;
