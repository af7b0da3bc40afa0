import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { EstimateScreen } from "./EstimateScreen";

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
  return (
    <>
      <nav aria-label="What to do">
        {screens.map((one) => (
          <button
            key={one.screen}
            type="button"
            aria-current={one.screen === screen ? "page" : undefined}
            onClick={() => setScreen(one.screen)}
          >
            {one.label}
          </button>
        ))}
      </nav>
      {/* The form keeps what was typed while another screen shows. */}
      <div class="screen" hidden={screen !== "estimate"}>
        <EstimateScreen onShowRates={() => setScreen("rates")} />
      </div>
      {screen !== "estimate" && <Fetched key={screen} screen={screen} />}
      {screen !== "help" && (
        <p class="below">
          <a href={`help/${guide[screen]}`} target="_blank" rel="noopener">
            How this works
          </a>
        </p>
      )}
    </>
  );
}

function Fetched({ screen }: { screen: keyof typeof fetched }) {
  const [Content, setContent] = useState<ComponentType>();
  useEffect(() => {
    let wanted = true;
    void fetched[screen]().then((content) => wanted && setContent(() => content));
    return () => {
      wanted = false;
    };
  }, [screen]);
  return Content ? <Content /> : <p class="notice">Fetching this part…</p>;
}
