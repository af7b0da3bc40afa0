/** The sets of the host's interface that the stand-in goes along with, by their highest version. */
const sets: Readonly<Record<string, string>> = {
  CustomFunctionsRuntime: "1.3",
  DelayForCellEdit: "1.1",
  ExcelApi: "1.14",
  SharedRuntime: "1.1",
};

interface ReadyInfo {
  readonly host: "Excel";
  readonly platform: "OfficeOnline";
}

/** What `Office` offers to an add-in. */
export interface OfficeGlobal {
  onReady(callback?: (info: ReadyInfo) => unknown): Promise<ReadyInfo>;
  readonly context: {
    readonly officeTheme: undefined;
    readonly requirements: { isSetSupported(name: string, minVersion?: string): boolean };
  };
  readonly HostType: { readonly Excel: "Excel" };
  readonly PlatformType: { readonly OfficeOnline: "OfficeOnline"; readonly PC: "PC"; readonly Mac: "Mac" };
}

/**
 * Makes the host's `Office` global.
 *
 * @param ready Resolves once the grid is up.
 */
export function createOffice(ready: Promise<unknown>): OfficeGlobal {
  const info: ReadyInfo = { host: "Excel", platform: "OfficeOnline" };
  return {
    async onReady(callback) {
      await ready;
      await callback?.(info);
      return info;
    },
    context: {
      officeTheme: undefined,
      requirements: {
        isSetSupported(name, minVersion = "1.1") {
          const carried = sets[name];
          return carried !== undefined && isAtLeast(carried, minVersion);
        },
      },
    },
    HostType: { Excel: "Excel" },
    PlatformType: { OfficeOnline: "OfficeOnline", PC: "PC", Mac: "Mac" },
  };
}

function isAtLeast(version: string, asked: string): boolean {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  const [askedMajor = 0, askedMinor = 0] = asked.split(".").map(Number);
  return major > askedMajor || (major === askedMajor && minor >= askedMinor);
}
