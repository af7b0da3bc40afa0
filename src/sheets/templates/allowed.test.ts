import * as formulajs from "@formulajs/formulajs";
import { describe, expect, test } from "vitest";
import { nativeForms } from "../../functions/native/forms";
import { callFault } from "./callFault";
import { ordinaryFunctions } from "./ordinaryFunctions";
import { refusedFunction } from "./refusedFunctions";

describe("the functions that a template may call", () => {
  test("are none that are refused with a reason", () => {
    expect([...ordinaryFunctions].filter((name) => refusedFunction(name) !== undefined)).toEqual([]);
    expect([...ordinaryFunctions].filter((name) => /^CUBE|^IMPORT/.test(name))).toEqual([]);
  });

  test("are known to an independent library of worksheet functions, or are named here", () => {
    // formulajs (npm) writes names without their dots, and leaves out what works on references, LET and its like.
    const theirs = new Set(Object.keys(formulajs).map((name) => name.toUpperCase()));
    const rest = [...ordinaryFunctions].filter(
      (name) => !theirs.has(name) && !theirs.has(name.replaceAll(".", "")) && !theirs.has(name.split(".")[0]!),
    );
    expect(rest).toEqual(
      (
        "MDETERM MINVERSE RANDARRAY SEQUENCE LAMBDA LET BYCOL BYROW MAKEARRAY MAP REDUCE SCAN ISOMITTED ISFORMULA ISREF " +
        "FILTER FORMULATEXT OFFSET SORTBY TOCOL TOROW WRAPCOLS WRAPROWS XLOOKUP XMATCH ARRAYTOTEXT TEXTAFTER TEXTBEFORE " +
        "TEXTSPLIT VALUETOTEXT VDB"
      ).split(" "),
    );
  });

  test("are all of this add-in, in whatever way a file writes them", () => {
    for (const id of Object.keys(nativeForms)) {
      expect(callFault(`BED.${id}`)).toBeUndefined();
      expect(callFault(`_xldudf_BED_${id}`)).toBeUndefined();
    }
    expect(callFault("BED.constructor")).toMatch(/which this version of the add-in doesn't have/);
    expect(callFault("_xlfn.XLOOKUP")).toBeUndefined();
    expect(callFault("_xlfn._xlws.FILTER")).toBeUndefined();
    expect(callFault("sum")).toBeUndefined();
  });
});
