import * as parser from "numfmt";
import { staysText } from "../grid/staysText";

/*
 * The grid's number parser as the practice page has it, for what is typed and pasted: text that would stay text in the
 * spreadsheet program stays text here. The build puts this file where the grid's packages ask for the parser.
 */
export * from "numfmt";

const unlessText = <Parse extends (text: string, ...rest: never[]) => unknown>(parse: Parse): Parse =>
  ((text, ...rest) => (staysText(text) ? null : parse(text, ...rest))) as Parse;

export const parseDate = unlessText(parser.parseDate);
export const parseNumber = unlessText(parser.parseNumber);
export const parseValue = unlessText(parser.parseValue);
