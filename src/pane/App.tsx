import type { ComponentType } from "preact";
import { useCallback, useState } from "preact/hooks";
import { EstimateScreen } from "./EstimateScreen";
import { Fetched } from "./Fetched";
import { useArrival } from "./useArrival";

/** Screens that are fetched when they are first wanted: the add-in's first load stays small. */
const fetched = {
  jobRows: async () => (await import(/* webpackChunkName: "job-rows" */ "./jobRows/JobRowsScreen")).JobRowsScreen,
  rates: async () => (await import(/* webpackChunkName: "rates" */ "./rates/RatesScreen")).RatesScreen,
  papers: async () => (await import(/* webpackChunkName: "papers" */ "./papers/PapersScreen")).PapersScreen,
  check: async () => (await import(/* webpackChunkName: "check" */ "./check/CheckScreen")).CheckScreen,
  explain: async () => (await import(/* webpackChunkName: "explain" */ "./explain/ExplainScreen")).ExplainScreen,
  templates: async () =>
    (await import(/* webpackChunkName: "templates" */ "./templates/TemplatesScreen")).TemplatesScreen,
  copy: async () => (await import(/* webpackChunkName: "copy" */ "./copy/CopyScreen")).CopyScreen,
  help: async () => (await import(/* webpackChunkName: "help" */ "./help/HelpScreen")).HelpScreen,
} as const satisfies Record<string, () => Promise<ComponentType>>;

type Screen = "estimate" | keyof typeof fetched;

const screens: readonly { readonly screen: Screen; readonly label: string }[] = [
  { screen: "estimate", label: "Estimate a bed" },
  { screen: "jobRows", label: "Job rows" },
  { screen: "rates", label: "Rates" },
  { screen: "papers", label: "Job papers" },
  { screen: "check", label: "Check the sheets" },
  { screen: "explain", label: "Explain a cell" },
  { screen: "templates", label: "Templates" },
  { screen: "copy", label: "Copy for others" },
  { screen: "help", label: "Help" },
];

/** The page of the guide that tells how the work of a screen is done. */
const guide: Readonly<Record<Exclude<Screen, "help">, string>> = {
  estimate: "first-estimate.html",
  jobRows: "job-rows.html",
  rates: "first-estimate.html#prices",
  papers: "papers.html",
  check: "looks-wrong.html#check",
  explain: "looks-wrong.html#explain",
  templates: "templates.html",
  copy: "without-the-add-in.html",
};

export function App() {
  const [screen, setScreen] = useState<Screen>("estimate");
  const label = screens.find((one) => one.screen === screen)?.label ?? "";
  const arrive = useArrival(label);
  const show = useCallback(
    (next: Screen) => {
      setScreen(next);
      // What is there already; the others arrive once they are fetched.
      if (next === "estimate" || next === screen) requestAnimationFrame(arrive);
    },
    [arrive, screen],
  );
  return (
    <>
      <nav aria-label="What to do">
        {screens.map((one) => (
          <button
            key={one.screen}
            type="button"
            aria-current={one.screen === screen ? "page" : undefined}
            onClick={() => show(one.screen)}
          >
            {one.label}
          </button>
        ))}
      </nav>
      {/* The form keeps what was typed while another screen shows. */}
      <section class="screen" aria-label="Estimate a bed" hidden={screen !== "estimate"}>
        <EstimateScreen onShowRates={() => show("rates")} />
      </section>
      {screen !== "estimate" && (
        <section class="screen" aria-label={label}>
          <Fetched key={screen} part={fetched[screen]} onArrive={arrive} />
        </section>
      )}
      {screen !== "help" && (
        <p class="below guide">
          <a href={`help/${guide[screen]}`} target="_blank" rel="noopener">
            How this works
          </a>
        </p>
      )}
    </>
  );
}
