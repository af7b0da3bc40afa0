import type * as Core from "@univerjs/core";
import type { FUniver } from "@univerjs/core/lib/facade";
// Only for what they add to the facade's types.
import type {} from "@univerjs/preset-sheets-conditional-formatting";
import type {} from "@univerjs/preset-sheets-drawing";
import type * as Sheets from "@univerjs/preset-sheets-node-core";

/**
 * What the port needs from the grid's packages. They are handed in and not imported, because a page bundles one
 * build of them and Node loads another, and their classes must all come from the same one.
 */
export interface GridLibrary {
  readonly core: Pick<
    typeof Core,
    | "BooleanNumber"
    | "CellValueType"
    | "CommandType"
    | "DataValidationRenderMode"
    | "ICommandService"
    | "ImageSourceType"
    | "TextDecoration"
    | "WrapStrategy"
    | "hashAlgorithm"
    | "numfmt"
  >;
  readonly drawing: Pick<typeof Sheets, "ISheetDrawingService">;
  readonly sheets: Pick<
    typeof Sheets,
    | "ArrayValueObject"
    | "BaseFunction"
    | "BooleanValueObject"
    | "ClearSelectionFormatCommand"
    | "ErrorType"
    | "ErrorValueObject"
    | "FormulaDataModel"
    | "FormulaExecuteStageType"
    | "FunctionType"
    | "IActiveDirtyManagerService"
    | "IDefinedNamesService"
    | "IDescriptionService"
    | "IFunctionService"
    | "LexerTreeBuilder"
    | "NumberValueObject"
    | "RemoveDefinedNameMutation"
    | "SCOPE_WORKBOOK_VALUE_DEFINED_NAME"
    | "SetBorderCommand"
    | "SetDefinedNameMutation"
    | "SetFormulaCalculationNotificationMutation"
    | "SetFormulaCalculationResultMutation"
    | "SetFormulaCalculationStartMutation"
    | "SetRangeValuesCommand"
    | "SetRangeValuesMutation"
    | "SetStyleCommand"
    | "SetTriggerFormulaCalculationStartMutation"
    | "SetWorksheetColWidthMutation"
    | "SheetSkeletonService"
    | "StringValueObject"
    | "TriggerCalculationController"
    | "deserializeListOptions"
  >;
}

/** A grid that is up: the library it is made of, its facade, and the one workbook open in it. */
export interface OpenGrid {
  readonly library: GridLibrary;
  readonly api: FUniver;
  readonly injector: Core.Injector;
  readonly workbook: ReturnType<FUniver["createWorkbook"]>;
}
