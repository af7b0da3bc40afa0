import type { Declaration } from "./declare";
import { areaPointsDeclared } from "./each/areaPoints";
import { areaRectangleDeclared } from "./each/areaRectangle";
import { areaRoundDeclared } from "./each/areaRound";
import { areaTriangleDeclared } from "./each/areaTriangle";
import { areaWidthsDeclared } from "./each/areaWidths";
import { barrowTripsDeclared } from "./each/barrowTrips";
import { cutCountDeclared } from "./each/cutCount";
import { cutListDeclared } from "./each/cutList";
import { digDateDeclared } from "./each/digDate";
import { digYardsDeclared } from "./each/digYards";
import { edgeLengthDeclared } from "./each/edgeLength";
import { edgePointsDeclared } from "./each/edgePoints";
import { edgeWidthsDeclared } from "./each/edgeWidths";
import { edgingPiecesDeclared } from "./each/edgingPieces";
import { fabricAreaDeclared } from "./each/fabricArea";
import { fabricCutsDeclared } from "./each/fabricCuts";
import { fabricRollsDeclared } from "./each/fabricRolls";
import { fabricStripsDeclared } from "./each/fabricStrips";
import { feetDeclared } from "./each/feet";
import { haulHoursDeclared } from "./each/haulHours";
import { inchesDeclared } from "./each/inches";
import { layoutDeclared } from "./each/layout";
import { layoutCutsDeclared } from "./each/layoutCuts";
import { layoutPinsDeclared } from "./each/layoutPins";
import { layoutRectangleDeclared } from "./each/layoutRectangle";
import { layoutRoundDeclared } from "./each/layoutRound";
import { layoutWidthsDeclared } from "./each/layoutWidths";
import { loadsDeclared } from "./each/loads";
import { markupForMarginDeclared } from "./each/markupForMargin";
import { orderUpDeclared } from "./each/orderUp";
import { pinMapDeclared } from "./each/pinMap";
import { pinsDeclared } from "./each/pins";
import { priceMarginDeclared } from "./each/priceMargin";
import { priceMarkupDeclared } from "./each/priceMarkup";
import { spoilYardsDeclared } from "./each/spoilYards";
import { stakesDeclared } from "./each/stakes";
import { stoneBagsDeclared } from "./each/stoneBags";
import { stoneCoversDeclared } from "./each/stoneCovers";
import { stoneDensityDeclared } from "./each/stoneDensity";
import { stoneDepthDeclared } from "./each/stoneDepth";
import { stoneTonsDeclared } from "./each/stoneTons";
import { stoneYardsDeclared } from "./each/stoneYards";

/** All there is to know of every worksheet function, in the order of a job. */
export const declarations: readonly Declaration[] = [
  feetDeclared,
  inchesDeclared,
  areaRectangleDeclared,
  areaTriangleDeclared,
  areaRoundDeclared,
  areaWidthsDeclared,
  areaPointsDeclared,
  edgeLengthDeclared,
  edgeWidthsDeclared,
  edgePointsDeclared,
  digDateDeclared,
  digYardsDeclared,
  spoilYardsDeclared,
  loadsDeclared,
  edgingPiecesDeclared,
  stakesDeclared,
  fabricStripsDeclared,
  fabricAreaDeclared,
  fabricRollsDeclared,
  fabricCutsDeclared,
  pinsDeclared,
  pinMapDeclared,
  layoutDeclared,
  layoutWidthsDeclared,
  layoutRectangleDeclared,
  layoutRoundDeclared,
  layoutCutsDeclared,
  layoutPinsDeclared,
  stoneDepthDeclared,
  stoneYardsDeclared,
  stoneTonsDeclared,
  stoneBagsDeclared,
  stoneCoversDeclared,
  stoneDensityDeclared,
  orderUpDeclared,
  barrowTripsDeclared,
  haulHoursDeclared,
  cutCountDeclared,
  cutListDeclared,
  priceMarkupDeclared,
  priceMarginDeclared,
  markupForMarginDeclared,
];
