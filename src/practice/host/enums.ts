/** The host's lists of words that an add-in refers to by name, such as `Excel.ClearApplyTo.contents`. */
export const enums = {
  BorderIndex: {
    edgeTop: "EdgeTop",
    edgeBottom: "EdgeBottom",
    edgeLeft: "EdgeLeft",
    edgeRight: "EdgeRight",
    insideVertical: "InsideVertical",
    insideHorizontal: "InsideHorizontal",
  },
  BorderLineStyle: { none: "None", continuous: "Continuous", dash: "Dash", dot: "Dot", double: "Double" },
  BorderWeight: { hairline: "Hairline", thin: "Thin", medium: "Medium", thick: "Thick" },
  CalculationType: { recalculate: "Recalculate", full: "Full", fullRebuild: "FullRebuild" },
  ClearApplyTo: { all: "All", formats: "Formats", contents: "Contents" },
  ConditionalFormatType: { custom: "Custom" },
  DataChangeType: {
    rangeEdited: "RangeEdited",
    rowInserted: "RowInserted",
    rowDeleted: "RowDeleted",
    columnInserted: "ColumnInserted",
    columnDeleted: "ColumnDeleted",
  },
  EventSource: { local: "Local", remote: "Remote" },
  EventTriggerSource: { unknown: "Unknown", thisLocalAddin: "ThisLocalAddin" },
  GroupOption: { byRows: "ByRows", byColumns: "ByColumns" },
  HorizontalAlignment: { general: "General", left: "Left", center: "Center", right: "Right" },
  PageOrientation: { portrait: "Portrait", landscape: "Landscape" },
  PaperType: { letter: "Letter", legal: "Legal", tabloid: "Tabloid", a3: "A3", a4: "A4", a5: "A5" },
  PrintMarginUnit: { points: "Points", inches: "Inches", centimeters: "Centimeters" },
  RangeCopyType: { all: "All", formulas: "Formulas", values: "Values", formats: "Formats" },
  RangeUnderlineStyle: { none: "None", single: "Single" },
  RangeValueType: { empty: "Empty", string: "String", double: "Double", boolean: "Boolean", error: "Error" },
  SheetVisibility: { visible: "Visible", hidden: "Hidden" },
  VerticalAlignment: { top: "Top", center: "Center", bottom: "Bottom" },
} as const satisfies {
  [E in keyof typeof Excel]?: { [W in keyof (typeof Excel)[E]]?: `${string & (typeof Excel)[E][W]}` };
};
