import { form } from "./form";
import { measure } from "./numbers";

export const FEET = form([measure("ft")], (taped) => ({ text: taped.text, least: taped.least }));

export const INCHES = form([measure("in")], (taped) => ({ text: taped.text, least: taped.least }));
