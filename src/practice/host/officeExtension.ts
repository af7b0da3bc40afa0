import { HostError } from "./error";

/** The codes that the host's client library raises by itself, without asking the spreadsheet program. */
const errorCodes = {
  accessDenied: "AccessDenied",
  activityLimitReached: "ActivityLimitReached",
  apiNotFound: "ApiNotFound",
  cannotRegisterEvent: "CannotRegisterEvent",
  cannotUpdateReadOnlyProperty: "CannotUpdateReadOnlyProperty",
  connectionFailure: "ConnectionFailure",
  generalException: "GeneralException",
  invalidArgument: "InvalidArgument",
  invalidObjectPath: "InvalidObjectPath",
  invalidOrTimedOutSession: "InvalidOrTimedOutSession",
  invalidRequestContext: "InvalidRequestContext",
  propertyNotLoaded: "PropertyNotLoaded",
  requestPayloadSizeLimitExceeded: "RequestPayloadSizeLimitExceeded",
  responsePayloadSizeLimitExceeded: "ResponsePayloadSizeLimitExceeded",
  runMustReturnPromise: "RunMustReturnPromise",
  timeout: "Timeout",
  valueNotLoaded: "ValueNotLoaded",
  writeNotSupportedWhenModalDialogOpen: "WriteNotSupportedWhenModalDialogOpen",
} as const;

/** The host's `OfficeExtension` global: what `instanceof` needs to tell its errors, and their codes. */
export const officeExtension = { Error: HostError, ErrorCodes: errorCodes } as const;
