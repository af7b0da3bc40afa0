import type { FieldKey } from "../../quantities/bed/fields";
import { blankForm, initialOf } from "../../quantities/bed/form";
import { SOLD_BY } from "../../quantities/soldBy";
import { escaped, table } from "../html";

/** What stone that is sold so starts with. */
export function soldByTable(): string {
  const rows = SOLD_BY.map(({ name, unit, one }) => {
    const start = (key: FieldKey) => escaped(initialOf({ ...blankForm(), typed: { soldBy: name } }, key));
    const inUnit = (key: FieldKey) => `${start(key)} ${escaped(unit)}`;
    return [escaped(name), inUnit("orderStep"), inUnit("orderMinimum"), `${start("stoneCost")} per ${escaped(one)}`];
  });
  return table(["Sold by", "Step", "Minimum", "Sample price"], rows);
}
