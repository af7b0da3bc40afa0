import type { Bed } from "../../src/layout/bed";
import { layOutBed } from "../../src/layout/layOutBed";
import type { Table } from "./table";

const CORNERS = [8, 16, 32, 64, 128, 256];
const REPEATS = 5;
const options = {
  rollWidthFt: 6,
  rollLengthFt: 50,
  overlapIn: 6,
  border: { pieceLengthFt: 8, lapIn: 2, stakeSpacingIn: 30 },
};

/** A bed of one size and shape, with bays and spurs, given by more and more points. */
function bedOf(corners: number): Bed {
  const points = Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    const radius = 15 + 4 * Math.sin(3 * angle) + Math.cos(5 * angle);
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
  return { kind: "points", points };
}

/** The least of a few runs, since everything else that runs on the machine only ever adds. */
function millisecondsOf(bed: Bed): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < REPEATS; i++) {
    const start = performance.now();
    layOutBed(bed, options);
    least = Math.min(least, performance.now() - start);
  }
  return least;
}

/** How the time to lay a bed out grows with the number of its corners. */
export async function bench(): Promise<Table> {
  // Once over, so that no row pays for the compiler.
  for (const corners of CORNERS) millisecondsOf(bedOf(corners));
  const times = CORNERS.map((corners) => millisecondsOf(bedOf(corners)));
  const rows = CORNERS.map((corners, i) => ({
    corners,
    ms: Number(times[i]!.toFixed(2)),
    "times the first": Number((times[i]! / times[0]!).toFixed(1)),
    "growth exponent": i === 0 ? "" : Number(Math.log2(times[i]! / times[i - 1]!).toFixed(2)),
    pins: layOutBed(bedOf(corners), options).counts.pins,
  }));
  return { title: "Laying a bed out, by number of corners (time ~ corners to the growth exponent)", rows };
}
