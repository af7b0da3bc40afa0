import { type FieldKey, fields } from "../../quantities/bed/fields";
import { EDGING_KINDS } from "../../quantities/edgingKinds";
import { EDGING_SOURCES } from "../../quantities/edgingSources";
import { escaped, table } from "../html";
import { HOW_SURE } from "./stated";

const figure = (key: FieldKey, text: string) => escaped(`${text} ${/\d$/.test(text) ? fields[key].unit : ""}`.trim());

/** The usual figures of each kind of edging but metal, whose figures are the defaults. */
export function edgingTable(): string {
  const rows = EDGING_KINDS.flatMap(({ name, usual }) =>
    (Object.entries(usual) as [FieldKey, string][]).map(([key, text]) => {
      const from = EDGING_SOURCES.find(({ kind, field }) => kind === name && field === key);
      const [source, sure] = from ? [from.source, HOW_SURE[from.sure]] : ["made up", "sample"];
      return [escaped(name), escaped(fields[key].label), figure(key, text), escaped(source), sure];
    }),
  );
  return table(["Edging kind", "What", "Usual", "Source", "How sure"], rows);
}
