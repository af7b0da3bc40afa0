/**
 * Exact relations between units. Base constants from the 1959 international yard and pound agreement, as
 * printed in NIST Handbook 44, Appendix C, and NIST SP 811; everything else is derived from them here.
 */

/** 1 yd = 0.9144 m exactly. */
export const METERS_PER_YARD = 0.9144;
/** 1 lb = 0.45359237 kg exactly. */
export const KILOGRAMS_PER_POUND = 0.45359237;

export const FEET_PER_YARD = 3;
export const INCHES_PER_FOOT = 12;
export const CUBIC_FEET_PER_CUBIC_YARD = FEET_PER_YARD ** 3;

/** 1 ft = 0.3048 m. */
export const METERS_PER_FOOT = METERS_PER_YARD / FEET_PER_YARD;

/** A short ton is 2,000 lb (NIST Handbook 44, Appendix C). */
export const POUNDS_PER_SHORT_TON = 2000;

/** Area in square feet times depth in inches is this many times the cubic yards: 12 × 27 = 324. */
export const SQUARE_FOOT_INCHES_PER_CUBIC_YARD = INCHES_PER_FOOT * CUBIC_FEET_PER_CUBIC_YARD;

/**
 * The units a tape is read in, in tenths of a millimeter: all whole numbers, so conversions keep every digit.
 * 1 in = 25.4 mm and 1 yd = 0.9144 m exactly (NIST Handbook 44, Appendix C).
 */
export const TENTH_MILLIMETERS = { in: 254, ft: 3048, yd: 9144, mm: 10, cm: 100, m: 10_000 } as const;
