import { describe, expect, test } from "vitest";
import { readKeptText, textToKeep } from "../../sheets/kept";
import { startingDetails, storedDetails } from "./details";

describe("the details of a job", () => {
  const read = (kept: unknown, version = 1) => readKeptText(JSON.stringify({ version, kept }), storedDetails);

  test("saved before the letterhead existed are still read, with a blank letterhead", () => {
    const { officeAddress, officePhone, officeLicense, proposalNumber, depositPercent, ...before } = {
      ...startingDetails,
      office: "Elm Stone Co.",
      terms: "Half on signing",
    };
    expect(read(before)).toEqual({
      state: "kept",
      value: { ...startingDetails, office: "Elm Stone Co.", terms: "Half on signing" },
    });
  });

  test("come back as they were saved", () => {
    const details = { ...startingDetails, officeLicense: "OH 12345", proposalNumber: "26-014", depositPercent: "30" };
    expect(readKeptText(textToKeep(details, storedDetails), storedDetails)).toEqual({ state: "kept", value: details });
  });

  test("with anything but text in the letterhead are damaged", () => {
    expect(read({ ...startingDetails, officePhone: 555 })).toEqual({ state: "damaged" });
  });
});
