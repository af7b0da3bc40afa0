import type { HeaderFooter, HeaderFooterGroup } from "./headersFooters";
import type { NamedItem } from "./names";
import type { PageBreak } from "./pageBreaks";
import type { WorksheetProtection } from "./protection";
import type { Range } from "./range";
import type { RangeAreas } from "./rangeAreas";
import type { RangeBorder, RangeBorders } from "./rangeBorders";
import type { RangeFill } from "./rangeFill";
import type { RangeFont } from "./rangeFont";
import type { RangeFormat } from "./rangeFormat";
import type { Setting } from "./settings";
import type { Shape } from "./shapes";
import type { Style } from "./styles";
import type { Table, TableCollection, TableScopedCollection } from "./tables";
import type { Worksheet } from "./worksheet";

/**
 * The stand-in's own class for a class of the host, so that `Members<Excel.Range, "getCell">` promises a stand-in
 * range and not a whole one.
 */
type Mirror<T> = 0 extends 1 & T
  ? T
  : T extends Excel.Range
    ? Range
    : T extends Excel.RangeAreas
      ? RangeAreas
      : T extends Excel.Worksheet
        ? Worksheet
        : T extends Excel.RangeFormat
          ? RangeFormat
          : T extends Excel.RangeFill
            ? RangeFill
            : T extends Excel.RangeFont
              ? RangeFont
              : T extends Excel.RangeBorderCollection
                ? RangeBorders
                : T extends Excel.RangeBorder
                  ? RangeBorder
                  : T extends Excel.Style
                    ? Style
                    : T extends Excel.NamedItem
                      ? NamedItem
                      : T extends Excel.Setting
                        ? Setting
                        : T extends Excel.TableCollection
                          ? TableCollection
                          : T extends Excel.TableScopedCollection
                            ? TableScopedCollection
                            : T extends Excel.Table
                              ? Table
                              : T extends Excel.PageBreak
                                ? PageBreak
                                : T extends Excel.HeaderFooter
                                  ? HeaderFooter
                                  : T extends Excel.HeaderFooterGroup
                                    ? HeaderFooterGroup
                                    : T extends Excel.WorksheetProtection
                                      ? WorksheetProtection
                                      : T extends Excel.Shape
                                        ? Shape
                                        : T;

type MirrorEach<A extends unknown[]> = { [I in keyof A]: Mirror<A[I]> };

/**
 * The named members of a class of the host, with the host's own types for their arguments and results. A stand-in
 * class that implements this holds the same end as the add-in that was written against the host's types.
 */
export type Members<T, K extends keyof T> = {
  [P in K]: T[P] extends (...given: infer A) => infer R ? (...given: MirrorEach<A>) => Mirror<R> : Mirror<T[P]>;
};
