import { describe, expect, test } from "vitest";
import { BARROW_TRIPS, HAUL_HOURS, MARKUP_FOR_MARGIN, PRICE_MARGIN, PRICE_MARKUP } from "../../src/functions/index";

describe("barrowing (Navy and Army practice: hours = quantity × rate, seen; the figures computed)", () => {
  test("13.5 yd³ in trays of 6 ft³ are 61 trips where weight does not rule", () => {
    expect(BARROW_TRIPS(13.5, 0.5, 6, 1e6)).toBe(61);
  });

  test("61 trips of 150 ft at 200 ft/min, load 2, dump 0.5 min: 4.0667 h", () => {
    expect(HAUL_HOURS(61, 150, 2, 0.5, 200)).toBeCloseTo(4.0667, 4);
    expect(HAUL_HOURS(61, "50 yd")).toBeCloseTo(4.0667, 4);
  });

  test("6 ft³ of stone at 95 lb/ft³ weighs 570 lb, so a limit of 300 lb, 3.158 ft³, rules", () => {
    const tonsPerYard = (95 * 27) / 2000;
    expect(BARROW_TRIPS(13.5, tonsPerYard)).toBe(Math.ceil((13.5 * 27) / 3.158));
  });
});

describe("price (Centennial College library guide: markup is on cost, margin is on price; seen)", () => {
  test("cost 100, price 125: markup 25 %, margin 20 %", () => {
    expect(PRICE_MARKUP(100, "25%")).toBe(125);
    expect(PRICE_MARGIN(100, "20%")).toBe(125);
    expect(MARKUP_FOR_MARGIN(0.2)).toBe(0.25);
  });

  test("a margin of 35 % is a markup of 53.846154 % (computed)", () => {
    expect(MARKUP_FOR_MARGIN(0.35)).toBeCloseTo(0.53846154, 8);
  });

  test("a cost of 4,000 at 35 % margin is 6,153.85, and not the 5,400 of a markup (computed)", () => {
    expect(PRICE_MARGIN(4000, 0.35)).toBeCloseTo(6153.85, 2);
    expect(PRICE_MARKUP(4000, 0.35)).toBeCloseTo(5400, 10);
  });
});
